package curewindow.cli;

import curewindow.shop.OwnCopies;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
    name = "edit",
    description = {
      "Puts a copy of the program's own file into the shop folder, for you to change.",
      "What has no copy there follows the program. Without FILE, lists all files."
    },
    mixinStandardHelpOptions = true)
final class EditCommand implements Callable<Integer> {

  @Mixin private ShopOption shop;
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FILE",
      arity = "0..*",
      description = "such as content/guides/en/tint.md")
  private List<String> files = List.of();

  @Option(names = "--print", description = "prints the program's text, and copies nothing")
  private boolean print;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    if (files.isEmpty()) {
      OwnCopies.texts().forEach(out::println);
      return Exit.OK;
    }
    if (!print) {
      shop.refuseOthers();
    }
    int code = Exit.OK;
    for (String file : files) {
      code = Math.max(code, print ? print(file, out) : copy(file, out));
    }
    return code;
  }

  private int print(String file, PrintWriter out) throws IOException {
    Optional<String> text = OwnCopies.text(file);
    text.ifPresent(out::print);
    return text.isPresent() ? Exit.OK : refused(file + " is not one of the program's files");
  }

  private int copy(String file, PrintWriter out) throws IOException {
    if (OwnCopies.make(shop.folder(), file) instanceof OwnCopies.Refused refused) {
      return refused(refused.message());
    }
    out.println("Now yours to change: " + shop.folder().resolve(file));
    return Exit.OK;
  }

  private int refused(String message) {
    spec.commandLine().getErr().println(message);
    return Exit.USAGE;
  }
}
