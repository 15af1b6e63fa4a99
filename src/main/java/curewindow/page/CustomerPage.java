package curewindow.page;

import curewindow.guide.GuideLibrary;
import curewindow.guide.JobFacts;
import curewindow.told.Contact;
import curewindow.told.JobView;
import curewindow.told.LaterCare;
import curewindow.words.Words;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Gathers what stands on a job's page. */
final class CustomerPage {

  /** For how many days it is said that something is due; our own choice. */
  private static final int DUE_DAYS = 90;

  private final Cases cases;
  private final JobView view;
  private final Words words;
  private final PageLook look;
  private final SharedFile.All shared;
  private final GuideLibrary guides;
  private final List<String> calendars;
  private final Contact contact;
  private final Asking asking;
  private final List<Asking.Card> asked;
  private final List<CustomerView.Fold> care;

  /** Everything that can stand on the page. */
  private final CustomerView whole;

  /**
   * A job's page.
   *
   * @param views the job in each case of parking, the noted one first
   * @param calendars the calendar of each case but the noted one
   * @param shared the style of what stands below the first screen, and the script
   */
  CustomerPage(
      List<JobView> views,
      List<String> calendars,
      PageLook look,
      SharedFile.All shared,
      GuideLibrary guides) {
    this.cases = new Cases(views);
    this.view = cases.noted();
    this.words = view.words();
    this.look = look;
    this.shared = shared;
    this.guides = guides;
    if (calendars.size() != views.size() - 1) {
      throw new IllegalArgumentException(
          calendars.size() + " calendars for " + views.size() + " cases, the noted one among them");
    }
    this.calendars = calendars;
    this.contact = new Contact(view);
    this.asking = new Asking(cases, contact, guides);
    this.asked = asking.cards();
    this.care = care();
    this.whole = whole();
  }

  /** The words of the page. */
  Words words() {
    return words;
  }

  /**
   * What there is room for.
   *
   * @param questions how many questions
   * @param texts how many care texts; the others are told where they stand
   * @param calendars whether for the calendars of other parkings
   */
  record Room(int questions, int texts, boolean calendars) {

    /** Rather a care text stands in its guide alone than that there are fewer questions. */
    private static final int FEW_QUESTIONS = 4;

    /** The first care text is that of the cautions, which no page goes without. */
    private static final int CAUTIONS = 1;

    boolean canShrink() {
      return questions > 0 || texts > CAUTIONS || calendars;
    }

    /** What can best be missed is left out first, of the questions so many at once. */
    Room smaller(int so) {
      if (questions > FEW_QUESTIONS) {
        return with(Math.max(FEW_QUESTIONS, questions - so));
      }
      if (texts > CAUTIONS) {
        return new Room(questions, texts - 1, calendars);
      }
      return calendars ? new Room(questions, texts, false) : with(Math.max(0, questions - so));
    }

    Room with(int asked) {
      return new Room(asked, texts, calendars);
    }
  }

  /** Room for everything. */
  Room room() {
    return new Room(Asking.MOST, care.size(), true);
  }

  /** What stands on the page with so much room. */
  CustomerView view(Room room) {
    return whole.with(
        asking.of(
            asked.stream().limit(room.questions()).toList(),
            Asking.isMuch(whole.changed().size(), whole.dates())),
        Stream.concat(
                care.stream().limit(room.texts()),
                care.stream().skip(room.texts()).map(CustomerView.Fold::withoutText))
            .toList(),
        room.calendars() ? whole.calendars() : Optional.empty());
  }

  private CustomerView whole() {
    Map<String, String> job = Map.of("id", view.job().id(), "car", view.car());
    List<Answers.Answer> answers = new Answers(cases).all();
    ParkingChoice parking = new ParkingChoice(cases);
    List<Cases.Said<CustomerView.Note>> changed = cases.each(v -> new CardNotes(v).later());
    DateList.Dates dates = new DateList(cases).dates();
    return new CustomerView(
        words.language(),
        words.rightToLeft() ? "rtl" : "ltr",
        true,
        words.text("page.title", Map.of("car", view.car(), "shop", view.shop().name())),
        new CustomerView.Share(
            words.text("page.share.title", Map.of("shop", view.shop().name())),
            words.text("page.share.text"),
            view.shop().address().resolve(PublicViews.SHARED).toString()),
        greeting(view),
        look,
        shared.below().href(),
        shared.script().href(),
        contact.card(words.text("page.reach.subject", job), words.text("page.reach.body", job)),
        HouseLogo.of(view.shop(), "../../"),
        changed,
        answers,
        answers.isEmpty(),
        cases.each(CustomerPage::notes),
        dates,
        parking.choice(),
        calendars.isEmpty() ? Optional.empty() : Optional.of(CalendarLines.json(calendars)),
        parking.here(),
        cases.text(CustomerPage::basis),
        asking.of(asked, Asking.isMuch(changed.size(), dates)),
        new CarPicture(view, shared.cars().get(view.job().car().body())).picture(),
        new Fittings(view).work(),
        care,
        words.text("page.kept", Map.of("day", "{day}")),
        words.text("page.private", job));
  }

  private static List<CustomerView.Note> notes(JobView shown) {
    List<CustomerView.Note> notes = new ArrayList<>();
    new SeenWords(shown).note().ifPresent(notes::add);
    notes.addAll(new CardNotes(shown).sooner());
    new CoatingFirst(shown).note().ifPresent(notes::add);
    LaterCare.of(shown).stream()
        .filter(due -> due.kind() != LaterCare.Kind.REPLACE)
        .forEach(due -> notes.add(due(due, shown)));
    return notes;
  }

  /** What is due within few years is said once it is; of new film the record tells. */
  private static CustomerView.Note due(LaterCare due, JobView shown) {
    Words words = shown.words();
    ZonedDateTime from = due.day().atStartOfDay(shown.shop().zone());
    String text =
        words.text(
            "page.later", Map.of("what", due.title(shown, words), "day", words.date(due.day())));
    return new CustomerView.Note(
        text,
        Optional.of(from.toEpochSecond()),
        Optional.of(from.plusDays(DUE_DAYS).toEpochSecond()));
  }

  private static String basis(JobView shown) {
    String place = new JobFacts(shown).value("job.place").orElse("");
    return shown.words().text("page.basis", Map.of("place", place));
  }

  /** Whose page it is. */
  private static String greeting(JobView view) {
    Words words = view.words();
    String car = view.car();
    String name = view.job().firstName();
    return name.isBlank()
        ? words.text("page.greeting-nameless", Map.of("car", car))
        : words.text("page.greeting", Map.of("name", name, "car", car));
  }

  /** The care texts of any case, each once. */
  private List<CustomerView.Fold> care() {
    List<List<CareText.Text>> texts =
        cases.views().stream()
            .map(v -> new CareText(guides, words.language(), new JobFacts(v)).care(v))
            .toList();
    Map<String, CareText.Text> each = new LinkedHashMap<>();
    texts.forEach(of -> of.forEach(text -> each.putIfAbsent(text.id(), text)));
    return each.values().stream().map(text -> fold(text, texts)).toList();
  }

  private CustomerView.Fold fold(CareText.Text any, List<List<CareText.Text>> texts) {
    return new CustomerView.Fold(
        any.lang(),
        any.title(),
        Optional.of(MergedHtml.of(texts.stream().map(of -> html(any.id(), of)).toList())),
        PublicSite.fromCustomer(any.lang().orElse(words.language()), any.id()));
  }

  private static String html(String id, List<CareText.Text> texts) {
    return texts.stream()
        .filter(text -> text.id().equals(id))
        .findFirst()
        .map(CareText.Text::html)
        .orElse("");
  }
}
