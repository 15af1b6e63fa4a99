package curewindow.desk;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import curewindow.site.LocalServer;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * Carries requests of browsers to the screens, those that may come in. It answers only who asks for
 * this machine by one of its own names, so that no other site's name can be led here, and does
 * something only for a form of its own pages.
 */
final class DeskServer implements AutoCloseable {

  /** What a form may be long, bytes; a pasted table fits. */
  private static final int MOST = 8 << 20;

  /** How long a request may take to arrive, in seconds. */
  private static final int SECONDS = 20;

  private static final int AT_ONCE = 64;

  private static final String POLICY =
      "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self' data:; connect-src"
          + " 'self'; frame-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'self'";

  /** Answers what a browser asks for. */
  interface Screens {
    Answer answer(Request request);

    /** Where who is not known is asked for the passcode. */
    Answer enter(Request request, Gate gate);

    /** A file of the customers' site, and nothing else, by its path there. */
    Answer site(String path);
  }

  private final Screens screens;
  private final Optional<Gate> gate;
  private final Set<String> names;
  private final HttpServer server;
  private final ExecutorService workers;

  /**
   * A server that is not started yet.
   *
   * @param at the address it listens at; loopback for nobody but this machine
   * @param names by which this machine may be called, in lower case, without a port
   * @param gate asks who comes from another machine; empty where nobody can
   * @throws IOException where the port is taken; the message is for the user
   */
  DeskServer(InetSocketAddress at, Set<String> names, Optional<Gate> gate, Screens screens)
      throws IOException {
    this.screens = screens;
    this.gate = gate;
    this.names = Set.copyOf(names);
    this.server = LocalServer.at(at, SECONDS);
    this.workers = Executors.newFixedThreadPool(AT_ONCE);
    server.createContext("/", this::answer);
    server.setExecutor(workers);
  }

  void start() {
    server.start();
  }

  int port() {
    return server.getAddress().getPort();
  }

  private void answer(HttpExchange exchange) throws IOException {
    try (exchange) {
      Answer answer = answered(exchange);
      exchange.getResponseHeaders().set("Content-Security-Policy", POLICY);
      exchange.getResponseHeaders().set("X-Content-Type-Options", "nosniff");
      exchange.getResponseHeaders().set("Referrer-Policy", "same-origin");
      exchange.getResponseHeaders().set("Cache-Control", "no-store");
      answer.headers().forEach(exchange.getResponseHeaders()::set);
      boolean head = exchange.getRequestMethod().equals("HEAD");
      if (answer.body().length == 0 || head) {
        exchange.sendResponseHeaders(answer.status(), -1);
        return;
      }
      exchange.getResponseHeaders().set("Content-Type", answer.type());
      exchange.sendResponseHeaders(answer.status(), answer.body().length);
      try (OutputStream to = exchange.getResponseBody()) {
        to.write(answer.body());
      }
    }
  }

  private Answer answered(HttpExchange exchange) throws IOException {
    List<String> hosts = exchange.getRequestHeaders().getOrDefault("Host", List.of());
    if (!LocalServer.isFor(hosts, names, port())) {
      return Answer.refused(421);
    }
    String method = exchange.getRequestMethod();
    boolean post = method.equals("POST");
    if (!post && !method.equals("GET") && !method.equals("HEAD")) {
      return Answer.refused(405).with("Allow", "GET, HEAD, POST");
    }
    if (post && !isOwnForm(exchange, hosts.get(0))) {
      return Answer.refused(403);
    }
    Optional<Request> request = request(exchange, post);
    if (request.isEmpty()) {
      return Answer.refused(413);
    }
    boolean own = exchange.getRemoteAddress().getAddress().isLoopbackAddress();
    return own ? screens.answer(request.get()) : ofAnotherMachine(request.get());
  }

  private Answer ofAnotherMachine(Request request) {
    if (gate.isEmpty()) {
      return Answer.refused(403);
    }
    if (!request.isPost() && request.path().startsWith(Gate.FRAMED)) {
      return gate.get()
          .framed(request.path())
          .map(screens::site)
          .orElseGet(() -> Answer.refused(404));
    }
    return gate.get().knows(request)
        ? screens.answer(request.withSite(gate.get().site(request)))
        : screens.enter(request, gate.get());
  }

  /** Browsers name the page that a form stands on (Fetch Standard, the header Origin). */
  private static boolean isOwnForm(HttpExchange exchange, String host) {
    List<String> origin = exchange.getRequestHeaders().getOrDefault("Origin", List.of());
    String type = exchange.getRequestHeaders().getFirst("Content-Type");
    return origin.equals(List.of("http://" + host))
        && type != null
        && type.toLowerCase(Locale.ROOT).startsWith("application/x-www-form-urlencoded");
  }

  private static Optional<Request> request(HttpExchange exchange, boolean post) throws IOException {
    Request.Values form = Request.Values.NONE;
    if (post) {
      try (InputStream body = exchange.getRequestBody()) {
        byte[] bytes = body.readNBytes(MOST + 1);
        if (bytes.length > MOST) {
          return Optional.empty();
        }
        form = Request.Values.of(new String(bytes, StandardCharsets.UTF_8));
      }
    }
    String query = exchange.getRequestURI().getRawQuery();
    return Optional.of(
        new Request(
            post,
            exchange.getRequestURI().getPath(),
            query == null ? Request.Values.NONE : Request.Values.of(query),
            form,
            cookies(exchange)));
  }

  private static Map<String, String> cookies(HttpExchange exchange) {
    Map<String, String> cookies = new LinkedHashMap<>();
    for (String line : exchange.getRequestHeaders().getOrDefault("Cookie", List.of())) {
      for (String cookie : line.split(";")) {
        int sign = cookie.indexOf('=');
        if (sign > 0) {
          cookies.put(cookie.substring(0, sign).strip(), cookie.substring(sign + 1).strip());
        }
      }
    }
    return cookies;
  }

  @Override
  public void close() {
    server.stop(0);
    workers.shutdownNow();
  }
}
