package curewindow.cli;

import curewindow.shop.Job;
import curewindow.site.CardFile;
import curewindow.site.LoadedShop;
import curewindow.site.Tokens;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
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
    name = "card",
    description = "Makes a print-ready PDF with the cards of some jobs, 85 x 55 mm.",
    mixinStandardHelpOptions = true)
final class CardCommand implements Callable<Integer> {

  @Mixin private ShopOption shop;
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "JOB", arity = "1..*", description = "the ids of the jobs")
  private List<String> ids;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      defaultValue = "cards.pdf",
      description = "the PDF to write; ${DEFAULT-VALUE} if left out")
  private Path file;

  @Override
  public Integer call() throws IOException {
    refuseOtherFiles();
    LoadedShop loaded = shop.load();
    List<Job> jobs = new ArrayList<>();
    for (String id : ids) {
      Optional<Job> job = JobLookup.find(loaded, id, spec.commandLine().getErr());
      if (job.isEmpty()) {
        return Exit.PROBLEMS;
      }
      jobs.add(job.get());
    }
    if (loaded.ledgerIsBroken()) {
      ProblemLines.print(loaded.problems(), spec.commandLine().getErr());
      return Exit.PROBLEMS;
    }
    CardFile.Result result = CardFile.write(loaded, jobs, file, Clock.systemUTC(), Tokens.secure());
    PrintWriter out = spec.commandLine().getOut();
    ProblemLines.print(result.problems(), spec.commandLine().getErr());
    if (result.written()) {
      out.println(file + ": " + jobs.size() + (jobs.size() == 1 ? " card" : " cards"));
    }
    return result.problems().isEmpty() ? Exit.OK : Exit.PROBLEMS;
  }

  /** Only a PDF is ever replaced, so that a slip of the hand costs no file of the shop's. */
  private void refuseOtherFiles() throws IOException {
    if (!file.toString().endsWith(".pdf")) {
      throw new IOException(file + " does not end in .pdf; name the PDF to write with --out");
    }
    if (Files.exists(file)) {
      try (InputStream in = Files.newInputStream(file)) {
        if (!new String(in.readNBytes(4), StandardCharsets.US_ASCII).equals("%PDF")) {
          throw new IOException(file + " is there and is no PDF; name another file with --out");
        }
      }
    }
  }
}
