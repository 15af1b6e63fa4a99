package curewindow.shop;

import curewindow.cure.HoldKind;
import java.util.Objects;

/**
 * One thing to hold off from, to accept as normal, or to come in for.
 *
 * @param id such as {@code windows-up}
 * @param kind what it asks of the customer
 * @param rank how much it matters when it is put before the customer; 1 is first
 */
public record Hold(String id, HoldKind kind, int rank) {

  /** Refuses missing parts. */
  public Hold {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(kind, "kind");
  }
}
