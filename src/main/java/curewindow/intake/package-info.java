/**
 * Which jobs stand in the table of another program?
 *
 * <p>Begin at {@link curewindow.intake.Intake}: a table ({@link curewindow.intake.ForeignTable})
 * and a map of the shop's make a plan that tells of each row what becomes of it; to carry it out
 * writes job files, and what is left over beside the table. Whether a job is right is asked of the
 * one reader of jobs alone.
 */
package curewindow.intake;
