package curewindow;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The packages stand in layers, each using only those above it, and libraries stay inside. */
class LayersTest {

  /** Top to bottom: a package may use only those before it. */
  private static final List<String> LAYERS =
      List.of(
          "problem",
          "tally",
          "climate",
          "cure",
          "shop",
          "words",
          "told",
          "guide",
          "search",
          "page",
          "handout",
          "calendar",
          "why",
          "site",
          "intake",
          "send",
          "desk",
          "cli");

  /** Which libraries a package may use; what is not named here is the JDK's. */
  private static final Map<String, Set<String>> LIBRARIES =
      Map.ofEntries(
          Map.entry("problem", Set.of()),
          Map.entry("tally", Set.of("org.apache.commons.statistics")),
          Map.entry("climate", Set.of("net.e175.klaus.solarpositioning", "de.siegmar.fastcsv")),
          Map.entry("cure", Set.of()),
          Map.entry("shop", Set.of("tools.jackson", "org.snakeyaml.engine", "de.siegmar.fastcsv")),
          Map.entry("told", Set.of()),
          Map.entry("words", Set.of("com.ibm.icu")),
          Map.entry("guide", Set.of("com.vladsch.flexmark", "org.jsoup")),
          Map.entry("search", Set.of("org.mozilla.javascript")),
          Map.entry("page", Set.of("org.thymeleaf", "org.attoparser", "tools.jackson")),
          Map.entry(
              "handout",
              Set.of(
                  "io.nayuki.qrcodegen",
                  "com.github.weisj.jsvg",
                  "com.openhtmltopdf",
                  "org.apache.fontbox",
                  "org.apache.pdfbox",
                  "org.thymeleaf")),
          Map.entry("calendar", Set.of("biweekly", "com.github.mangstadt.vinnie")),
          Map.entry("why", Set.of("tools.jackson", "de.siegmar.fastcsv")),
          Map.entry("site", Set.of("de.siegmar.fastcsv")),
          Map.entry("intake", Set.of("de.siegmar.fastcsv")),
          Map.entry("send", Set.of("com.jcraft.jsch")),
          Map.entry("desk", Set.of("com.sun.net.httpserver")),
          Map.entry("cli", Set.of("picocli")));

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("curewindow");

  @Test
  void everyPackageIsNamedHere() {
    TreeSet<String> found = new TreeSet<>();
    for (JavaClass c : CLASSES) {
      found.add(c.getPackageName().replaceFirst("^curewindow\\.?", "").replaceFirst("\\..*", ""));
    }
    assertTrue(new TreeSet<>(LAYERS).containsAll(found), () -> "packages: " + found);
  }

  @Test
  void aPackageUsesOnlyThoseAboveIt() {
    for (int i = 0; i < LAYERS.size(); i++) {
      List<String> below = new ArrayList<>();
      for (String name : LAYERS.subList(i + 1, LAYERS.size())) {
        below.add("curewindow." + name + "..");
      }
      if (!below.isEmpty()) {
        noClasses()
            .that()
            .resideInAPackage("curewindow." + LAYERS.get(i) + "..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(below.toArray(String[]::new))
            .allowEmptyShould(true)
            .check(CLASSES);
      }
    }
  }

  /** What is decided for a job is decided once, below all that show it. */
  @Test
  void whatShowsAJobKnowsNothingElseThatDoes() {
    List<String> showing = List.of("page", "handout", "calendar", "why");
    for (String one : showing) {
      String[] others =
          showing.stream()
              .filter(other -> !other.equals(one))
              .map(other -> "curewindow." + other + "..")
              .toArray(String[]::new);
      noClasses()
          .that()
          .resideInAPackage("curewindow." + one + "..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(others)
          .check(CLASSES);
    }
  }

  @Test
  void packagesHaveNoCycles() {
    SlicesRuleDefinition.slices()
        .matching("curewindow.(*)..")
        .should()
        .beFreeOfCycles()
        .check(CLASSES);
  }

  @Test
  void librariesStayInsideTheirPackage() {
    LIBRARIES.forEach(
        (name, libraries) ->
            classes()
                .that()
                .resideInAPackage("curewindow." + name + "..")
                .should()
                .onlyDependOnClassesThat(ownOrJdkOr(libraries))
                .allowEmptyShould(true)
                .check(CLASSES));
  }

  @Test
  void publicSignaturesShowNoLibraryTypes() {
    for (JavaClass c : CLASSES) {
      if (c.getModifiers().contains(com.tngtech.archunit.core.domain.JavaModifier.PUBLIC)
          && !c.getPackageName().equals("curewindow.cli")) {
        c.getMethods().stream()
            .filter(
                m ->
                    m.getModifiers().contains(com.tngtech.archunit.core.domain.JavaModifier.PUBLIC))
            .forEach(
                m -> {
                  List<JavaClass> types = new ArrayList<>(m.getRawParameterTypes());
                  types.add(m.getRawReturnType());
                  types.forEach(
                      t ->
                          assertTrue(
                              isOwnOrJdk(t.getBaseComponentType()),
                              () -> m.getFullName() + " shows " + t.getName()));
                });
      }
    }
  }

  private static DescribedPredicate<JavaClass> ownOrJdkOr(Set<String> libraries) {
    return DescribedPredicate.describe(
        "are ours, the JDK's or " + libraries,
        c ->
            isOwnOrJdk(c.getBaseComponentType())
                || libraries.stream()
                    .anyMatch(l -> c.getBaseComponentType().getPackageName().startsWith(l)));
  }

  private static boolean isOwnOrJdk(JavaClass c) {
    String p = c.getPackageName();
    return c.isPrimitive()
        || p.startsWith("curewindow")
        || p.startsWith("java.")
        || p.startsWith("javax.")
        || p.startsWith("com.sun.net.httpserver")
        || p.startsWith("org.w3c.dom")
        || p.startsWith("org.xml.sax");
  }
}
