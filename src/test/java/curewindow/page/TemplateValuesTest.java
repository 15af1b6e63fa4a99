package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TemplateValuesTest {

  private record Inner(String label) {}

  private record Outer(String label, Optional<String> none, List<Inner> parts) {}

  private record Sized(String size) {}

  private record Emptied(boolean empty) {}

  private record Valued(String values) {}

  @Test
  void componentsAreValuesByName() {
    TemplateValues fields =
        TemplateValues.of(
            new Outer("a", Optional.empty(), List.of(new Inner("b"), new Inner("c"))));
    assertEquals("a", fields.get("label"));
    assertNull(fields.get("none"));
    assertEquals("c", ((Map<?, ?>) ((List<?>) fields.get("parts")).get(1)).get("label"));
  }

  @Test
  void aNameThatIsNotThereNamesTheNearest() {
    TemplateValues fields = TemplateValues.of(new Inner("b"));
    String said =
        assertThrows(IllegalArgumentException.class, () -> fields.get("lable")).getMessage();
    assertTrue(said.contains("'lable'") && said.contains("label is near"), said);
  }

  /** The template language would answer these from the map itself: its size, say. */
  @Test
  void aComponentThatTheTemplateLanguageWouldAnswerItselfIsRefused() {
    for (Record view : List.of(new Sized("long"), new Emptied(true), new Valued("v"))) {
      String said =
          assertThrows(IllegalArgumentException.class, () -> TemplateValues.of(view)).getMessage();
      assertTrue(said.contains("may not name a component"), said);
    }
  }
}
