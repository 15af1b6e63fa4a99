/**
 * What did the user type?
 *
 * <p>Begin at {@link curewindow.cli.Curewindow}. A command reads its options, asks the packages
 * above and prints; it decides nothing.
 */
package curewindow.cli;
