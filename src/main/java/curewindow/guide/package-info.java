/**
 * Which care text is for this job, and which questions?
 *
 * <p>Begin at {@link curewindow.guide.Guide}: Markdown with clauses and values becomes safe HTML
 * for the facts of one job. {@code docs/guides.md} tells how guides are written.
 */
package curewindow.guide;
