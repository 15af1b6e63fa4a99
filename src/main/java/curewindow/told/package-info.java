/**
 * What is decided for a job, and said everywhere alike?
 *
 * <p>Begin at {@link curewindow.told.JobView}: dates and the order of holds, cases of parking, what
 * cards said, the visit, what is due. Page, handout, calendar and explanation show this and decide
 * nothing.
 */
package curewindow.told;
