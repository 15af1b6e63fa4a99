package curewindow.calendar;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.parameter.Related;
import biweekly.property.Summary;
import biweekly.property.Trigger;
import biweekly.util.Duration;
import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.page.JobView;
import curewindow.page.When;
import curewindow.words.Words;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.Date;
import java.util.Map;

/**
 * The dates of one job for the customer's own calendar, as RFC 5545 has it: one event for each hold
 * that ends. The text depends on the job alone, so that pressing twice gives the same file.
 */
public final class CareCalendar {

  private static final String PRODUCT = "-//Curewindow//Care dates//EN";
  private static final Duration LENGTH = Duration.builder().minutes(15).build();
  private static final Duration AT_ONCE = Duration.builder().seconds(0).build();

  private CareCalendar() {}

  /**
   * The calendar of a job, stamped with its pickup time.
   *
   * @param view the job
   * @return the text of an iCalendar file, lines ended by CR LF and folded at 75 octets; to be
   *     written as UTF-8
   */
  public static String text(JobView view) {
    return text(view, view.job().pickup());
  }

  /**
   * The calendar of a job.
   *
   * @param view the job
   * @param stamp the instant at which the dates were made, second precision
   * @return the text of an iCalendar file, lines ended by CR LF and folded at 75 octets; to be
   *     written as UTF-8
   */
  public static String text(JobView view, Instant stamp) {
    ICalendar calendar = new ICalendar();
    calendar.setProductId(PRODUCT);
    calendar.setName(Plain.text(view.words().text("calendar.name", names(view))));
    for (Release release : view.timeline().releases()) {
      calendar.addEvent(event(view, release, stamp));
    }
    return Fold.lines(write(calendar));
  }

  private static VEvent event(JobView view, Release release, Instant stamp) {
    VEvent event = new VEvent();
    event.setUid(EventName.of(view.token(), release.hold()));
    event.setDateTimeStamp(Date.from(stamp));
    event.setDateStart(Date.from(release.end().at()));
    event.setDuration(LENGTH);
    event.setTransparency(true);
    Summary summary = event.setSummary(Plain.text(summary(view, release)));
    summary.setLanguage(view.words().language());
    event.setDescription(Plain.text(details(view))).setLanguage(view.words().language());
    event.setUrl(view.address().toString());
    if (comesIn(release) && !view.shop().street().isEmpty()) {
      event.setLocation(Plain.text(String.join(", ", view.shop().street())));
    }
    if (comesIn(release) || release.hold().equals("windows-up")) {
      event.addAlarm(VAlarm.display(new Trigger(AT_ONCE, Related.START), summary.getValue()));
    }
    return event;
  }

  private static boolean comesIn(Release release) {
    return release.kind() == HoldKind.VISIT || release.end() instanceof Release.AskUs;
  }

  private static String summary(JobView view, Release release) {
    String hold = "hold." + release.hold();
    Words words = view.words();
    if (release.end() instanceof Release.AskUs) {
      return words.text(hold + ".ask", Map.of("when", new When(view).dayAndTime(release)));
    }
    return words.text(hold + ".done");
  }

  private static String details(JobView view) {
    Words words = view.words();
    return words.text("calendar.details", Map.of("address", view.address().toString()))
        + "\n"
        + words.text("calendar.contact", names(view));
  }

  private static Map<String, String> names(JobView view) {
    return Map.of("shop", view.shop().name(), "phone", view.shop().phone());
  }

  private static String write(ICalendar calendar) {
    StringWriter text = new StringWriter();
    try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
      writer.write(calendar);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }
}
