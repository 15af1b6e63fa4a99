package curewindow.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/**
 * An invented shop whose customers called, small enough to count by hand. Cars are picked up at 4
 * PM:
 *
 * <ul>
 *   <li>24 tinted ones, Q-3201 to Q-3224, one a day from October 1 to 24;
 *   <li>14 with paint film on October 5, Q-3301 to Q-3314, and 14 on October 18, Q-3315 to Q-3328;
 *   <li>one with both on November 28, Q-3401, and one wrap on October 20, Q-3402;
 *   <li>Q-3501 without a card, Q-3502 still to be picked up, Q-3503 picked up before any call was
 *       noted, and Q-3504, of which only the card is left.
 * </ul>
 */
public final class CalledShop {

  /** Noon of November 30, 2026 by the shop's clock. */
  public static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-30T20:00:00Z"), ZoneOffset.UTC);

  private static final LocalDate FIRST = LocalDate.of(2026, 10, 1);
  private static final String TINT = "tint,harbor-35,rear-door-glass back-glass front-door-glass";
  private static final String FILM = "paint-film,fieldcoat-gloss,hood fender";
  private static final String WRAP = "wrap,colorway-gloss,hood";

  private static final List<String> CALLS =
      List.of(
          "Q-3201,2026-10-01T17:05:09,haze,solved",
          "Q-3201,2026-10-02T09:00:00,haze,solved",
          "Q-3202,2026-10-05T10:00:00,windows,coming-in",
          "Q-3203,2026-10-10T10:00:00,haze,open",
          "Q-3204,2026-10-12T10:00:00,other,solved",
          "Q-3205,2026-11-20T10:00:00,dust,solved",
          "Q-3301,2026-10-06T10:00:00,corner,coming-in",
          "Q-3315,2026-10-19T10:00:00,corner,coming-in",
          "Q-3401,2026-11-30T09:00:00,haze,solved",
          // What does not count:
          "Q-3504,2026-10-07T09:00:00,haze,solved",
          "Q-3501,2026-10-07T09:00:00,haze,solved",
          "Q-3502,2026-11-07T09:00:00,haze,solved",
          "Q-3503,2026-10-08T09:00:00,haze,solved",
          "Q-3210,2026-10-09T09:00:00,dust,solved",
          "Q-3201,2026-11-30T13:00:00,dust,solved");

  private final Path shop;
  private final List<String> jobs = new ArrayList<>();
  private final List<String> cards = new ArrayList<>();
  private final List<String> links = new ArrayList<>();

  private CalledShop(Path shop) {
    this.shop = shop;
  }

  /**
   * Lays the shop out.
   *
   * @param shop the folder, which is there and empty
   */
  public static void layOut(Path shop) throws IOException {
    CalledShop made = new CalledShop(shop);
    for (int i = 0; i < 24; i++) {
      made.job("Q-" + (3201 + i), FIRST.plusDays(i), TINT);
    }
    for (int i = 0; i < 28; i++) {
      made.job("Q-" + (3301 + i), i < 14 ? FIRST.plusDays(4) : FIRST.plusDays(17), FILM);
    }
    made.job("Q-3401", LocalDate.of(2026, 11, 28), TINT, FILM);
    made.job("Q-3402", LocalDate.of(2026, 10, 20), WRAP);
    made.job("Q-3502", LocalDate.of(2026, 12, 5), TINT);
    made.job("Q-3503", LocalDate.of(2026, 9, 15), TINT);
    made.card("Q-3504", LocalDate.of(2026, 10, 6));
    made.row("Q-3501", LocalDate.of(2026, 10, 6), TINT);
    made.write(CALLS);
  }

  /**
   * Lays out a shop with many cars, of which every third called.
   *
   * @param shop the folder, which is there and empty
   * @param cars how many, at most 10,000
   */
  static void layOutMany(Path shop, int cars) throws IOException {
    CalledShop made = new CalledShop(shop);
    List<String> calls = new ArrayList<>();
    LocalDate first = CLOCK.instant().atZone(ZoneOffset.UTC).toLocalDate().minusDays(411);
    for (int i = 0; i < cars; i++) {
      String id = "Q-" + (20_000 + i);
      LocalDate day = first.plusDays(i * 400L / cars);
      made.job(id, day, i % 2 == 0 ? TINT : FILM);
      if (i % 3 == 0) {
        calls.add(
            id
                + ","
                + day.plusDays(i % 9)
                + "T18:00:00,"
                + (i % 2 == 0 ? "haze" : "corner")
                + ",solved");
      }
    }
    made.write(calls);
  }

  private void job(String id, LocalDate day, String... works) {
    for (String work : works) {
      row(id, day, work);
    }
    card(id, day);
  }

  private void row(String id, LocalDate day, String work) {
    jobs.add(
        id
            + ",Mara,en,2023,sedan,dark,gloss,black four-door,seattle,outside,garage,"
            + day
            + "T16:00,"
            + work
            + ","
            + day
            + "T13:00");
  }

  private void card(String id, LocalDate day) {
    cards.add(id + ",Mara,2023 sedan black four-door," + day);
    links.add(id + ",7F3K9QX2M4" + "%010d".formatted(links.size()) + "," + day);
  }

  private void write(List<String> calls) throws IOException {
    Files.copy(Path.of("content/demo/shop.yaml"), shop.resolve("shop.yaml"));
    Files.copy(Path.of("content/demo/logo.svg"), shop.resolve("logo.svg"));
    write(
        "jobs.csv",
        "job,first-name,language,car-year,body,paint,paint-finish,car,place,parking-day,"
            + "parking-night,pickup,service,film,spots,finished",
        jobs);
    write("handed-over.csv", "job,first-name,car,came-in", cards);
    write("link-ledger.csv", "job,token,since", links);
    write(Callbacks.FILE, "job,at,question,outcome", calls);
  }

  private void write(String file, String header, List<String> rows) throws IOException {
    Files.writeString(shop.resolve(file), header + "\n" + String.join("\n", rows) + "\n");
  }
}
