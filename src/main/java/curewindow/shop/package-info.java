/**
 * What stands in the shop folder, and is it right?
 *
 * <p>Begin at {@link curewindow.shop.ShopFolder}: all files are read into values once and checked
 * together. Nothing after this package reads what the user wrote. {@code docs/formats.md} has the
 * files.
 */
package curewindow.shop;
