package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.page.JobView;
import curewindow.problem.Problems;
import curewindow.shop.ShopFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

final class CardPressTest {

  private final Problems problems = new Problems();
  private final CardPress press =
      CardPress.read(new ShopFiles(SampleJobs.FOLDER), problems).orElseThrow();

  private byte[] print(JobView... views) {
    byte[] pdf = press.cards(List.of(views), problems).orElse(null);
    assertEquals(List.of(), problems.all());
    return pdf;
  }

  @Test
  void look() throws Exception {
    Files.createDirectories(Path.of("target/handout"));
    Files.write(
        Path.of("target/handout/cards.pdf"),
        print(SampleJobs.tinted().view(), SampleJobs.tinted().language("es").firstName("").view()));
    assertTrue(true);
  }
}
