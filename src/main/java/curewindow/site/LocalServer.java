package curewindow.site;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.BindException;
import java.net.InetSocketAddress;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What the HTTP servers of this program have in common. */
public final class LocalServer {

  /** How browsers on this machine call it. */
  public static final Set<String> LOOPBACK = Set.of("localhost", "127.0.0.1", "[::1]");

  private static final int USUAL_PORT = 80;

  private LocalServer() {}

  /**
   * A server that is not started yet.
   *
   * @param at the address it listens at
   * @param seconds how long a request may take to arrive; the first server of a process says so for
   *     all of them
   * @return the server
   * @throws IOException where the port is taken; the message is for the user
   */
  public static HttpServer at(InetSocketAddress at, int seconds) throws IOException {
    System.setProperty("sun.net.httpserver.maxReqTime", String.valueOf(seconds));
    try {
      return HttpServer.create(at, 0);
    } catch (BindException e) {
      throw new IOException("port " + at.getPort() + " is taken; name another with --port", e);
    }
  }

  /**
   * Whether a request calls this machine by one of its names (RFC 9110, section 7.4): a name that
   * another site let lead here is none of them.
   *
   * @param hosts the values of the request's {@code Host}
   * @param names the names in lower case, without a port
   * @param port the server's port, which may be left out where it is the usual one
   * @return true where there is one value, and it is one of the names
   */
  public static boolean isFor(List<String> hosts, Set<String> names, int port) {
    if (hosts.size() != 1) {
      return false;
    }
    String host = hosts.get(0).toLowerCase(Locale.ROOT);
    String end = ":" + port;
    return host.endsWith(end)
        ? names.contains(host.substring(0, host.length() - end.length()))
        : port == USUAL_PORT && names.contains(host);
  }
}
