package curewindow.intake;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import curewindow.shop.Catalogue;
import curewindow.shop.Film;
import curewindow.shop.ImportMap;
import curewindow.shop.JobColumns;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The service of a row that names none: that of its film. */
final class FilmServices {

  private static final Pattern ITEM = Pattern.compile("items\\[(\\d+)](\\.film)?");
  private static final String NONE = JobColumns.SERVICE + " is missing";

  private final Catalogue catalogue;

  FilmServices(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /**
   * The services of all films that may be meant.
   *
   * @param ours our name of the film
   * @param theirs what the table calls it; empty where a map tells which of ours that is
   */
  Set<String> of(String ours, String theirs) {
    Set<String> services = new TreeSet<>();
    for (Film film : catalogue.films().values()) {
      boolean isMeant = film.id().equals(ours);
      boolean isCalledSo =
          !theirs.isEmpty() && ImportMap.key(film.name()).equals(ImportMap.key(theirs));
      if (isMeant || isCalledSo) {
        services.add(film.service());
      }
    }
    return services;
  }

  /**
   * What is wrong with a job, without a service that is missing only since its film tells none:
   * that is told once, at the film.
   *
   * @param found what the reader of jobs found
   */
  static List<Problem> atFilm(Joined job, OurCells cells, List<Problem> found) {
    List<Problem> told = new ArrayList<>();
    for (Problem problem : found) {
      Matcher item = ITEM.matcher(problem.path());
      boolean isService = problem.message().equals(NONE) && item.matches();
      if (!isService) {
        told.add(problem);
        continue;
      }
      int number = Integer.parseInt(item.group(1));
      TableRow row = job.rows().get(number - 1);
      Set<String> services = cells.services(row);
      if (services.size() > 1) {
        told.add(several(problem, number, theirs(row, cells), services));
      } else if (found.stream().noneMatch(p -> isOfFilm(p, number))) {
        told.add(problem);
      }
    }
    return told;
  }

  private static boolean isOfFilm(Problem problem, int number) {
    String item = "items[" + number + "]";
    return problem.path().equals(item + ".film")
        || problem.path().equals(item) && problem.message().equals(JobColumns.FILM + " is missing");
  }

  private static String theirs(TableRow row, OurCells cells) {
    return String.join(" ", cells.binding().texts(row, JobColumns.FILM));
  }

  private static Problem several(Problem problem, int number, String film, Set<String> services) {
    return Problem.error(
            "film-of-several-services",
            new Where(problem.file(), 0, 0, "items[" + number + "].film"),
            Shown.of(film) + " is a film of several services: " + String.join(", ", services),
            "write under names of the map which film it is")
        .with("name", Shown.bare(film));
  }
}
