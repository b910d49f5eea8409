package pourwright.house;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The rooms know only what the design lets them know; every wall is seen to bite. */
class WallsTest {
  private static final JavaClasses HOUSE =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("pourwright");

  private static final List<String> CALCULATORS =
      List.of("cast", "pour", "wick", "heat", "burn", "hazard");
  private static final List<String> CRAFT =
      List.of(
          "quantity",
          "shape",
          "material",
          "cast",
          "pour",
          "wick",
          "heat",
          "burn",
          "hazard",
          "label",
          "cost",
          "card",
          "stock",
          "batch",
          "order",
          "plan");

  /** What each room may know beside itself, the JDK and the libraries that are its own. */
  private static final Map<String, List<String>> MAY_KNOW = mayKnow();

  private static Map<String, List<String>> mayKnow() {
    Map<String, List<String>> may = new LinkedHashMap<>();
    may.put("quantity", List.of());
    may.put("shape", List.of("quantity"));
    may.put("material", List.of("quantity"));
    for (String calculator : CALCULATORS) {
      may.put(calculator, List.of("quantity", "shape", "material"));
    }
    may.put("heat", List.of("quantity"));
    may.put("burn", List.of("quantity", "shape", "material", "heat"));
    may.put("hazard", List.of("quantity"));
    may.put("label", List.of("quantity", "hazard"));
    may.put("card", List.of("quantity", "shape", "material", "cast", "pour", "wick"));
    may.put("stock", List.of("quantity", "material"));
    may.put("batch", List.of("quantity", "stock", "card"));
    may.put("order", List.of("quantity", "card"));
    may.put("cost", List.of("quantity", "stock"));
    may.put("plan", List.of("quantity", "material", "card", "stock", "batch", "order"));
    may.put("work", CRAFT);
    List<String> workAndCraft = with(CRAFT, "work");
    for (String adapter : List.of("cli", "page", "sheet", "store", "solve")) {
      may.put(adapter, workAndCraft);
    }
    may.put("main", with(workAndCraft, "cli", "page", "sheet", "store", "solve"));
    return may;
  }

  private static List<String> with(List<String> rooms, String... more) {
    List<String> all = new ArrayList<>(rooms);
    all.addAll(List.of(more));
    return all;
  }

  static List<String> rooms() {
    return List.copyOf(MAY_KNOW.keySet());
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void aRoomKnowsOnlyItsNeighbours(String room) {
    wallAround(room).check(HOUSE);
  }

  private static ArchRule wallAround(String room) {
    String[] allowed =
        with(MAY_KNOW.getOrDefault(room, List.of()), room).stream()
            .map(r -> "pourwright." + r + "..")
            .toArray(String[]::new);
    return noClasses()
        .that()
        .resideInAPackage("pourwright." + room + "..")
        .should()
        .dependOnClassesThat(resideInAPackage("pourwright..").and(not(resideInAnyPackage(allowed))))
        .allowEmptyShould(true);
  }

  @Test
  void everyRoomIsOnThePlanOfTheHouse() {
    String[] known =
        MAY_KNOW.keySet().stream().map(r -> "pourwright." + r + "..").toArray(String[]::new);
    classes()
        .that()
        .resideInAPackage("pourwright..")
        .should()
        .resideInAnyPackage(known)
        .check(HOUSE);
  }

  @Test
  void theWallAroundACalculatorNoticesABreach() {
    JavaClasses seeded =
        new ClassFileImporter().importClasses(pourwright.heat.SeededBreachKnowsThePour.class);
    assertThat(wallAround("heat").evaluate(seeded).hasViolation()).isTrue();
  }

  private static final ArchRule CRAFT_DOES_NO_IO =
      noClasses()
          .that()
          .resideInAnyPackage(packages(CRAFT))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "java.sql..",
              "java.nio.file..",
              "java.net..",
              "io.javalin..",
              "org.jdbi..",
              "com.fasterxml..",
              "com.google.ortools..",
              "org.apache.pdfbox..",
              "org.slf4j..")
          .orShould()
          .dependOnClassesThat()
          .haveFullyQualifiedName("java.io.File");

  @Test
  void theCraftDoesNoIo() {
    CRAFT_DOES_NO_IO.check(HOUSE);
  }

  @Test
  void theIoWallNoticesABreach() {
    JavaClasses seeded =
        new ClassFileImporter().importClasses(pourwright.heat.SeededBreachReadsAFile.class);
    assertThat(CRAFT_DOES_NO_IO.evaluate(seeded).hasViolation()).isTrue();
  }

  private static final ArchRule CRAFT_ASKS_NO_CLOCK =
      noClasses()
          .that()
          .resideInAnyPackage(packages(CRAFT))
          .should()
          .callMethod(java.time.Instant.class, "now")
          .orShould()
          .callMethod(java.time.LocalDate.class, "now")
          .orShould()
          .callMethod(java.time.LocalDateTime.class, "now")
          .orShould()
          .callMethod(java.time.ZonedDateTime.class, "now")
          .orShould()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(java.util.UUID.class, "randomUUID")
          .orShould()
          .callConstructor(java.util.Random.class)
          .orShould()
          .callMethod(Math.class, "random");

  @Test
  void theCraftAsksNoClockAndMakesNoRandomnessOfItsOwn() {
    CRAFT_ASKS_NO_CLOCK.check(HOUSE);
  }

  @Test
  void theClockWallNoticesABreach() {
    JavaClasses seeded =
        new ClassFileImporter().importClasses(pourwright.heat.SeededBreachReadsTheClock.class);
    assertThat(CRAFT_ASKS_NO_CLOCK.evaluate(seeded).hasViolation()).isTrue();
  }

  /** A library and the only rooms that may import it. */
  private static Map<String, List<String>> libraries() {
    Map<String, List<String>> owners = new LinkedHashMap<>();
    owners.put("java.sql..", List.of("store"));
    owners.put("org.jdbi..", List.of("store"));
    owners.put("org.flywaydb..", List.of("store"));
    owners.put("com.zaxxer..", List.of("store"));
    owners.put("com.google.ortools..", List.of("solve"));
    owners.put("io.javalin..", List.of("page"));
    owners.put("gg.jte..", List.of("page"));
    owners.put("org.apache.pdfbox..", List.of("sheet"));
    owners.put("picocli..", List.of("cli", "main"));
    return owners;
  }

  static List<String> libraryPackages() {
    return List.copyOf(libraries().keySet());
  }

  private static ArchRule ownerOf(String library) {
    return noClasses()
        .that()
        .resideInAPackage("pourwright..")
        .and(not(resideInAnyPackage(packages(libraries().getOrDefault(library, List.of())))))
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .allowEmptyShould(true);
  }

  @ParameterizedTest
  @MethodSource("libraryPackages")
  void aLibraryIsImportedByItsOwnRoomAlone(String library) {
    ownerOf(library).check(HOUSE);
  }

  @Test
  void theLibraryWallNoticesABreach() {
    JavaClasses seeded =
        new ClassFileImporter().importClasses(pourwright.heat.SeededBreachReadsAFile.class);
    assertThat(ownerOf("java.sql..").evaluate(seeded).hasViolation()).isTrue();
  }

  @Test
  void roomsFormNoCycle() {
    slices().matching("pourwright.(*)..").should().beFreeOfCycles().check(HOUSE);
  }

  private static String[] packages(List<String> rooms) {
    return rooms.stream().map(r -> "pourwright." + r + "..").toArray(String[]::new);
  }
}
