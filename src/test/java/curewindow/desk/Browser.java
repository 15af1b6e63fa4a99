package curewindow.desk;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Asks a desk as a browser without script does, and follows nothing by itself. */
final class Browser {

  private static final HttpClient CLIENT = HttpClient.newHttpClient();
  private static final Pattern VERSION = Pattern.compile("name=\"version\" value=\"([0-9a-f]*)\"");

  private final URI desk;

  Browser(Desk desk) {
    this.desk = desk.address();
  }

  HttpResponse<String> get(String path) {
    return send(HttpRequest.newBuilder(desk.resolve(path)));
  }

  HttpResponse<String> get(String path, String cookie) {
    return send(HttpRequest.newBuilder(desk.resolve(path)).header("Cookie", cookie));
  }

  HttpResponse<String> post(String path, Map<String, List<String>> form) {
    String body =
        form.entrySet().stream()
            .flatMap(e -> e.getValue().stream().map(v -> coded(e.getKey()) + "=" + coded(v)))
            .collect(Collectors.joining("&"));
    return send(DeskClient.sent(desk.resolve(path), body));
  }

  /** The version of a file that a form was made from. */
  static String version(HttpResponse<String> form) {
    Matcher found = VERSION.matcher(form.body());
    if (!found.find()) {
      throw new AssertionError("no version in " + form.body());
    }
    return found.group(1);
  }

  /** Where an answer leads; empty where it leads nowhere. */
  static String leadsTo(HttpResponse<String> answer) {
    return answer.headers().firstValue("Location").orElse("");
  }

  private static String coded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private static HttpResponse<String> send(HttpRequest.Builder request) {
    try {
      return CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofString());
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
