package curewindow.desk;

import curewindow.climate.Place;
import curewindow.cure.PaintTone;
import curewindow.cure.Parking;
import curewindow.desk.FormFields.Choice;
import curewindow.desk.FormFields.Choices;
import curewindow.desk.FormFields.Field;
import curewindow.page.CarSketch;
import curewindow.problem.Nearest;
import curewindow.problem.Problem;
import curewindow.shop.BodyType;
import curewindow.shop.Catalogue;
import curewindow.shop.Film;
import curewindow.shop.JobDraft;
import curewindow.shop.JobDraft.ItemDraft;
import curewindow.shop.Service;
import curewindow.shop.SpotFact;
import curewindow.site.LoadedShop;
import curewindow.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The fields of a job's form, each with what is wrong with its value beside it. */
final class JobFields {

  /** Values under a heading. */
  record Group(String name, List<Choice> choices) {}

  /** A part of the car that can be tapped. */
  record Tap(String spot, String name, String path, boolean chosen) {}

  /** The drawn car with the parts that a film can lie on. */
  record Sketch(String box, String lines, String half, List<Tap> side, List<Tap> above) {}

  /** A fitted item. */
  record Item(
      int number,
      String title,
      String film,
      List<Group> films,
      List<String> problems,
      Choices spots,
      Choices kept,
      Optional<Sketch> sketch,
      boolean glass,
      Field finished,
      Field batch,
      Field vlt,
      Field glassVlt,
      Field warranty,
      Field lampSurface,
      Field lampMinutes) {}

  /**
   * All fields beside the items.
   *
   * @param degrees the units of temperatures, and sign what they are called
   */
  record Rest(
      String degrees,
      String sign,
      Field id,
      Field firstName,
      Choices language,
      Choices body,
      Choices paint,
      Choices finish,
      Field year,
      Field text,
      Choices lacks,
      Choices place,
      Choices day,
      Choices night,
      Field pickup) {}

  private final LoadedShop shop;
  private final Catalogue catalogue;
  private final JobDraft draft;
  private final FormMemory memory;
  private final Degrees degrees;
  private final FormFields fields;
  private final Words words;

  JobFields(
      LoadedShop shop, JobDraft draft, FormMemory memory, List<Problem> problems, Words words) {
    this.shop = shop;
    this.memory = memory;
    this.catalogue = shop.read().catalogue();
    this.draft = draft;
    this.degrees = Degrees.of(shop);
    this.fields = new FormFields(degrees.told(problems), words);
    this.words = words;
  }

  Rest rest() {
    JobDraft.CarDraft car = draft.car();
    return new Rest(
        degrees.units().id(),
        degrees.sign(),
        fields.field("id", draft.id()),
        fields.field("first-name", draft.firstName()),
        fields.choices("language", shop.read().languages(), draft.language(), this::language),
        fields.choices("car.body", BodyType.ids(), car.body(), b -> words.text("car.body." + b)),
        fields.choices(
            "car.paint", PaintTone.ids(), car.paint(), p -> words.text("desk.paint." + p)),
        fields.choices(
            "car.finish", List.of("gloss", "matte"), car.finish(), f -> words.text("finish." + f)),
        fields.field("car.year", car.year()),
        fields.field("car.text", car.text()),
        lacks(car.lacks()),
        places(),
        fields.choices("parking.day", Parking.ids(), draft.parkingDay(), this::parking),
        fields.choices("parking.night", Parking.ids(), draft.parkingNight(), this::parking),
        fields.field("pickup", draft.pickup()));
  }

  /** By name; one that is not known stands for itself, with its problem. */
  private Choices places() {
    List<Choice> all = new ArrayList<>();
    for (Place place : shop.read().places().values()) {
      String name = words.place(place.name(), place.zone());
      all.add(new Choice(place.id(), name, place.id().equals(draft.place())));
    }
    all.sort(Comparator.comparing(c -> Nearest.fold(c.text())));
    if (all.stream().noneMatch(Choice::chosen)) {
      all.add(0, new Choice(draft.place(), draft.place(), true));
    }
    return new Choices("place", all, fields.at("place"));
  }

  private String language(String tag) {
    return shop.words().of(tag).text("language.name");
  }

  private String parking(String id) {
    return words.text("desk.parking." + id);
  }

  /** What a car may lack though its kind usually has it. */
  private Choices lacks(List<String> chosen) {
    return new Choices(
        "car.lacks",
        Stream.of(SpotFact.DEFROSTER, SpotFact.WIPERS, SpotFact.ROLLS)
            .map(SpotFact::id)
            .map(f -> new Choice(f, words.text("desk.lacks." + f), chosen.contains(f)))
            .toList(),
        fields.at("car.lacks"));
  }

  List<Item> items() {
    List<Item> items = new ArrayList<>();
    for (int i = 0; i < draft.items().size(); i++) {
      items.add(item(i + 1, draft.items().get(i)));
    }
    return items;
  }

  private Item item(int number, ItemDraft item) {
    Optional<Service> service = Optional.ofNullable(catalogue.services().get(item.service()));
    List<String> spots = service.map(Service::spots).orElse(List.of());
    return new Item(
        number,
        words.text("desk.form.work", Map.of("n", number)),
        JobForm.name(number, "film"),
        films(item.film()),
        Stream.of("", ".film", ".service")
            .flatMap(end -> fields.at("items[" + number + "]" + end).stream())
            .distinct()
            .toList(),
        new Choices(
            JobForm.name(number, "spots"),
            spots.stream()
                .map(s -> new Choice(s, words.text("spot." + s), item.spots().contains(s)))
                .toList(),
            fields.at(JobForm.name(number, "spots"))),
        kept(number),
        BodyType.of(draft.car().body())
            .filter(b -> !spots.isEmpty())
            .map(b -> sketch(CarSketch.of(b), spots, item.spots())),
        spots.stream().anyMatch(s -> catalogue.is(s, SpotFact.GLASS)),
        fields.field(JobForm.name(number, "finished"), item.finished()),
        fields.field(JobForm.name(number, "batch"), item.batch()),
        fields.field(JobForm.name(number, "vlt"), item.vlt()),
        fields.field(JobForm.name(number, "glass-vlt"), item.glassVlt()),
        fields.field(JobForm.name(number, "warranty-years"), item.warrantyYears()),
        fields.field(JobForm.name(number, "lamp.surface"), degrees.shown(item.lampSurface())),
        fields.field(JobForm.name(number, "lamp.minutes"), item.lampMinutes()));
  }

  /** Carried along unseen, for when the film is another one again. */
  private Choices kept(int number) {
    return new Choices(
        FormMemory.keptName(number),
        memory.kept().getOrDefault(number, List.of()).stream()
            .map(s -> new Choice(s, s, true))
            .toList(),
        List.of());
  }

  private List<Group> films(String chosen) {
    return catalogue.services().values().stream()
        .map(s -> new Group(words.text("service." + s.id()), films(s, chosen)))
        .filter(g -> !g.choices().isEmpty())
        .toList();
  }

  private List<Choice> films(Service service, String chosen) {
    return catalogue.films().values().stream()
        .filter(f -> f.service().equals(service.id()))
        .map((Film f) -> new Choice(f.id(), f.name(), f.id().equals(chosen)))
        .toList();
  }

  private Sketch sketch(CarSketch car, List<String> spots, List<String> chosen) {
    return new Sketch(
        car.box(),
        car.lines(),
        car.half(),
        taps(car, false, spots, chosen),
        taps(car, true, spots, chosen));
  }

  /** Without the whole body, which would lie on all others. */
  private List<Tap> taps(CarSketch car, boolean above, List<String> spots, List<String> chosen) {
    return car.spots().stream()
        .filter(p -> p.above() == above && spots.contains(p.spot()))
        .filter(p -> !catalogue.is(p.spot(), SpotFact.WHOLE))
        .map(
            p ->
                new Tap(
                    p.spot(), words.text("spot." + p.spot()), p.path(), chosen.contains(p.spot())))
        .toList();
  }

  /** The problems that no field shows, once the fields were asked for. */
  List<String> others() {
    return fields.others();
  }
}
