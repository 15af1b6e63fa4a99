/**
 * What is the weather of a place, hour by hour?
 *
 * <p>Begin at {@link curewindow.climate.Climates}: from the twelve monthly means of a {@link
 * curewindow.climate.Place}, or from a file of measured hours, come equally likely weathers of a
 * year. {@code docs/climate.md} has the model and its sources.
 */
package curewindow.climate;
