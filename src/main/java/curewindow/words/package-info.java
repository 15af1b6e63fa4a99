/**
 * How is it said in this language?
 *
 * <p>Begin at {@link curewindow.words.Words}: texts, dates, numbers and quantities of one language,
 * with the spelling and the units of the shop's country.
 */
package curewindow.words;
