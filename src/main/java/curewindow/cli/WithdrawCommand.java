package curewindow.cli;

import curewindow.site.Tokens;
import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
    name = "withdraw",
    description = "Takes down the page of a job at its address, and gives the job a new one.",
    mixinStandardHelpOptions = true)
final class WithdrawCommand implements Callable<Integer> {

  @Mixin private RecordsOption records;

  @Parameters(paramLabel = "JOB", description = "the id of the job")
  private String job;

  @Override
  public Integer call() throws IOException {
    return records.change(kept -> kept.withdraw(job, Tokens.secure()));
  }
}
