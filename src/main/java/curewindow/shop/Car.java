package curewindow.shop;

import curewindow.cure.PaintTone;
import java.util.Collections;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/**
 * The car of a job.
 *
 * @param year model year
 * @param body body type
 * @param paint how much sun the paint takes up
 * @param finish paint finish, {@code gloss} or {@code matte}
 * @param text free text that the owner recognises, such as {@code blue four-door}
 * @param lacks facts of spots that this car lacks, such as a defroster
 */
public record Car(
    OptionalInt year,
    BodyType body,
    PaintTone paint,
    Optional<String> finish,
    String text,
    Set<SpotFact> lacks) {

  /** Refuses missing parts. */
  public Car {
    Objects.requireNonNull(year, "year");
    Objects.requireNonNull(body, "body");
    Objects.requireNonNull(paint, "paint");
    Objects.requireNonNull(finish, "finish");
    Objects.requireNonNull(text, "text");
    lacks = Collections.unmodifiableSet(new TreeSet<>(lacks));
  }
}
