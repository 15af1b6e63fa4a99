/**
 * What is wrong in the user's files, and where?
 *
 * <p>A {@link curewindow.problem.Problem} names the file, line and column, what is wrong and what
 * to do; {@link curewindow.problem.Problems} collects them, and {@link curewindow.problem.Faults}
 * turns a fault of the program into a problem of the one job that brought it out.
 */
package curewindow.problem;
