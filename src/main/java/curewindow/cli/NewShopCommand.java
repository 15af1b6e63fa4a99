package curewindow.cli;

import curewindow.problem.Problem;
import curewindow.shop.NewShop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
    name = "new-shop",
    description = "Lays out a new shop folder that can be pressed at once.",
    mixinStandardHelpOptions = true)
final class NewShopCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "DIR", description = "a folder that is empty or not there yet")
  private Path folder;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    if (NewShop.write(folder) instanceof NewShop.Refused refused) {
      Problem why = refused.problem();
      spec.commandLine().getErr().println(why.message() + "; " + why.fix());
      return Exit.DISK;
    }
    out.println("A new shop folder is in " + folder + ". Next:");
    out.println("  1. Put your shop's name, phone and address into " + folder.resolve("shop.yaml"));
    out.println("  2. Look at the two sample jobs in " + folder.resolve("jobs"));
    out.println("  3. Put your films into " + folder.resolve("content/catalogue/films.yaml"));
    out.println("  4. " + Program.call("press --shop " + folder + " --out " + folder + "-site"));
    return Exit.OK;
  }
}
