package curewindow.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
    name = "rename",
    description = "Keeps the address, and so the card, of a job that has another id now.",
    mixinStandardHelpOptions = true)
final class RenameCommand implements Callable<Integer> {

  @Mixin private RecordsOption records;

  @Parameters(index = "0", paramLabel = "OLD", description = "the id that the card was made for")
  private String old;

  @Parameters(index = "1", paramLabel = "NEW", description = "the id that the job has now")
  private String now;

  @Override
  public Integer call() throws IOException {
    return records.change(kept -> kept.rename(old, now));
  }
}
