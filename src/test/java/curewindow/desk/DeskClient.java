package curewindow.desk;

import curewindow.site.LoadedShop;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A desk on a copy of the demo shop, and a browser that only knows HTTP. */
final class DeskClient implements AutoCloseable {

  /** A Wednesday noon in Seattle on which several cars of the demo wait for something. */
  static final Instant NOW = Instant.parse("2026-11-25T20:00:00Z");

  final Path shop;
  final Path out;
  final Desk desk;
  private final HttpClient client = HttpClient.newHttpClient();

  private DeskClient(Path folder, Instant now) throws IOException {
    this.shop = folder.resolve("shop");
    this.out = folder.resolve("out");
    this.desk = Desk.open(setting(now));
  }

  static DeskClient open(Path folder) throws IOException {
    copy(Path.of("content/demo"), folder.resolve("shop"));
    return new DeskClient(folder, NOW);
  }

  /** A desk on the shop folder that stands in a folder. */
  static DeskClient open(Path folder, Instant now) throws IOException {
    return new DeskClient(folder, now);
  }

  Desk.Setting setting(Instant now) {
    return new Desk.Setting(shop, out, 0, Optional.empty(), clock(now));
  }

  static Clock clock(Instant now) {
    return Clock.fixed(now, ZoneOffset.UTC);
  }

  /** The files of a shop folder that a person wrote, with a few of its jobs. */
  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = from.relativize(file).toString();
        if (name.matches("shop.yaml|logo.svg|jobs.csv|jobs/Q-310[128].yaml")) {
          Path copy = to.resolve(name);
          Files.createDirectories(copy.getParent());
          Files.copy(file, copy);
        }
      }
    }
  }

  LoadedShop loaded() {
    return LoadedShop.load(shop, clock(NOW));
  }

  URI at(String path) {
    return desk.address().resolve(path);
  }

  /** A page's text, with plain spaces. */
  String page(String path) {
    return get(path).body().replace('\u00A0', ' ');
  }

  HttpResponse<String> get(String path) {
    return send(HttpRequest.newBuilder(at(path)));
  }

  /** A form as a page of the desk sends it: names and values in turn. */
  HttpResponse<String> post(String path, String... fields) {
    return send(sent(at(path), form(List.of(fields))));
  }

  HttpResponse<String> post(String path, String origin, List<String> fields) {
    return send(sent(at(path), origin, form(fields)));
  }

  /** A form as a page of the desk at an address sends it there. */
  static HttpRequest.Builder sent(URI at, String body) {
    return sent(at, at.getScheme() + "://" + at.getAuthority(), body);
  }

  private static HttpRequest.Builder sent(URI at, String origin, String body) {
    return HttpRequest.newBuilder(at)
        .header("Origin", origin)
        .header("Content-Type", "application/x-www-form-urlencoded")
        .POST(HttpRequest.BodyPublishers.ofString(body));
  }

  static String form(List<String> fields) {
    return Stream.iterate(0, i -> i < fields.size(), i -> i + 2)
        .map(i -> encoded(fields.get(i)) + "=" + encoded(fields.get(i + 1)))
        .collect(Collectors.joining("&"));
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  HttpResponse<String> send(HttpRequest.Builder request) {
    return send(request, HttpResponse.BodyHandlers.ofString());
  }

  HttpResponse<byte[]> bytes(HttpRequest.Builder request) {
    return send(request, HttpResponse.BodyHandlers.ofByteArray());
  }

  private <T> HttpResponse<T> send(
      HttpRequest.Builder request, HttpResponse.BodyHandler<T> handler) {
    try {
      return client.send(request.build(), handler);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Makes a car's page, and shows what came of it. */
  String pressed(String job) {
    HttpResponse<String> answer = post("/job/" + job + "/press");
    return page(answer.headers().firstValue("Location").orElseThrow());
  }

  /** A new car as the form sends it; values that are given stand in place of the usual ones. */
  static String[] car(String id, String film, String... given) {
    List<String> usual =
        List.of(
            "do",
            "save",
            "version",
            "",
            "id",
            id,
            "first-name",
            "Ines",
            "language",
            "en",
            "car.body",
            "wagon",
            "car.paint",
            "dark",
            "car.text",
            "red wagon",
            "car.year",
            "",
            "place",
            "seattle",
            "parking.day",
            "outside",
            "parking.night",
            "garage",
            "pickup",
            "2026-11-25T17:00",
            "items[1].film",
            film,
            "items[1].finished",
            "2026-11-25T11:30",
            "items[1].batch",
            "0611",
            "items[1].spots",
            "front-door-glass",
            "items[1].spots",
            "rear-door-glass");
    List<String> others = List.of(given);
    List<String> fields = new ArrayList<>();
    for (int i = 0; i < usual.size(); i += 2) {
      if (!others.contains(usual.get(i))) {
        fields.addAll(usual.subList(i, i + 2));
      }
    }
    fields.addAll(others);
    return fields.toArray(String[]::new);
  }

  @Override
  public void close() {
    desk.close();
  }
}
