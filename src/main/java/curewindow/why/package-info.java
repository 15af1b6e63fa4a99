/**
 * How did a date come about?
 *
 * <p>Begin at {@link curewindow.why.Why}: in words and pictures for a terminal, or as JSON. {@code
 * docs/why.md} tells how to read it.
 */
package curewindow.why;
