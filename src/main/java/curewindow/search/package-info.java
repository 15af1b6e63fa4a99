/**
 * Where do the guides speak of a word?
 *
 * <p>Begin at {@link curewindow.search.SearchPress}: the script that searches in the browser builds
 * the index here, so both agree on what a word is.
 */
package curewindow.search;
