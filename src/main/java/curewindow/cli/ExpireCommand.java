package curewindow.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
    name = "expire",
    description = "Lists the pages that are older than keep-pages in shop.yaml says.",
    mixinStandardHelpOptions = true)
final class ExpireCommand implements Callable<Integer> {

  @Mixin private RecordsOption records;

  @Option(names = "--let-go", description = "takes them down; the jobs stay")
  private boolean letGo;

  @Override
  public Integer call() throws IOException {
    return records.change(kept -> kept.expire(letGo));
  }
}
