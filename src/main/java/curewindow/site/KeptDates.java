package curewindow.site;

import curewindow.climate.Place;
import curewindow.cure.CureCase;
import curewindow.cure.CureItem;
import curewindow.cure.HoldRule;
import curewindow.cure.KnownDates;
import curewindow.cure.Timeline;
import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/**
 * The dates of the last press, {@code .curewindow.dates} in the shop folder: the weather of a place
 * takes longer to work out than all its jobs. Each stands under a hash of everything that decides
 * it; those of another program are not used. It names no customer, and may be deleted at will.
 */
final class KeptDates implements KnownDates {

  static final String FILE = ".curewindow.dates";

  /** How many dates are kept for each that was asked for: a car has up to six parkings. */
  private static final int MOST = 10;

  /** How many are kept of those that were asked for; a large shop asks for old work first. */
  private static final int LAST = 20_000;

  /** By when they were last asked for. */
  private final Map<String, byte[]> used =
      Collections.synchronizedMap(
          new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<String, byte[]> eldest) {
              return size() > LAST;
            }
          });

  private final Path file;

  /** A place is told by a hash, as it has long tables. */
  private final Map<Place, String> places = new ConcurrentHashMap<>();

  /** Read when first asked for. */
  private Map<String, byte[]> last;

  KeptDates(Path root) {
    this.file = root.resolve(FILE);
  }

  @Override
  public Optional<Timeline> of(CureCase job) {
    String key = key(job);
    byte[] bytes = last().getOrDefault(key, used.get(key));
    if (bytes == null) {
      return Optional.empty();
    }
    used.put(key, bytes);
    try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      return Optional.of(TimelineBytes.read(in, job));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void keep(CureCase job, Timeline dates) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(bytes)) {
      TimelineBytes.write(dates, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    used.put(key(job), bytes.toByteArray());
  }

  /** Everything that dates depend on where nothing was measured, in a fixed order. */
  private String key(CureCase job) {
    StringBuilder all = new StringBuilder();
    all.append(places.computeIfAbsent(job.place(), place -> MadeBefore.print(place.toString())))
        .append(job.stays())
        .append(job.parking());
    all.append(job.paint()).append(job.bay()).append(job.bondEnergy());
    for (CureItem item : job.items()) {
      all.append('\n').append(item.item()).append(' ').append(item.spot());
      all.append(' ').append(item.exposure()).append(' ').append(item.permeance());
      all.append(' ').append(item.finished()).append(item.lamp());
      for (HoldRule rule : item.rules()) {
        all.append('\n').append(rule.hold()).append(rule.kind()).append(rule.need());
        all.append(rule.floorHours()).append(' ').append(rule.limitHours());
      }
    }
    return MadeBefore.print(all.toString());
  }

  private synchronized Map<String, byte[]> last() {
    if (last == null) {
      last = read();
    }
    return last;
  }

  /** A file that is torn, or another program's, is as good as none. */
  private Map<String, byte[]> read() {
    Map<String, byte[]> kept = new ConcurrentHashMap<>();
    if (!Files.isRegularFile(file)) {
      return kept;
    }
    try (DataInputStream in =
        new DataInputStream(
            new BufferedInputStream(new GZIPInputStream(Files.newInputStream(file))))) {
      if (!in.readUTF().equals(program())) {
        return Map.of();
      }
      int count = in.readInt();
      for (int i = 0; i < count; i++) {
        String key = in.readUTF();
        kept.put(key, in.readNBytes(in.readInt()));
      }
      return in.read() < 0 ? kept : Map.of();
    } catch (IOException e) {
      return Map.of();
    }
  }

  private static String program() throws IOException {
    return MadeBefore.print(Inputs.program());
  }

  /**
   * Keeps the dates that were asked for, and others of the last press as long as they may be those
   * of other parkings, which are not asked for where a page stands.
   *
   * @param root the lock of the shop folder
   * @throws IOException where the file cannot be written; the message is for the user
   */
  void save(FolderLock root) throws IOException {
    boolean few = last().size() <= MOST * used.size();
    if (few && last().keySet().containsAll(used.keySet())) {
      return;
    }
    Map<String, byte[]> all = new TreeMap<>(used);
    if (few) {
      all.putAll(last());
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(new GZIPOutputStream(bytes))) {
      out.writeUTF(program());
      out.writeInt(all.size());
      for (Map.Entry<String, byte[]> one : all.entrySet()) {
        out.writeUTF(one.getKey());
        out.writeInt(one.getValue().length);
        out.write(one.getValue());
      }
    }
    AtomicFiles.writePrivate(root.folder().resolve(FILE), bytes.toByteArray());
  }
}
