package curewindow.desk;

import curewindow.shop.Job;
import curewindow.site.CallNotes;
import curewindow.site.DueCalls;
import curewindow.site.LoadedShop;
import curewindow.site.VisitNotes;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;

/** What is noted of a car at one tap, and can be taken back at another on the same day. */
enum Noted {
  /** The shop saw the car, or a photo of it. */
  SEEN("seen"),
  /** The customer called. */
  CALLED("called"),
  /** The customer was told what moved. */
  TOLD("told");

  /** The name in forms and addresses. */
  private final String id;

  Noted(String id) {
    this.id = id;
  }

  static Optional<Noted> of(String id) {
    return Arrays.stream(values()).filter(n -> n.id.equals(id)).findFirst();
  }

  String id() {
    return id;
  }

  /** The end of an address that says what was done, with a way to take it back. */
  String done(String done, Job job) {
    return "?done=" + done + "&undo=" + id + "&job=" + job.id();
  }

  /** Takes back the last one of today; tells whether there was one. */
  boolean takeBack(DeskShop desk, Job job) throws IOException {
    DeskShop.Work<Boolean> work = shop -> takeBack(shop, job, desk.today());
    return this == SEEN ? desk.write(work) : desk.note(work);
  }

  private boolean takeBack(LoadedShop shop, Job job, LocalDate today) throws IOException {
    return switch (this) {
      case SEEN -> VisitNotes.takeBack(shop, job, today);
      case CALLED -> CallNotes.takeBack(shop, job.id(), today);
      case TOLD -> DueCalls.takeBack(shop, job.id(), today);
    };
  }
}
