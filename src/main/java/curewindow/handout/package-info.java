/**
 * What does the card look like, and the sheet, the tag, the label, the papers of the day?
 *
 * <p>Begin at {@link curewindow.handout.HandoutPress}. Templates become PDF, with a code that
 * phones read. {@code docs/handouts.md} tells of kinds, papers and sizes.
 */
package curewindow.handout;
