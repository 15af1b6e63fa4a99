/**
 * What does a page look like?
 *
 * <p>Begin at {@link curewindow.page.Pages}. What stands on a page is gathered into records, and
 * the templates in {@code site-templates} put it into HTML. {@code docs/pages.md} tells what is
 * where.
 */
package curewindow.page;
