package curewindow.cli;

import curewindow.site.PageList;
import curewindow.site.ViewServer;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
    name = "view",
    description = "Shows the pressed site in the browser of this machine; nobody else can see it.",
    mixinStandardHelpOptions = true)
final class ViewCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Mixin private OutOption folder;

  @Option(
      names = "--port",
      defaultValue = "8017",
      description = "the port; ${DEFAULT-VALUE} if left out, 0 for any free one")
  private int port;

  @Override
  public Integer call() throws IOException, InterruptedException {
    PrintWriter out = spec.commandLine().getOut();
    if (port < 0 || port > 65535) {
      throw new IOException("port " + port + " is not within 0 to 65535");
    }
    try (ViewServer view = ViewServer.start(folder.path(), port)) {
      out.println("The shop's public pages:  " + view.address());
      for (PageList.Row row : PageList.read(folder.path())) {
        out.println("  " + row.job() + "  " + row.firstName() + "  " + row.on(view.address()));
      }
      out.println("Open one of these in a browser here; stop with Ctrl+C.");
      out.flush();
      Thread.currentThread().join();
    }
    return Exit.OK;
  }
}
