package curewindow.shop;

import java.time.Instant;

/** A time as somebody typed it, in a file or behind an option. */
public sealed interface TypedTime {

  /**
   * A moment.
   *
   * @param at the moment
   */
  record Moment(Instant at) implements TypedTime {}

  /**
   * Something that is no moment.
   *
   * @param code the kind of problem
   * @param what what is wrong, to stand behind the name of the key or option
   * @param fix what to write instead
   */
  record Wrong(String code, String what, String fix) implements TypedTime {}

  /** A time by a clock whose zone is not known. */
  record Zoneless() implements TypedTime {}
}
