package curewindow.cure;

import curewindow.climate.Place;
import curewindow.climate.WeatherYear;

/**
 * The weather that promises are held against.
 *
 * @param place the site, with normals of its own
 * @param hours its hours, by its standard time
 */
record TrueYear(Place place, WeatherYear hours) {}
