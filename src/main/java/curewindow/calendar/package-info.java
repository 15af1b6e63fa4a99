/**
 * What goes into the phone's calendar?
 *
 * <p>Begin at {@link curewindow.calendar.CareCalendar}: iCalendar files (RFC 5545) of a job, and of
 * the office; {@link curewindow.calendar.ShopCard} is the shop's vCard (RFC 6350).
 */
package curewindow.calendar;
