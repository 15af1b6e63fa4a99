package curewindow.problem;

import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * Keeps a fault of the program that one of the user's things brings out from stopping the others:
 * it becomes a problem of that thing. Disks that fail concern everybody and are passed on.
 */
public final class Faults {

  private static final String CODE = "own-fault";

  private Faults() {}

  /**
   * Whether a problem is a fault of the program.
   *
   * @param problem the problem
   * @return true where it is told by this class
   */
  public static boolean isFault(Problem problem) {
    return problem.code().equals(CODE);
  }

  /**
   * Does the work on one thing.
   *
   * @param where where the thing stands in the user's files
   * @param problems where a fault is told
   * @param work what to do; what it gives is not null
   * @return what it gives, or empty after a fault
   */
  public static <R> Optional<R> guard(Where where, Problems problems, Supplier<R> work) {
    try {
      return Optional.of(work.get());
    } catch (UncheckedIOException e) {
      throw e;
    } catch (RuntimeException | StackOverflowError e) {
      problems.add(told(where, e));
      return Optional.empty();
    }
  }

  /**
   * Does the work on each of many things, by all processors at once.
   *
   * @param all the things
   * @param where where each stands in the user's files
   * @param problems where faults are told, and what the work finds
   * @param work what to do with one thing, and where to tell what is found; what it gives is not
   *     null
   * @return what it gives, in the order of the things; empty after a fault
   */
  public static <T, R> List<Optional<R>> guardEach(
      List<T> all, Function<T, Where> where, Problems problems, BiFunction<T, Problems, R> work) {
    List<Problems> found = all.stream().map(one -> new Problems()).toList();
    List<Optional<R>> done =
        IntStream.range(0, all.size())
            .parallel()
            .mapToObj(i -> guard(where, found.get(i), all.get(i), work))
            .toList();
    found.forEach(one -> problems.addAll(one.all()));
    return done;
  }

  private static <T, R> Optional<R> guard(
      Function<T, Where> where, Problems found, T one, BiFunction<T, Problems, R> work) {
    return guard(where.apply(one), found, () -> work.apply(one, found));
  }

  /**
   * Does the work on many things together. Where that ends in a fault, it is tried on each alone,
   * and done on those that bring out none.
   *
   * @param all the things
   * @param where where each stands in the user's files
   * @param problems where the work tells what it finds, and where faults are told
   * @param work what to do with things, and where to tell what is found; it changes nothing else
   * @return what it gives; a fault without any of the things, or with all that are good alone, is
   *     thrown
   */
  public static <T, R> R spare(
      List<T> all,
      Function<T, Where> where,
      Problems problems,
      BiFunction<List<T>, Problems, R> work) {
    Problems found = new Problems();
    Optional<R> done =
        guard(Where.file(""), new Problems(), () -> work.apply(List.copyOf(all), found));
    if (done.isPresent()) {
      problems.addAll(found.all());
      return done.get();
    }
    List<T> good = new ArrayList<>();
    for (T one : all) {
      guard(where.apply(one), problems, () -> work.apply(List.of(one), new Problems()))
          .ifPresent(alone -> good.add(one));
    }
    return work.apply(List.copyOf(good), problems);
  }

  private static Problem told(Where where, Throwable e) {
    return Problem.error(
        CODE,
        where,
        "a fault of the program stops this: " + e.getClass().getSimpleName() + at(e),
        "please report this line to the makers of the program; all else goes on without it");
  }

  /** Where it was thrown, and where in our own code that began. */
  private static String at(Throwable e) {
    List<StackTraceElement> trace = List.of(e.getStackTrace());
    String thrown = trace.stream().findFirst().map(f -> " at " + line(f)).orElse("");
    String ours =
        trace.stream()
            .filter(f -> f.getClassName().startsWith("curewindow."))
            .findFirst()
            .filter(f -> !f.equals(trace.get(0)))
            .map(f -> ", called at " + line(f))
            .orElse("");
    return thrown + ours;
  }

  private static String line(StackTraceElement frame) {
    return frame.getFileName() + ":" + frame.getLineNumber();
  }
}
