package curewindow.bench;

import curewindow.handout.HandoutPress;
import curewindow.handout.SampleJobs;
import curewindow.problem.Problems;
import curewindow.shop.Handout;
import curewindow.shop.PaperChoice;
import curewindow.shop.SheetPaper;
import curewindow.shop.ShopFiles;
import curewindow.told.JobView;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long handouts take once their dates are there: one wallet card, and 1,000 of them on sheets
 * of A4, in English, Spanish and Arabic by turns, each with a code of its own. Run with {@code mvn
 * -q -Pbench -Dbench=HandoutBenchmark clean test-compile exec:exec}.
 */
@State(Scope.Benchmark)
@Fork(1)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class HandoutBenchmark {

  private static final int MANY = 1000;
  private static final List<String> LANGUAGES = List.of("en", "es", "ar");

  private final HandoutPress press =
      HandoutPress.read(new ShopFiles(Path.of("no-such-shop")), Handout.WALLET, new Problems())
          .orElseThrow();
  private final List<JobView> views = IntStream.range(0, MANY).mapToObj(this::view).toList();

  /** Made by the benchmark's runner. */
  public HandoutBenchmark() {}

  private JobView view(int number) {
    return SampleJobs.tinted()
        .shippedWords()
        .language(LANGUAGES.get(number % LANGUAGES.size()))
        .token(String.format(Locale.ROOT, "7K3MPQ9W2XHT%04d", number))
        .view();
  }

  /**
   * One card on a page of its own.
   *
   * @return the PDF
   */
  @Benchmark
  @BenchmarkMode(Mode.AverageTime)
  @Warmup(iterations = 5, time = 2)
  @Measurement(iterations = 5, time = 2)
  public byte[] oneCard() {
    return print(views.subList(0, 1), SheetPaper.NONE);
  }

  /**
   * All cards on sheets, as at the start of a working day: nothing has been printed before.
   *
   * @return the PDF
   */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Fork(5)
  @Warmup(iterations = 0)
  @Measurement(iterations = 1)
  public byte[] thousandCards() {
    return print(views, SheetPaper.A4);
  }

  private byte[] print(List<JobView> jobs, SheetPaper paper) {
    Problems problems = new Problems();
    byte[] pdf = press.handouts(jobs, PaperChoice.on(paper), problems).orElseThrow().pdf();
    if (!problems.all().isEmpty()) {
      throw new IllegalStateException(problems.all().toString());
    }
    return pdf;
  }
}
