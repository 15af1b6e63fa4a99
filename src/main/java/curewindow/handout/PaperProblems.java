package curewindow.handout;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import curewindow.shop.ShopLogo;
import curewindow.told.JobView;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** What may be wrong with the data of a handout. */
final class PaperProblems {

  /** So many signs of one text are named. */
  private static final int NAMED_SIGNS = 3;

  private PaperProblems() {}

  /** That a sheet has no such place; a paper printed at another would spoil it. */
  static Problem noPlace(int start, int places) {
    return Problem.error(
        "no-such-place",
        Where.file("--start " + start),
        places == 1
            ? "each is on a page of its own; nothing was made"
            : "a sheet has " + places + " places; nothing was made",
        places == 1
            ? "leave out --start, or name a sheet (a4, letter) that several fit on"
            : "count the places row by row, 1 to " + places);
  }

  /** That something of the shop's is shortened, which people would read as it stands. */
  static Problem cut(Where where, String kept, String templateFile) {
    return Problem.notice(
        "cut-to-print",
        where,
        where.path() + " is too long: it is cut to \"" + kept + "\"",
        "shorten it, or give it more room in " + templateFile);
  }

  static Problem tooLong(JobView view, PaperFormat format) {
    String address = view.address().toString();
    return Problem.error(
        "code-too-fine",
        new Where("shop.yaml", 0, 0, "address"),
        "the page address of job "
            + view.job().id()
            + " has "
            + address.length()
            + " characters, too many for a code that scans on "
            + millimetres(format.code())
            + " mm",
        "shorten the address of the site by "
            + excess(PrintedAddress.of(view.address()).code(), format.code())
            + " characters or more, such as https://care.example/ without folders");
  }

  /** That the shop's style sheet makes a code smaller than it is chosen for. */
  static Problem codeTooSmall(String styleFile, double module) {
    return Problem.error(
        "code-too-fine",
        Where.file(styleFile),
        String.format(
            Locale.ROOT,
            "the code has modules of %.2f mm, and under %.1f mm it does not scan safely",
            module,
            QrCode.SMALLEST_MODULE),
        "give .code the width and height that docs/handouts.md has for this handout");
  }

  /** That a template has left out a code. */
  static Problem noCode(String templateFile) {
    return Problem.notice(
        "no-code",
        Where.file(templateFile),
        "a handout has no code, as its template leaves it out or its style sheet gives it no size",
        "put <object type=\"application/x-code\" th:attr=\"data-code=${card.code}\"></object> where"
            + " the code shall be");
  }

  /** That a template puts out the sides of its handouts in no order in which they can be paired. */
  static Problem sidesApart(String templateFile, int pages, int handouts) {
    return Problem.error(
        "template-mistake",
        Where.file(templateFile),
        "its "
            + pages
            + " pages for "
            + handouts
            + " handouts do not come as a front and its back, one handout after the other",
        "put both sheets of a handout into one element with th:each, as hang-tag.html does, and"
            + " let nothing run over the end of a sheet");
  }

  /** That a handout has something that the inks chosen cannot print. */
  static Problem unprintable(String templateFile, Unprintable why) {
    return Problem.error(
        "ink-mistake",
        Where.file(templateFile),
        why.getMessage(),
        why.fix() + ", or print it with --ink screen");
  }

  /** That a logo made of dots is larger on this paper than its dots allow. */
  static Problem coarse(ShopLogo logo, int dots) {
    long needed = (long) Math.ceil(logo.width() * LogoDrawer.FINE / dots);
    return Problem.notice(
        "coarse-logo",
        Where.file(logo.file()),
        "the logo has "
            + dots
            + " dots an inch on paper, and looks coarse below "
            + LogoDrawer.FINE,
        "save it as SVG, or as PNG with " + needed + " dots of width or more");
  }

  /** How many characters have to go before a code scans. */
  private static int excess(String text, double side) {
    int gone = 1;
    while (gone < text.length() && QrCode.fitting(text.substring(gone), side).isEmpty()) {
      gone++;
    }
    return gone;
  }

  private static String millimetres(double value) {
    return String.format(Locale.ROOT, "%s", Math.rint(value) == value ? (int) value : value);
  }

  /** The signs of shop and jobs that no font has. */
  static List<Problem> lackingSigns(List<JobView> views) {
    List<Problem> found = new ArrayList<>();
    Set<String> languages = new LinkedHashSet<>();
    JobView first = views.get(0);
    Where shop = new Where("shop.yaml", 0, 0, "name");
    found.addAll(lacking(first.shop().name(), shop, "write the shop's name without it"));
    for (JobView view : views) {
      found.addAll(
          lacking(
              view.job().firstName() + view.job().car().text(),
              view.job().where(),
              "write the name or the car's text without it"));
      if (languages.add(view.words().language())) {
        found.addAll(lackingWords(view));
      }
    }
    return found;
  }

  private static List<Problem> lackingWords(JobView view) {
    String sample = view.words().text("handout.card.type") + view.words().text("handout.card.safe");
    return lacking(
        sample,
        Where.file("content/words/" + view.words().language()),
        "hand out cards in a language with Latin, Greek, Cyrillic, Hebrew or Arabic letters");
  }

  /** Whether something of a name is left on paper, so that it can be greeted by. */
  static boolean canGreet(String name) {
    return PaperFont.lackingInAll(name).isEmpty()
        && name.codePoints().anyMatch(Character::isLetterOrDigit);
  }

  /** The signs of a text that no font has, in one note. */
  static List<Problem> lacking(String shown, Where where, String fix) {
    int[] signs = PaperFont.lackingInAll(shown).codePoints().toArray();
    if (signs.length == 0) {
      return List.of();
    }
    String named =
        Arrays.stream(signs)
            .limit(NAMED_SIGNS)
            .mapToObj(PaperProblems::named)
            .collect(Collectors.joining(", "));
    int more = signs.length - NAMED_SIGNS;
    String rest = more > 0 ? " and " + more + " more" : "";
    String left = signs.length == 1 ? ", which is left out" : ", which are left out";
    return List.of(
        Problem.notice(
            "missing-glyph",
            where,
            "the fonts of handouts have no sign for " + named + rest + left,
            fix));
  }

  private static String named(int sign) {
    String name = Character.getName(sign);
    return String.format(
        Locale.ROOT,
        "'%s' (U+%04X, %s)",
        Character.toString(sign),
        sign,
        name == null ? "?" : name);
  }
}
