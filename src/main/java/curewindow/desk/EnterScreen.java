package curewindow.desk;

import curewindow.words.Words;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;

/** Where the passcode is typed; who has typed it goes on where they were. */
final class EnterScreen {

  /** The address of this screen; who is in already is told so there. */
  static final String PATH = "/enter";

  /** From so many seconds on minutes are told. */
  private static final int LONG = 100;

  private static final int MINUTE = 60;

  /**
   * The screen.
   *
   * @param wrong whether a wrong passcode was typed
   * @param closed for how long nobody can try, in a sentence; empty where one can
   * @param back where to go then
   * @param other where the screen is in the other language
   */
  record View(Frame frame, boolean wrong, Optional<String> closed, String back, String other) {}

  private final DeskPages pages;

  EnterScreen(DeskPages pages) {
    this.pages = pages;
  }

  Answer answer(Request request, Gate gate, Frame frame, Words words) {
    boolean typed = request.isPost() && request.path().equals(PATH);
    String back = back(request);
    Optional<String> session =
        typed ? gate.enter(request.form().one("passcode")) : Optional.empty();
    if (session.isPresent()) {
      return Answer.see(back).with("Set-Cookie", Gate.cookie(session.get()));
    }
    long seconds = gate.closedSeconds();
    String other =
        PATH
            + "?to="
            + frame.other().lang()
            + "&back="
            + URLEncoder.encode(back, StandardCharsets.UTF_8);
    View view = new View(frame, typed, closed(seconds, words), back, other);
    int status = seconds > 0 ? 429 : typed ? 403 : 401;
    Answer answer = Answer.html(status, pages.html("enter", view, words));
    return seconds > 0 ? answer.with("Retry-After", String.valueOf(seconds)) : answer;
  }

  private static Optional<String> closed(long seconds, Words words) {
    if (seconds == 0) {
      return Optional.empty();
    }
    return Optional.of(
        seconds < LONG
            ? words.text("desk.enter.closed", Map.of("n", seconds))
            : words.text("desk.enter.closed-long", Map.of("n", (seconds + MINUTE - 1) / MINUTE)));
  }

  /** Where somebody was: what they looked at, or the form that they sent. */
  private static String back(Request request) {
    if (request.path().equals(PATH)) {
      String named = (request.isPost() ? request.form() : request.query()).one("back");
      return Request.isOwn(named) ? named : PATH;
    }
    boolean form = request.path().equals("/new") || request.path().endsWith("/change");
    String at = request.isPost() ? (form ? request.path() : "/") : request.here();
    return Request.isOwn(at) ? at : "/";
  }
}
