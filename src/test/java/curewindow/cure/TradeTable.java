package curewindow.cure;

import curewindow.climate.Climates;
import curewindow.climate.Place;
import curewindow.climate.Places;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How long the starting holds last in hot, mild and cold places: the table in docs/judged.md.
 * Finished at 14:00 in a bay of 20 C and 50 %, picked up at 16:00, mid-tone paint, mean over eight
 * starts in the month.
 */
final class TradeTable {

  static final List<String> PLACES = List.of("phoenix", "miami", "seattle", "minneapolis");

  private static final Curing CURING = Curing.with(Climates::weathers);
  private static final Bay BAY = new Bay(20, 50);

  private TradeTable() {}

  /**
   * Waits in hours.
   *
   * @param likely mean from the finish to the likely end
   * @param safe mean from the finish to the published end
   * @param limits share of starts that end at the limit
   */
  record Wait(double likely, double safe, double limits) {}

  static Wait wait(StartingHolds hold, String place, int month, Parking parking) {
    Place where = Places.builtIn().get(place);
    double likely = 0;
    double safe = 0;
    int limits = 0;
    int starts = 8;
    for (int i = 0; i < starts; i++) {
      LocalDateTime day = LocalDateTime.of(2026, month, 1 + 3 * i, 14, 0);
      Release release = release(hold, where, day, parking);
      Instant finished = day.atZone(where.zone()).toInstant();
      likely += Duration.between(finished, release.likely()).toMinutes() / 60.0 / starts;
      safe += Duration.between(finished, release.end().at()).toMinutes() / 60.0 / starts;
      limits += release.end() instanceof Release.AtLimit ? 1 : 0;
    }
    return new Wait(likely, safe, limits / (double) starts);
  }

  private static Release release(
      StartingHolds hold, Place where, LocalDateTime day, Parking parking) {
    Instant finished = day.atZone(where.zone()).toInstant();
    return CURING
        .timeline(
            Cases.job(
                where,
                new ParkingPlan(parking, parking),
                BAY,
                finished.plus(Duration.ofHours(2)),
                Cases.item(0, hold.exposure(), finished, hold.rule())))
        .releases()
        .get(0);
  }

  /** Prints the table of docs/judged.md. */
  public static void main(String[] arguments) {
    for (Parking parking : List.of(Parking.OUTSIDE, Parking.GARAGE)) {
      System.out.println(String.join("\n", markdown(parking)) + "\n");
    }
  }

  static List<String> markdown(Parking parking) {
    List<String> lines = new ArrayList<>();
    StringBuilder head = new StringBuilder("| " + parking.id() + ": likely / safe by |");
    for (String place : PLACES) {
      head.append(" %s Jan | %s Jul |".formatted(place, place));
    }
    lines.add(head.toString());
    lines.add("|---" + "|---:".repeat(2 * PLACES.size()) + "|");
    for (StartingHolds hold : StartingHolds.values()) {
      StringBuilder line = new StringBuilder("| " + hold.words() + " |");
      for (String place : PLACES) {
        line.append(" " + cell(wait(hold, place, 1, parking)) + " |");
        line.append(" " + cell(wait(hold, place, 7, parking)) + " |");
      }
      lines.add(line.toString());
    }
    return lines;
  }

  private static String cell(Wait wait) {
    return words(wait.likely()) + " / " + (wait.limits() > 0 ? "limit " : "") + words(wait.safe());
  }

  private static String words(double hours) {
    return hours < 72
        ? String.format(Locale.ROOT, "%.0f h", hours)
        : String.format(Locale.ROOT, "%.1f d", hours / 24);
  }
}
