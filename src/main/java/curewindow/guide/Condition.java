package curewindow.guide;

import java.util.List;

/** What must be true of a job for a clause to be shown. */
sealed interface Condition {

  /** Whether it is true of the job. */
  boolean holds(GuideFacts facts);

  /** One fact of the job, such as {@code service tint}. */
  record Term(String kind, String name) implements Condition {
    @Override
    public boolean holds(GuideFacts facts) {
      return facts.has(kind, name);
    }
  }

  /** The contrary of another condition. */
  record Not(Condition inner) implements Condition {
    @Override
    public boolean holds(GuideFacts facts) {
      return !inner.holds(facts);
    }
  }

  /** True where all parts are. */
  record All(List<Condition> parts) implements Condition {

    /** Copies the list. */
    public All {
      parts = List.copyOf(parts);
    }

    @Override
    public boolean holds(GuideFacts facts) {
      return parts.stream().allMatch(p -> p.holds(facts));
    }
  }

  /** True where one part is. */
  record Any(List<Condition> parts) implements Condition {

    /** Copies the list. */
    public Any {
      parts = List.copyOf(parts);
    }

    @Override
    public boolean holds(GuideFacts facts) {
      return parts.stream().anyMatch(p -> p.holds(facts));
    }
  }
}
