package curewindow.words;

import curewindow.problem.Where;

/**
 * One text of a words file.
 *
 * @param key its name with dots, such as {@code hold.windows-up.label}
 * @param text the text as written
 * @param where file and line
 */
record FlatText(String key, String text, Where where) {}
