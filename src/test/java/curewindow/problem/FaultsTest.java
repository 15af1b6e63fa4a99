package curewindow.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a fault of the program stops, and what it does not. */
final class FaultsTest {

  private final Problems problems = new Problems();

  private String together(List<String> texts) {
    return Faults.spare(
        texts,
        Where::file,
        problems,
        (some, found) -> {
          some.forEach(t -> found.add(Problem.notice("seen", Where.file(t), "seen", "go on")));
          // Too short a text is the fault.
          some.forEach(t -> t.substring(2));
          return String.join("+", some);
        });
  }

  private List<String> seen(String code) {
    return problems.all().stream().filter(p -> p.code().equals(code)).map(Problem::file).toList();
  }

  @Test
  void theFaultyOnesAreLeftOutAndTold() {
    assertEquals("one+four", together(List.of("one", "2", "four", "5")));
    assertEquals(List.of("2", "5"), seen("own-fault"));
    assertEquals(List.of("four", "one"), seen("seen"));
    assertTrue(problems.all().stream().filter(Faults::isFault).count() == 2);
  }

  @Test
  void withoutAFaultTheWorkIsDoneOnce() {
    assertEquals("one+four", together(List.of("one", "four")));
    assertEquals(List.of(), seen("own-fault"));
  }

  @Test
  void aFaultThatNoneAloneBringsOutIsThrown() {
    assertThrows(
        IllegalStateException.class,
        () ->
            Faults.spare(
                List.of("one", "two"),
                Where::file,
                problems,
                (some, found) -> {
                  if (some.size() > 1) {
                    throw new IllegalStateException();
                  }
                  return "";
                }));
    assertEquals(List.of(), problems.all());
  }

  @Test
  void aDiskThatFailsIsNoFaultOfTheProgram() {
    assertThrows(
        UncheckedIOException.class,
        () ->
            Faults.guard(
                Where.file("a"),
                problems,
                () -> {
                  throw new UncheckedIOException(new IOException("full"));
                }));
    assertEquals(Optional.of(1), Faults.guard(Where.file("a"), problems, () -> 1));
  }
}
