package curewindow.site;

import curewindow.cure.CureCase;
import curewindow.cure.Driver;
import curewindow.cure.ExplanationCause;
import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.cure.Timeline;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Dates as bytes, and back to the same dates. */
final class TimelineBytes {

  private TimelineBytes() {}

  static void write(Timeline dates, DataOutputStream out) throws IOException {
    out.writeInt(dates.releases().size());
    for (Release release : dates.releases()) {
      out.writeUTF(release.hold());
      out.writeUTF(release.kind().name());
      writeEnd(release.end(), out);
      write(release.likely(), out);
      write(release.because(), out);
      write(release.becauseLikely(), out);
      out.writeUTF(release.waitsFor().orElse(""));
    }
  }

  /**
   * Reads dates.
   *
   * @param job whose they are: pickup and zone are known from there
   */
  static Timeline read(DataInputStream in, CureCase job) throws IOException {
    int count = in.readInt();
    List<Release> releases = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      releases.add(
          new Release(
              in.readUTF(),
              HoldKind.valueOf(in.readUTF()),
              readEnd(in),
              readInstant(in),
              readCause(in),
              readCause(in),
              Optional.of(in.readUTF()).filter(hold -> !hold.isEmpty())));
    }
    return new Timeline(job.pickup(), job.place().zone(), releases);
  }

  private static void writeEnd(Release.End end, DataOutputStream out) throws IOException {
    out.writeUTF(end.id());
    write(end.at(), out);
    if (end instanceof Release.AtLimit limit) {
      out.writeDouble(limit.share());
      write(limit.full(), out);
    }
  }

  private static Release.End readEnd(DataInputStream in) throws IOException {
    String id = in.readUTF();
    Instant at = readInstant(in);
    return switch (id) {
      case "safe-by" -> new Release.SafeBy(at);
      case "at-limit" -> new Release.AtLimit(at, in.readDouble(), readInstant(in));
      case "by-season" -> new Release.BySeason(at);
      case "seen" -> new Release.Seen(at);
      default -> throw new IOException("no such end: " + id);
    };
  }

  private static void write(Instant at, DataOutputStream out) throws IOException {
    out.writeLong(at.getEpochSecond());
    out.writeInt(at.getNano());
  }

  private static Instant readInstant(DataInputStream in) throws IOException {
    return Instant.ofEpochSecond(in.readLong(), in.readInt());
  }

  private static void write(ExplanationCause cause, DataOutputStream out) throws IOException {
    out.writeInt(cause.item());
    out.writeUTF(cause.spot());
    out.writeUTF(cause.driver().map(Driver::name).orElse(""));
    out.writeDouble(cause.needHours());
    out.writeDouble(cause.lampHours());
    out.writeDouble(cause.realHours());
    out.writeDouble(cause.bayHours());
    out.writeDouble(cause.meanAir());
    out.writeDouble(cause.meanFilm());
    out.writeDouble(cause.meanDewPoint());
    out.writeDouble(cause.meanRate());
  }

  private static ExplanationCause readCause(DataInputStream in) throws IOException {
    return new ExplanationCause(
        in.readInt(),
        in.readUTF(),
        Optional.of(in.readUTF()).filter(name -> !name.isEmpty()).map(Driver::valueOf),
        in.readDouble(),
        in.readDouble(),
        in.readDouble(),
        in.readDouble(),
        in.readDouble(),
        in.readDouble(),
        in.readDouble(),
        in.readDouble());
  }
}
