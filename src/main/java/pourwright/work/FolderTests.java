package pourwright.work;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import pourwright.work.ProofFolder.Section;

/** Burn tests as they stand in a proof folder: verdicts, reasons, every look. */
final class FolderTests {
  private static final List<String> COLUMNS =
      List.of(
          "sample",
          "cycle",
          "min",
          "mass g",
          "flame mm",
          "pool mm",
          "deep mm",
          "wall °C",
          "base °C",
          "seen");
  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

  private final Books books;
  private final ZoneId zone;

  FolderTests(Books books, ZoneId zone) {
    this.books = books;
    this.zone = zone;
  }

  List<Section> sections(List<BurnTest> tests) {
    if (tests.isEmpty()) {
      return List.of(
          new Section(
              "Burn tests", List.of(), List.of(), List.of("No burn test is in the books.")));
    }
    List<Section> sections = new ArrayList<>();
    for (BurnTest test : tests) {
      sections.add(verdict(test));
      sections.add(looks(test));
    }
    return sections;
  }

  private String moment(Instant at) {
    return MINUTE.format(at.atZone(zone));
  }

  private Section verdict(BurnTest test) {
    List<String> notes = new ArrayList<>();
    notes.add(
        "Begun "
            + moment(test.startedAt())
            + " by "
            + test.by()
            + " under the rules '"
            + test.rules()
            + "': "
            + test.purpose());
    BurnTest.Closed closed = test.closed();
    if (closed == null) {
      notes.add("Not closed yet.");
    } else {
      notes.add(
          "Verdict: "
              + closed.verdict().replace('_', ' ')
              + ", "
              + moment(closed.at())
              + " by "
              + closed.by()
              + ".");
      closed.reasons().lines().forEach(notes::add);
    }
    Subject subject = Subject.of(Subject.Kind.BURN_TEST, test.id());
    reading(notes, subject, TestedFacts.TRIM, "Wick trimmed before each cycle to ");
    reading(notes, subject, TestedFacts.LEFT, "Wax left at the end: ");
    for (BurnTest.Sample sample : books.burns().samples(test.id())) {
      books.burns().cycles(sample.id()).forEach(cycle -> notes.add(cycle(sample, cycle)));
    }
    return new Section("Burn test " + test.id(), List.of(), List.of(), notes);
  }

  private Section looks(BurnTest test) {
    List<List<String>> rows = new ArrayList<>();
    for (BurnTest.Sample sample : books.burns().samples(test.id())) {
      for (BurnTest.Cycle cycle : books.burns().cycles(sample.id())) {
        for (BurnTest.Seen seen : books.burns().seen(cycle.id())) {
          rows.add(row(sample, cycle, seen.look()));
        }
      }
    }
    return new Section(
        "Readings of burn test " + test.id(),
        COLUMNS,
        rows,
        rows.isEmpty() ? List.of("Nothing was read.") : List.of());
  }

  private void reading(List<String> notes, Subject subject, String quantity, String what) {
    books
        .readings()
        .newest(subject, quantity)
        .ifPresent(r -> notes.add(what + number(r.value(), 1) + " mm."));
  }

  private String cycle(BurnTest.Sample sample, BurnTest.Cycle cycle) {
    Instant ended = cycle.endedAt();
    String how = cycle.ended();
    return "Sample "
        + sample.label()
        + ", cycle "
        + cycle.number()
        + ": lit "
        + moment(cycle.litAt())
        + (ended == null ? ", burning" : ", out " + moment(ended))
        + (how == null ? "" : ", " + how.replace('_', ' '))
        + ".";
  }

  private static List<String> row(
      BurnTest.Sample sample, BurnTest.Cycle cycle, BurnTest.Look look) {
    Double width = look.poolWidthMm();
    String pool = number(look.poolLengthMm(), 0);
    return List.of(
        sample.label(),
        Integer.toString(cycle.number()),
        number(look.minute(), 0),
        number(look.massG(), 1),
        number(look.flameHeightMm(), 0),
        width == null ? pool : pool + " × " + number(width, 0),
        number(look.poolDepthMm(), 0),
        number(look.wallC(), 0),
        number(look.baseC(), 0),
        seen(look));
  }

  private static String seen(BurnTest.Look look) {
    List<String> seen = new ArrayList<>();
    word(seen, "soot ", look.soot());
    word(seen, "mushroom ", look.mushroom());
    flag(seen, "crack", look.crack());
    flag(seen, "seep", look.seep());
    flag(seen, "smoke", look.smoke());
    Double ignition = look.secondaryIgnitionS();
    if (ignition != null) {
      seen.add("other ignition " + number(ignition, 0) + " s");
    }
    Double smoke = look.afterSmokeS();
    if (smoke != null) {
      seen.add("after-smoke " + number(smoke, 0) + " s");
    }
    if (!look.note().isBlank()) {
      seen.add(look.note());
    }
    return String.join(", ", seen);
  }

  private static void word(List<String> seen, String what, @Nullable String word) {
    if (word != null && !word.isBlank() && !word.equals("none")) {
      seen.add(what + word);
    }
  }

  private static void flag(List<String> seen, String what, @Nullable Boolean flag) {
    if (Boolean.TRUE.equals(flag)) {
      seen.add(what);
    }
  }

  private static String number(@Nullable Double value, int digits) {
    return value == null ? "" : String.format(Locale.ROOT, "%." + digits + "f", value);
  }
}
