package curewindow.guide;

import java.util.List;

/** A part of a guide that was read once and is settled for each job. */
sealed interface Piece {

  /** HTML that is the same for every job. */
  record Fixed(String html) implements Piece {}

  /** A value of the job. */
  record Slot(String name) implements Piece {}

  /** Running text right inside a list item, made of fixed HTML and values. */
  record Run(List<Piece> inline) implements Piece {

    /** Copies the list. */
    public Run {
      inline = List.copyOf(inline);
    }
  }

  /** A clause. */
  record Choice(Condition condition, List<Piece> then, List<Piece> otherwise) implements Piece {

    /** Copies the lists. */
    public Choice {
      then = List.copyOf(then);
      otherwise = List.copyOf(otherwise);
    }

    /** The branch for a job. */
    List<Piece> shown(GuideFacts facts) {
      return condition.holds(facts) ? then : otherwise;
    }
  }

  /** A part that changes once a hold is over or, where {@code set}, fully set. */
  record Timed(String hold, boolean set, List<Piece> before, List<Piece> after) implements Piece {

    /** Copies the lists. */
    public Timed {
      before = List.copyOf(before);
      after = List.copyOf(after);
    }
  }

  /** A question: its heading, and then its answer. */
  record Asked(Opening.Question question, List<Piece> blocks) implements Piece {

    /** Copies the list. */
    public Asked {
      blocks = List.copyOf(blocks);
    }
  }

  /** What a photo for the shop should show. */
  record Photo(List<Piece> blocks) implements Piece {

    /** Copies the list. */
    public Photo {
      blocks = List.copyOf(blocks);
    }
  }

  /** A block of running text: a paragraph, heading, table cell, code block or rule. */
  record Leaf(Tag tag, List<Piece> inline) implements Piece {

    /** Copies the list. */
    public Leaf {
      inline = List.copyOf(inline);
    }
  }

  /** A block of blocks: a list, list item, quote, table or part of a table. */
  record Group(Tag tag, List<Piece> blocks) implements Piece {

    /** Copies the list. */
    public Group {
      blocks = List.copyOf(blocks);
    }
  }

  /**
   * An element.
   *
   * @param name such as {@code p}
   * @param attributes as they stand in the opening tag, with a blank before each
   */
  record Tag(String name, String attributes) {

    /** The heading's level, or 0 for what is no heading. */
    int headingLevel() {
      boolean heading = name.length() == 2 && name.charAt(0) == 'h' && name.charAt(1) <= '6';
      return heading ? name.charAt(1) - '0' : 0;
    }

    boolean isList() {
      return name.equals("ul") || name.equals("ol");
    }
  }
}
