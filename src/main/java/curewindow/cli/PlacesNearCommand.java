package curewindow.cli;

import curewindow.climate.MonthNormals;
import curewindow.climate.Place;
import curewindow.climate.Places;
import java.io.PrintWriter;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
    name = "near",
    description = "Shows the built-in places nearest to a point, and the weather they lend it.",
    mixinStandardHelpOptions = true)
final class PlacesNearCommand implements Callable<Integer> {

  private static final int SHOWN = 5;

  /** Farther away a place is hardly in the same climate; kilometres, our own estimate. */
  private static final double FAR_KM = 300;

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "LAT", description = "degrees north, south negative")
  private double latitude;

  @Parameters(index = "1", paramLabel = "LON", description = "degrees east, west negative")
  private double longitude;

  @Option(
      names = "--height",
      paramLabel = "M",
      description = "metres above sea level; the nearest place's if left out")
  private Double height;

  @Override
  public Integer call() {
    within("LAT", latitude, -90, 90);
    within("LON", longitude, -180, 180);
    List<Places.Near> nearest = Places.nearest(latitude, longitude, SHOWN);
    Place from = nearest.get(0).place();
    double metres = height == null ? from.height() : height;
    within("--height", metres, -450, 6000);
    Place here = Places.at("here", "here", latitude, longitude, metres, from.zone());
    PrintWriter out = spec.commandLine().getOut();
    out.printf(
        Locale.ROOT,
        "Built-in places nearest to %s, %s at %.0f m%s:%n",
        plain(latitude),
        plain(longitude),
        metres,
        height == null ? " (the nearest one's height; give yours with --height)" : "");
    printNearest(nearest, metres, out);
    out.println();
    out.println("Weather there, lent by " + from.name() + " (6.5 K colder for 1000 m higher):");
    if (nearest.get(0).distanceKm() > FAR_KM) {
      out.printf(
          Locale.ROOT,
          "It is %.0f km away, and the weather there may be of another kind. Better point the place%n"
              + "to a weather file of a nearer station; docs/weather-files.md tells how.%n",
          nearest.get(0).distanceKm());
    }
    printMonths(here, out);
    out.println("  " + here.source());
    out.println();
    printFile(here, out);
    return Exit.OK;
  }

  private void within(String name, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new ParameterException(
          spec.commandLine(),
          name + " is " + plain(value) + ", outside " + plain(low) + " to " + plain(high));
    }
  }

  private static void printNearest(List<Places.Near> nearest, double metres, PrintWriter out) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("id", "name", "distance", "height", "correction"));
    for (Places.Near near : nearest) {
      rows.add(
          List.of(
              near.place().id(),
              near.place().name(),
              number("%.0f km", near.distanceKm()),
              number("%.0f m", near.place().height()),
              number("%+.1f K", tenths(Places.warmerThan(near.place(), metres)))));
    }
    PlacesTable.print(rows, "llrrr", out);
  }

  private static void printMonths(Place place, PrintWriter out) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("month", "daily min", "daily max", "dew point", "sun a day"));
    for (int m = 0; m < place.normals().size(); m++) {
      MonthNormals month = place.normals().get(m);
      rows.add(
          List.of(
              Month.of(m + 1).getDisplayName(TextStyle.SHORT, Locale.ENGLISH),
              number("%.1f C", month.dailyMin()),
              number("%.1f C", month.dailyMax()),
              number("%.1f C", month.dewPoint()),
              number("%.1f kWh/m2", month.sun())));
    }
    PlacesTable.print(rows, "lrrrr", out);
  }

  /** What to write to use the place. */
  private static void printFile(Place here, PrintWriter out) {
    out.println("To use it, write this into content/places/<id>.yaml and check the zone:");
    out.println("name: <the name of the place>");
    out.println("latitude: " + plain(here.latitude()));
    out.println("longitude: " + plain(here.longitude()));
    out.println("height: " + plain(here.height()));
    out.println("zone: " + here.zone());
  }

  /** Rounded first, as nothing is minus zero. */
  private static double tenths(double value) {
    return Math.round(10 * value) / 10.0;
  }

  private static String number(String format, double value) {
    return String.format(Locale.ROOT, format, value);
  }

  private static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e9
        ? Long.toString((long) value)
        : Double.toString(value);
  }
}
