package curewindow.cli;

import curewindow.site.LedgerRestore;
import curewindow.site.LoadedShop;
import java.io.IOException;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

@Command(
    name = "restore",
    description =
        "Puts a lost or broken link-ledger.csv together again, from its copies and the last press.",
    mixinStandardHelpOptions = true)
final class RestoreCommand implements Callable<Integer> {

  private final Clock clock;

  @Mixin private ShopOption shop;
  @Spec private CommandSpec spec;

  @Mixin private OutOption folder;

  RestoreCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    LoadedShop loaded = shop.load();
    return JobLookup.sayIfShopIsBroken(loaded, spec.commandLine().getErr())
        ? RecordsOption.say(LedgerRestore.run(loaded, folder.path(), clock), spec)
        : Exit.PROBLEMS;
  }
}
