package curewindow.send;

import curewindow.shop.SendTo;
import curewindow.site.Output;
import curewindow.site.PageList;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Brings the site of the last press to where customers read it. */
public final class Send {

  /** So many pages are asked for afterwards; our own choice. */
  private static final int ASKED = 10;

  /** More pages than these are not taken away unasked, and not more than a tenth of them. */
  private static final int FEW = 3;

  private static final int TENTH = 10;
  private static final int STEP = 100;

  private final SendTo to;
  private final Path out;
  private final Path site;
  private final Consumer<String> progress;

  /**
   * A way to somewhere.
   *
   * @param to where to
   * @param out the output folder of a press
   * @param progress gets a line now and then where there is much to send
   */
  public Send(SendTo to, Path out, Consumer<String> progress) {
    this.to = to;
    this.out = out;
    this.site = out.resolve("site");
    this.progress = progress;
  }

  /**
   * What may be done, beyond what is usual.
   *
   * @param all sends what is known to be there once more
   * @param letGo takes away pages however many are gone
   */
  public record Allowed(boolean all, boolean letGo) {}

  /**
   * What came of it.
   *
   * @param done what to tell the user
   * @param wrong what does not work and what to do about it
   * @param refused why nothing was sent, which stands among what is wrong too; empty where it was
   */
  public record Report(List<String> done, List<String> wrong, Optional<SendTrouble> refused) {

    /** Copies the lists. */
    public Report {
      done = List.copyOf(done);
      wrong = List.copyOf(wrong);
    }

    static Report of(List<String> done, List<String> wrong) {
      return new Report(done, wrong, Optional.empty());
    }

    static Report refused(SendTrouble.Kind kind, Map<String, Object> parts, String why) {
      SendTrouble trouble = new SendTrouble(kind, parts, why, null);
      return new Report(List.of(), List.of(why), Optional.of(trouble));
    }
  }

  /**
   * Says what would be sent.
   *
   * @param allowed what may be done
   * @return a line a file, in order
   * @throws IOException where the site cannot be read
   */
  public Report plan(Allowed allowed) throws IOException {
    if (!hasSite()) {
      return noSite();
    }
    try (Output output = Output.open(out)) {
      SentFiles sent = SentFiles.of(output.root(), to.to());
      SendPlan plan = SendPlan.of(site, sent.hashes(), allowed.all());
      List<String> lines =
          Stream.concat(
                  plan.put().stream().map(path -> "put     " + path),
                  plan.remove().stream().map(path -> "remove  " + path))
              .toList();
      return Report.of(lines.isEmpty() ? List.of(nothing(plan)) : lines, List.of());
    }
  }

  /**
   * Sends what has changed, takes away what is gone, and asks for some pages.
   *
   * @param login the secrets, where it goes to a host
   * @param allowed what may be done
   * @return what came of it
   * @throws IOException where it was cut off; the message is for the user, and what is there by
   *     then is not sent again
   */
  public Report run(Login login, Allowed allowed) throws IOException {
    if (!hasSite()) {
      return noSite();
    }
    try (Output output = Output.open(out)) {
      SentFiles sent = SentFiles.of(output.root(), to.to());
      SendPlan plan = SendPlan.of(site, sent.hashes(), allowed.all());
      long pages =
          plan.remove().stream().flatMap(p -> SendPlan.customersFolder(p).stream()).count();
      if (!allowed.letGo() && pages > Math.max(FEW, pagesThere(sent) / TENTH)) {
        return Report.refused(
            SendTrouble.Kind.PAGES_GONE,
            Map.of("gone", (int) pages, "all", (int) pagesThere(sent), "folder", site.toString()),
            "%d of %d customers' pages that are there are gone from %s. Nothing was sent. If that is right, use --let-go."
                .formatted(pages, pagesThere(sent), site));
      }
      bring(plan, sent, login);
      return report(plan);
    }
  }

  /**
   * Asks for a customer's page at its address, as a phone would.
   *
   * @param out the output folder of a press
   * @param job the job's id
   * @return nothing where it answers as it stands there, else how it answers
   * @throws IOException where the output folder cannot be read
   */
  public static Optional<NotLive> wrongAtAddress(Path out, String job) throws IOException {
    List<PageList.Row> pages =
        PageList.read(out).stream().filter(row -> row.job().equals(job)).toList();
    return pages.isEmpty()
        ? Optional.of(NotLive.of(NotLive.How.NO_PAGE))
        : new LivePages(out.resolve("site"))
            .wrong(pages).stream().findFirst().map(LivePages.Wrong::how);
  }

  private boolean hasSite() {
    return Files.isRegularFile(site.resolve("index.html"));
  }

  private Report noSite() {
    return Report.refused(
        SendTrouble.Kind.NO_SITE,
        Map.of("folder", out.toString()),
        "There is no site in " + out + "; press first, or name it with --out.");
  }

  private static long pagesThere(SentFiles sent) {
    return sent.hashes().keySet().stream()
        .flatMap(path -> SendPlan.customersFolder(path).stream())
        .count();
  }

  private void bring(SendPlan plan, SentFiles sent, Login login) throws IOException {
    int all = plan.put().size() + plan.remove().size();
    if (all == 0) {
      return;
    }
    int done = 0;
    sent.begin();
    try (Destination destination = open(login)) {
      for (String path : plan.put()) {
        destination.put(path, Files.readAllBytes(site.resolve(path)));
        sent.put(path, plan.hashes().get(path));
        tell(++done, all);
      }
      for (String path : plan.remove()) {
        destination.remove(path);
        sent.removed(path);
        tell(++done, all);
      }
    } catch (IOException e) {
      throw done == 0
          ? e
          : new SendTrouble(
              SendTrouble.Kind.CUT_OFF,
              Map.of("done", done, "all", all),
              "cut off after %d of %d files (%s); send again, and it goes on there"
                  .formatted(done, all, e.getMessage()),
              e);
    }
  }

  private void tell(int done, int all) {
    if (done % STEP == 0 && done < all) {
      progress.accept(done + " of " + all + " files");
    }
  }

  private Destination open(Login login) throws IOException {
    if (to.isOnHost()) {
      return SftpDestination.open(to, login);
    }
    Path folder = Path.of(to.to());
    if (!Files.isDirectory(folder)) {
      throw new SendTrouble(
          SendTrouble.Kind.NOT_A_FOLDER,
          Map.of("folder", folder.toString()),
          folder + " is not a folder; make it, or mend send in shop.yaml",
          null);
    }
    return new FolderDestination(folder);
  }

  private static String nothing(SendPlan plan) {
    return "Nothing to send: all " + plan.hashes().size() + " files are there.";
  }

  private Report report(SendPlan plan) throws IOException {
    List<String> done = new ArrayList<>();
    int put = plan.put().size();
    int gone = plan.remove().size();
    done.add(
        put + gone == 0
            ? nothing(plan)
            : "Sent " + files(put) + (gone == 0 ? "." : ", took away " + files(gone) + "."));
    List<PageList.Row> pages = sample(plan);
    List<LivePages.Wrong> wrong = new LivePages(site).wrong(pages);
    if (!pages.isEmpty() && wrong.isEmpty()) {
      done.add("Asked for %d of the pages on cards: all answer as sent.".formatted(pages.size()));
    }
    return Report.of(done, told(wrong, pages.size()));
  }

  private static List<String> told(List<LivePages.Wrong> wrong, int asked) {
    List<String> answers = wrong.stream().map(LivePages.Wrong::answer).distinct().toList();
    if (asked > 1 && wrong.size() == asked && answers.size() == 1) {
      return List.of(
          "None of the %d pages that were asked for is there; %s gives %s. Is address in shop.yaml right, and what was sent served there?"
              .formatted(asked, wrong.get(0).page().address(), answers.get(0)));
    }
    return wrong.stream()
        .map(w -> "%s: %s gives %s".formatted(w.page().job(), w.page().address(), w.answer()))
        .toList();
  }

  private static String files(int count) {
    return count == 1 ? "1 file" : count + " files";
  }

  /** Some pages, of what was just sent first; secret addresses stand in no order. */
  private List<PageList.Row> sample(SendPlan plan) throws IOException {
    Set<String> fresh = new HashSet<>();
    plan.put().forEach(path -> SendPlan.customersFolder(path).ifPresent(fresh::add));
    List<PageList.Row> all =
        PageList.read(out).stream()
            .filter(row -> plan.hashes().containsKey(row.folder() + "index.html"))
            .toList();
    return Stream.concat(
            all.stream().filter(row -> fresh.contains(row.folder())),
            all.stream().filter(row -> !fresh.contains(row.folder())))
        .limit(ASKED)
        .toList();
  }
}
