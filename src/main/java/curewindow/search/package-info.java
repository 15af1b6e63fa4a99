/**
 * Where do the guides speak of a word?
 *
 * <p>Begin at {@link curewindow.search.Lookup}, which finds the words of the printed index; {@link
 * curewindow.search.SearchScript} is what searches in the browser.
 */
package curewindow.search;
