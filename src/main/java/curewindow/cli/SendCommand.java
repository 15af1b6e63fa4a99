package curewindow.cli;

import curewindow.send.Login;
import curewindow.send.Send;
import curewindow.shop.SendTo;
import curewindow.site.LoadedShop;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
    name = "send",
    description =
        "Sends what the last press made to where customers read it, as send in shop.yaml says, and"
            + " asks for some of its pages.",
    mixinStandardHelpOptions = true)
final class SendCommand implements Callable<Integer> {

  @Mixin private ShopOption shop;
  @Spec private CommandSpec spec;

  @Mixin private OutOption folder;

  @Option(names = "--plan", description = "only says what would be sent and taken away")
  private boolean plan;

  @Option(names = "--all", description = "sends all files, also those that are known to be there")
  private boolean all;

  @Option(
      names = "--let-go",
      description = "takes away pages at the other place however many are gone here")
  private boolean letGo;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    LoadedShop loaded = shop.load();
    if (!JobLookup.sayIfShopIsBroken(loaded, err)) {
      return Exit.PROBLEMS;
    }
    Optional<SendTo> to = loaded.shop().orElseThrow().send();
    if (to.isEmpty()) {
      err.println(
          "shop.yaml does not say where to; add send with a line such as:"
              + " to: sftp://USER@HOST/FOLDER (docs/formats.md)");
      return Exit.PROBLEMS;
    }
    Send send = new Send(to.get(), folder.path(), out::println);
    Send.Allowed allowed = new Send.Allowed(all, letGo);
    Send.Report report = plan ? send.plan(allowed) : send.run(Login.ofEnvironment(), allowed);
    report.done().forEach(out::println);
    report.wrong().forEach(err::println);
    return report.wrong().isEmpty() ? Exit.OK : Exit.PROBLEMS;
  }
}
