package curewindow.shop;

import curewindow.climate.ObservedHours;
import curewindow.climate.Place;
import curewindow.climate.Places;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads a whole shop folder and checks it together. */
public final class ShopFolder {

  /** The program's own files, or none, would count where one of these is only lost for a day. */
  private static final List<String> FOLDERS =
      List.of(
          "content",
          "content/catalogue",
          "content/guides",
          "content/places",
          "content/words",
          "site-templates",
          "weather");

  private final ShopFiles files;
  private final Instant now;
  private final Problems problems = new Problems();

  private ShopFolder(ShopFiles files, Instant now) {
    this.files = files;
    this.now = now;
  }

  /**
   * Everything in a shop folder, and all problems in it.
   *
   * @param files the files of the shop folder
   * @param now the time of reading; weather counts as measured up to then
   * @return the good values, what was left out, and the problems
   */
  public static ShopRead read(ShopFiles files, Instant now) {
    ShopFolder folder = new ShopFolder(files, now);
    OwnCopies.tell(files, folder.problems);
    try {
      return folder.lacksOne() ? folder.nothing() : folder.read();
    } catch (UncheckedIOException e) {
      folder.problems.add(
          Problem.error(
              "unreadable",
              Where.file("."),
              "a folder cannot be read",
              "check the permissions of the shop folder and the folders in it"));
      return folder.nothing();
    }
  }

  /**
   * The catalogue alone.
   *
   * @param files the files of the shop folder
   * @param problems where it is told what is wrong with it
   * @return its good entries
   */
  public static Catalogue catalogue(ShopFiles files, Problems problems) {
    return new CatalogueReader(files, problems).read();
  }

  /** Whether a folder whose files would be in force cannot be looked into; each is told. */
  private boolean lacksOne() {
    List<String> folders = new ArrayList<>(FOLDERS);
    for (String language : files.folders("content/words")) {
      folders.add("content/words/" + language);
      folders.add("content/guides/" + language);
    }
    return folders.stream().filter(f -> files.isNoFolder(f, problems)).count() > 0;
  }

  private ShopRead nothing() {
    return new ShopRead(
        Optional.empty(),
        new Catalogue(Map.of(), Map.of(), Map.of(), Map.of(), List.of(), List.of()),
        Map.of(),
        Map.of(),
        List.of(),
        List.of(),
        List.of(),
        problems.all());
  }

  private ShopRead read() {
    List<String> languages = languages();
    Broken brokenPlaces = new Broken("content/places");
    Map<String, Place> places = places(brokenPlaces);
    Names placeNames = new Names(Names.PLACE, places.keySet(), brokenPlaces);
    Source source = new Source(ShopReader.FILE, problems);
    ShopReader.Read shop =
        new ShopReader(
                source,
                Names.of("language", languages),
                placeNames.told(),
                new LookReader(files, problems))
            .read(files.text(ShopReader.FILE, problems).flatMap(t -> YamlTree.read(t, source)));
    CatalogueReader catalogueReader = new CatalogueReader(files, problems);
    Catalogue catalogue = catalogueReader.read();
    Known known =
        new Known(
            catalogue,
            catalogueReader.broken(),
            catalogueReader.brokenRules(),
            placeNames,
            languages,
            shop,
            now);
    Map<String, ObservedHours> observed = ObservedReader.read(files, known, places, now, problems);
    JobsReader.Read fitted = new JobsReader(files, problems, known).read();
    JobsReader.Read jobs = VisitsReader.read(files, known, fitted, problems);
    return new ShopRead(
        shop.shop(),
        catalogue,
        places,
        observed,
        languages,
        jobs.good(),
        jobs.broken(),
        problems.all(),
        JobCheck.of(known));
  }

  private List<String> languages() {
    TreeSet<String> languages = new TreeSet<>(files.folders("content/words"));
    languages.retainAll(files.folders("content/guides"));
    return new ArrayList<>(languages);
  }

  private Map<String, Place> places(Broken broken) {
    Map<String, Place> places = new TreeMap<>(Places.builtIn());
    PlaceReader reader = new PlaceReader(files, problems);
    for (String file : files.list("content/places", ".yaml")) {
      reader.read(file, places, broken);
    }
    return Collections.unmodifiableMap(places);
  }
}
