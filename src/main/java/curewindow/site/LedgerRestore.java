package curewindow.site;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.Shop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Puts a link ledger together again that was lost or broken: what is whole of it stays, and what it
 * lacks comes from its newest copy, then from the list of pages of the last press.
 */
public final class LedgerRestore {

  /** Where a broken ledger is put aside, relative to the shop folder. */
  static final String BROKEN = "link-ledger-broken.csv";

  private final Path shop;
  private final Path out;
  private final LocalDate today;
  private final List<String> lines = new ArrayList<>();

  private LedgerRestore(Path shop, Path out, LocalDate today) {
    this.shop = shop;
    this.out = out;
    this.today = today;
  }

  /**
   * Restores the ledger.
   *
   * @param loaded a shop folder whose shop.yaml is right
   * @param out the output folder of the last press
   * @param clock tells which day it is
   * @return what became of it
   * @throws IOException where a file cannot be read or written
   */
  public static Outcome run(LoadedShop loaded, Path out, Clock clock) throws IOException {
    Shop own = loaded.shop().orElseThrow();
    List<PageList.Row> pages = PageList.read(out);
    if (!pages.isEmpty()
        && pages.stream().noneMatch(p -> p.address().startsWith(own.address().toString()))) {
      return Outcome.refused(
          out.resolve(PageList.FILE)
              + " is of another shop; name the folder of this shop's last press with --out");
    }
    LocalDate today = LocalDate.now(clock.withZone(own.zone()));
    return new LedgerRestore(loaded.files().root(), out, today).run(pages);
  }

  private Outcome run(List<PageList.Row> pages) throws IOException {
    try (FolderLock lock = FolderLock.on(shop)) {
      Path file = lock.folder().resolve(LinkLedger.FILE);
      Problems broken = new Problems();
      boolean isThere = Files.isRegularFile(file);
      Optional<LinkLedger> whole =
          isThere ? LinkLedger.read(shop, LinkLedger.FILE, broken) : Optional.empty();
      LinkLedger ledger = whole.orElseGet(() -> new LinkLedger(shop));
      int added = fromCopy(ledger) + fromPages(ledger, pages);
      if (added == 0) {
        return whole.isPresent() ? nothingLacks() : nothingFound(broken);
      }
      if (isThere && whole.isEmpty()) {
        AtomicFiles.writePrivate(shop.resolve(BROKEN), Files.readAllBytes(file));
        lines.add("The broken ledger is in " + BROKEN + "; delete it when all is well.");
      }
      ledger.save(today);
      lines.add(LinkLedger.FILE + " has " + ledger.tokens().size() + " addresses now.");
      lines.add("Next: press, and scan a card or two to make sure.");
      return new Outcome(true, lines);
    }
  }

  private int fromCopy(LinkLedger ledger) throws IOException {
    for (String copy : LedgerCopies.of(shop)) {
      Optional<LinkLedger> whole = LinkLedger.read(shop, copy, new Problems());
      if (whole.isPresent()) {
        return told(ledger.add(whole.get()), copy);
      }
    }
    return 0;
  }

  private int fromPages(LinkLedger ledger, List<PageList.Row> pages) {
    int added = 0;
    for (PageList.Row page : pages) {
      String token = page.folder().replaceFirst("^" + PagePaths.CUSTOMERS, "").replace("/", "");
      if (ledger.add(page.job(), token, today)) {
        added++;
      } else if (!ledger.closed().contains(token)
          && ledger.known(page.job()).filter(own -> !own.equals(token)).isPresent()) {
        lines.add(
            "Not restored: "
                + page.job()
                + " was at "
                + page.address()
                + ", and the ledger has another address for it; put in the one on its card by hand");
      }
    }
    return told(added, out.resolve(PageList.FILE).toString());
  }

  private int told(int added, String from) {
    if (added > 0) {
      lines.add(added + (added == 1 ? " address from " : " addresses from ") + from);
    }
    return added;
  }

  private Outcome nothingLacks() {
    lines.add(LinkLedger.FILE + " can be read, and nothing was found that it lacks.");
    return new Outcome(true, lines);
  }

  private Outcome nothingFound(Problems broken) {
    broken.all().stream().map(Problem::oneLine).forEach(lines::add);
    lines.add(
        "Nothing to restore from: there is no copy in "
            + LedgerCopies.FOLDER
            + ", and no "
            + out.resolve(PageList.FILE)
            + "; name the folder of the last press with --out, or bring "
            + LinkLedger.FILE
            + " back from a backup");
    return new Outcome(false, lines);
  }
}
