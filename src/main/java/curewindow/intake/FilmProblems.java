package curewindow.intake;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import curewindow.shop.JobColumns;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is wrong with jobs whose films do not tell their service. */
final class FilmProblems {

  private static final Pattern SERVICE =
      Pattern.compile("(items\\[(\\d+)]\\.)" + JobColumns.SERVICE);

  private FilmProblems() {}

  /**
   * What is wrong with a job, without a service that is missing only since its film tells none:
   * that is told once, at the film.
   *
   * @param found what the reader of jobs found
   */
  static List<Problem> of(Joined job, OurCells cells, List<Problem> found) {
    List<Problem> told = new ArrayList<>();
    for (Problem problem : found) {
      Matcher service = SERVICE.matcher(problem.place());
      if (!problem.isMissing() || !service.matches()) {
        told.add(problem);
        continue;
      }
      String film = service.group(1) + JobColumns.FILM;
      TableRow row = job.rows().get(Integer.parseInt(service.group(2)) - 1);
      Set<String> services = cells.services(row);
      if (services.size() > 1) {
        told.add(several(problem.file(), film, theirs(row, cells), services));
      } else if (found.stream().noneMatch(p -> p.place().equals(film))) {
        told.add(problem);
      }
    }
    return told;
  }

  private static String theirs(TableRow row, OurCells cells) {
    return String.join(" ", cells.binding().texts(row, JobColumns.FILM));
  }

  private static Problem several(String file, String path, String film, Set<String> services) {
    return Problem.error(
            "film-of-several-services",
            new Where(file, 0, 0, path),
            Shown.of(film) + " is a film of several services: " + String.join(", ", services),
            "write under names of the map which film it is")
        .with("name", Shown.bare(film));
  }
}
