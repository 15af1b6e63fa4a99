/**
 * How often, of how many, and how sure is that?
 *
 * <p>Begin at {@link curewindow.tally.Rate}. What is counted here is rounded to whole numbers
 * before anybody sees it, and says where it is too little to tell.
 */
package curewindow.tally;
