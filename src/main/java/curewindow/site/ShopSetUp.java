package curewindow.site;

import curewindow.problem.Problem;
import curewindow.shop.NewShop;
import curewindow.shop.OwnCopies;
import curewindow.shop.ShopDraft;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import curewindow.shop.ShopText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * Sets up a shop folder with a person's own values: what {@link NewShop} lays out, without its
 * sample jobs, whose customers would get pages and stand on the papers of the counter. A file that
 * is there already stays, each is written as a whole, and {@code shop.yaml} comes last: until it is
 * there the folder is none, and can be set up again whatever became of the attempt.
 */
public final class ShopSetUp {

  private static final String SAMPLES = "jobs/";
  private static final String FILMS = "content/catalogue/films.yaml";

  private ShopSetUp() {}

  /**
   * Whether a folder has still to be set up.
   *
   * @param folder a folder that may not be there
   * @return true where it has nothing by the name of {@code shop.yaml}
   */
  public static boolean isNeeded(Path folder) {
    return !Files.exists(folder.resolve(ShopText.FILE), LinkOption.NOFOLLOW_LINKS);
  }

  /**
   * Sets a folder up, unless it is by now.
   *
   * @param folder the folder; it need not be there
   * @param draft the shop
   * @param now the time of reading
   * @return the text of its {@code shop.yaml}, once the folder can be pressed; nothing is written
   *     where values are wrong, or where somebody else has set it up by now
   * @throws IOException where the folder cannot be written; the message is for the user
   */
  public static Saved<String> in(Path folder, ShopDraft draft, Instant now) throws IOException {
    if (!isNeeded(folder)) {
      return overtaken(folder);
    }
    String text = ShopText.of(draft);
    List<Problem> wrong =
        ShopFolder.read(new ShopFiles(folder).with(ShopText.FILE, text), now).problems().stream()
            .filter(Problem::isError)
            .toList();
    if (!wrong.isEmpty()) {
      return new Saved.Refused<>(wrong);
    }
    made(folder);
    try (FolderLock lock = FolderLock.on(folder)) {
      if (!isNeeded(lock.folder())) {
        return overtaken(lock.folder());
      }
      lay(lock.folder(), text);
    }
    return new Saved.Written<>(text);
  }

  private static Saved<String> overtaken(Path folder) {
    return KeptFile.of(new ShopFiles(folder), ShopText.FILE)
        .<Saved<String>>map(Saved.Overtaken::new)
        .orElseGet(() -> KeptFile.byHand(ShopText.FILE));
  }

  private static void lay(Path folder, String shop) throws IOException {
    made(folder.resolve(FILMS).getParent());
    if (!isOwn(folder.resolve(FILMS))) {
      OwnCopies.note(folder, List.of(FILMS));
    }
    for (Map.Entry<String, byte[]> file : NewShop.files().entrySet()) {
      Path target = folder.resolve(file.getKey());
      boolean wanted = !file.getKey().startsWith(SAMPLES) && !file.getKey().equals(ShopText.FILE);
      if (wanted && !Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
        AtomicFiles.write(target, file.getValue());
      }
    }
    AtomicFiles.write(folder.resolve(ShopText.FILE), shop.getBytes(StandardCharsets.UTF_8));
  }

  /** Whether somebody has films of their own there, and no copy of the program's. */
  private static boolean isOwn(Path films) throws IOException {
    return Files.exists(films, LinkOption.NOFOLLOW_LINKS)
        && !(Files.isRegularFile(films)
            && Arrays.equals(Files.readAllBytes(films), NewShop.files().get(FILMS)));
  }

  private static void made(Path folder) throws IOException {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw AtomicFiles.notWritten(folder, e);
    }
  }
}
