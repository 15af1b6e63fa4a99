package curewindow.handout;

/** How much of a QR code may be unreadable (ISO/IEC 18004): about 7, 15, 25 or 30 percent. */
public enum CodeLevel {
  /** About 7 percent. */
  L,
  /** About 15 percent. */
  M,
  /** About 25 percent. */
  Q,
  /** About 30 percent. */
  H
}
