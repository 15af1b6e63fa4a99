/**
 * How does a pressed site get to where customers read it? To a folder or to a host (SFTP): only
 * what has changed, pages before what links to them, and afterwards it is asked for.
 */
package curewindow.send;
