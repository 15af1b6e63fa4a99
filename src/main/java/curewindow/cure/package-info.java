/**
 * When is which hold over, in that weather?
 *
 * <p>Begin at {@link curewindow.cure.Curing}: it gives a case its {@link curewindow.cure.Timeline}.
 * The tables of a place are built once and shared; a job is then a few searches in sums. The
 * classes whose names begin with {@code Explanation} only explain. {@code docs/cure.md} has the
 * model and its sources.
 */
package curewindow.cure;
