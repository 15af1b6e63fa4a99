package curewindow.site;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;

/**
 * Serves the public part of an output folder to browsers on this machine only, as a plain web host
 * would: {@code index.html} for folders, {@code 404.html} for what is not there, gzipped for who
 * takes that. It never serves the private {@code office} folder, answers only who asks for this
 * machine by its own name, so that no other site's name can be led here, and gives up on requests
 * that are not whole in {@value #SECONDS} seconds.
 */
public final class ViewServer implements AutoCloseable {

  /** How long a request may take to arrive, in seconds. */
  private static final int SECONDS = 10;

  /** Requests at once, each on a thread while it arrives; a browser opens at most 6 at a time. */
  private static final int AT_ONCE = 64;

  private final Path root;
  private final HttpServer server;
  private final ExecutorService workers = Executors.newFixedThreadPool(AT_ONCE);

  private ViewServer(Path root, HttpServer server) {
    this.root = root;
    this.server = server;
  }

  /**
   * Starts serving.
   *
   * @param out the output folder of a press
   * @param port the port, 0 for any free one
   * @return the running server
   * @throws IOException where the folder has no site in it or the port is taken; the message is for
   *     the user
   */
  public static ViewServer start(Path out, int port) throws IOException {
    Path root = out.resolve("site").toAbsolutePath().normalize();
    if (!Files.isDirectory(root)) {
      throw new IOException("there is no site in " + out + "; press it first");
    }
    HttpServer server =
        LocalServer.at(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), SECONDS);
    ViewServer view = new ViewServer(root.toRealPath(), server);
    server.createContext("/", view::answer);
    server.setExecutor(view.workers);
    server.start();
    return view;
  }

  /**
   * Where the site is served.
   *
   * @return an address on this machine, ending in a slash
   */
  public URI address() {
    InetSocketAddress at = server.getAddress();
    return URI.create("http://" + at.getAddress().getHostAddress() + ":" + at.getPort() + "/");
  }

  private void answer(HttpExchange exchange) throws IOException {
    try (exchange) {
      if (!isForUs(exchange.getRequestHeaders().getOrDefault("Host", List.of()))) {
        exchange.sendResponseHeaders(421, -1);
        return;
      }
      String method = exchange.getRequestMethod();
      if (!method.equals("GET") && !method.equals("HEAD")) {
        exchange.getResponseHeaders().set("Allow", "GET, HEAD");
        exchange.sendResponseHeaders(405, -1);
        return;
      }
      String path = exchange.getRequestURI().getPath();
      Optional<Path> file = SiteFiles.find(root, path);
      if (file.isPresent()
          && file.get().endsWith("index.html")
          && !path.endsWith("/")
          && !path.endsWith("index.html")) {
        exchange.getResponseHeaders().set("Location", path + "/");
        exchange.sendResponseHeaders(301, -1);
      } else if (file.isPresent()) {
        send(exchange, 200, file.get());
      } else {
        notFound(exchange);
      }
    }
  }

  private boolean isForUs(List<String> hosts) {
    return LocalServer.isFor(hosts, LocalServer.LOOPBACK, server.getAddress().getPort());
  }

  private void notFound(HttpExchange exchange) throws IOException {
    Path page = root.resolve("404.html");
    if (Files.isRegularFile(page)) {
      send(exchange, 404, page);
    } else {
      exchange.sendResponseHeaders(404, -1);
    }
  }

  private static void send(HttpExchange exchange, int status, Path file) throws IOException {
    byte[] body = Files.readAllBytes(file);
    exchange.getResponseHeaders().set("Content-Type", SiteFiles.type(file));
    if (!SiteFiles.type(file).equals("image/png")) {
      exchange.getResponseHeaders().set("Vary", "Accept-Encoding");
      if (takesGzip(exchange.getRequestHeaders().getOrDefault("Accept-Encoding", List.of()))) {
        exchange.getResponseHeaders().set("Content-Encoding", "gzip");
        body = gzipped(body);
      }
    }
    exchange.getResponseHeaders().set("X-Content-Type-Options", "nosniff");
    exchange.getResponseHeaders().set("Cache-Control", "no-store");
    if (exchange.getRequestMethod().equals("HEAD")) {
      exchange.getResponseHeaders().set("Content-Length", String.valueOf(body.length));
      exchange.sendResponseHeaders(status, -1);
      return;
    }
    exchange.sendResponseHeaders(status, body.length == 0 ? -1 : body.length);
    if (body.length > 0) {
      try (OutputStream to = exchange.getResponseBody()) {
        to.write(body);
      }
    }
  }

  /** RFC 9110 section 12.5.3; what is named with a weight of 0 is not wanted. */
  private static boolean takesGzip(List<String> accepted) {
    return accepted.stream()
        .flatMap(line -> Stream.of(line.toLowerCase(Locale.ROOT).split(",")))
        .map(coding -> coding.replaceAll("\\s", ""))
        .filter(coding -> coding.matches("gzip(;.*)?"))
        .anyMatch(coding -> !coding.matches("gzip;q=0(\\.0*)?"));
  }

  private static byte[] gzipped(byte[] body) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (GZIPOutputStream gzip = new GZIPOutputStream(bytes)) {
      gzip.write(body);
    }
    return bytes.toByteArray();
  }

  @Override
  public void close() {
    server.stop(0);
    workers.shutdownNow();
  }
}
