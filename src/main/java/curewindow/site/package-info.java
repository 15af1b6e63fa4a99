/**
 * Which file goes where, under which secret address?
 *
 * <p>Begin at {@link curewindow.site.Press}. This package alone writes: the output folder, and the
 * ledgers in the shop folder that keep addresses, printed dates, calendars and calls.
 */
package curewindow.site;
