package curewindow.send;

import curewindow.site.PageList;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/** Asks for pages as a customer's phone does, at the addresses that the codes on cards carry. */
final class LivePages {

  private static final Duration PATIENCE = Duration.ofSeconds(15);

  private final Path site;
  private final HttpClient client;

  LivePages(Path site) {
    this.site = site;
    this.client =
        HttpClient.newBuilder()
            .connectTimeout(PATIENCE)
            .followRedirects(HttpClient.Redirect.NORMAL)
            .build();
  }

  /** A page that does not answer as it was sent, and how it answers. */
  record Wrong(PageList.Row page, NotLive how) {

    String answer() {
      return how.told();
    }
  }

  /**
   * Asks for pages, all at once.
   *
   * @param pages the pages
   * @return those that do not answer as they stand in the site
   * @throws IOException where the site cannot be read
   */
  List<Wrong> wrong(List<PageList.Row> pages) throws IOException {
    List<CompletableFuture<Optional<NotLive>>> answers = new ArrayList<>();
    for (PageList.Row page : pages) {
      byte[] sent = Files.readAllBytes(site.resolve(page.folder()).resolve("index.html"));
      answers.add(ask(URI.create(page.address()), sent));
    }
    List<Wrong> wrong = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      PageList.Row page = pages.get(i);
      answers.get(i).join().ifPresent(answer -> wrong.add(new Wrong(page, answer)));
    }
    return wrong;
  }

  /** How it answers; nothing where it is as it was sent. */
  private CompletableFuture<Optional<NotLive>> ask(URI address, byte[] sent) {
    HttpRequest request =
        HttpRequest.newBuilder(address)
            .timeout(PATIENCE)
            .header("Cache-Control", "no-cache")
            .header("User-Agent", "Curewindow")
            .build();
    return client
        .sendAsync(request, HttpResponse.BodyHandlers.ofByteArray())
        .thenApply(answer -> told(answer, sent))
        .exceptionally(e -> Optional.of(new NotLive(NotLive.How.NO_ANSWER, reason(e))));
  }

  private static Optional<NotLive> told(HttpResponse<byte[]> answer, byte[] sent) {
    if (answer.statusCode() != 200) {
      return Optional.of(new NotLive(NotLive.How.STATUS, String.valueOf(answer.statusCode())));
    }
    return Arrays.equals(answer.body(), sent)
        ? Optional.empty()
        : Optional.of(NotLive.of(NotLive.How.OTHER_PAGE));
  }

  private static String reason(Throwable e) {
    Throwable cause = e instanceof CompletionException && e.getCause() != null ? e.getCause() : e;
    return cause.getMessage() == null ? "no connection" : cause.getMessage();
  }
}
