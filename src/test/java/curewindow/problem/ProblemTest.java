package curewindow.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** A problem tells by facts, not by its words, where it has to be mended. */
class ProblemTest {

  private static final Where ITEM = new Where("jobs/Q-3101.yaml", 4, 3, "items[1]");

  @Test
  void whatIsMissingStandsWhereItWouldBeWhateverItsWords() {
    Problem problem = Problem.missing(ITEM, "film", "nothing says which film it is", "add film");
    assertEquals("missing-key", problem.code());
    assertEquals("items[1].film", problem.place());
    assertEquals("id", Problem.missing(Where.file("x"), "id", "no id", "add id").place());
  }

  @Test
  void whatIsWrongStandsAtItsPath() {
    assertEquals("items[1]", Problem.error("bad", ITEM, "film is missing", "x").place());
    assertEquals("items[1]", Problem.error("bad", ITEM, "x", "x").with("key", "film").place());
  }
}
