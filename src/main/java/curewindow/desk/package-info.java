/**
 * How does the counter hand over a car, look one up, and note a call? A local web app on the shop
 * folder. Begin at {@link curewindow.desk.Desk}; each screen is a class of its own, filled from a
 * template beside {@code desk.css}.
 */
package curewindow.desk;
