package curewindow.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
    name = "forget",
    description = "Deletes a job, and all that is kept of its customer.",
    mixinStandardHelpOptions = true)
final class ForgetCommand implements Callable<Integer> {

  @Mixin private RecordsOption records;

  @Parameters(paramLabel = "JOB", description = "the id of the job")
  private String job;

  @Override
  public Integer call() throws IOException {
    return records.change(kept -> kept.forget(job));
  }
}
