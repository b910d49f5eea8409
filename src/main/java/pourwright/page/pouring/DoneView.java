package pourwright.page.pouring;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pourwright.batch.RecordedStep;
import pourwright.material.Material;
import pourwright.material.MaterialBook;
import pourwright.material.UnitKind;
import pourwright.page.Desk;
import pourwright.page.pouring.PourPage.DoneStep;
import pourwright.pour.Top;
import pourwright.work.Books;
import pourwright.work.LeftWax;
import pourwright.work.PourWatch;
import pourwright.work.Reading;
import pourwright.work.Subject;

/** What was done in a pour, in the order of the clock: steps and readings. */
final class DoneView {
  private static final Map<String, String> WORDS =
      Map.of(
          PourWatch.WAX_C, "wax %.1f \u00b0C",
          PourWatch.ROOM_C, "room %.1f \u00b0C",
          PourWatch.SECOND_G, "second pour %.1f g",
          LeftWax.WASTE_G, "left over, to waste %.1f g",
          LeftWax.UNWICKED_G, "left over, for unwicked pieces %.1f g",
          LeftWax.PROVED_G, "left over, for a proved candle %.1f g",
          LeftWax.USED_G, "poured into unwicked pieces %.1f g");

  private final Desk desk;

  DoneView(Desk desk) {
    this.desk = desk;
  }

  private record Line(Instant at, DoneStep step) {}

  List<DoneStep> all(Books books, PourWatch watch) {
    List<Line> lines = new ArrayList<>();
    MaterialBook materials = watch.candle().materials();
    watch.done().forEach(s -> lines.add(new Line(s.at(), done(s, materials))));
    Subject subject = Subject.of(Subject.Kind.BATCH, watch.batch().id());
    for (Reading reading : books.readings().of(subject)) {
      String what = words(reading);
      if (!what.isEmpty()) {
        lines.add(
            new Line(
                reading.takenAt(),
                new DoneStep(what, desk.clockTime(reading.takenAt()), reading.note())));
      }
    }
    lines.sort(Comparator.comparing(Line::at));
    return lines.stream().map(Line::step).toList();
  }

  private static String words(Reading reading) {
    for (Top top : Top.values()) {
      if (top.reading().equals(reading.quantity())) {
        return String.format(Locale.ROOT, "%s (%.0f)", top.words(), reading.value());
      }
    }
    String words = WORDS.get(reading.quantity());
    return words == null ? "" : String.format(Locale.ROOT, words, reading.value());
  }

  private static String name(MaterialBook materials, String code) {
    return materials.all().stream()
        .filter(m -> m.code().equals(code))
        .findFirst()
        .map(Material::name)
        .orElse(code);
  }

  private DoneStep done(RecordedStep step, MaterialBook materials) {
    StringBuilder with = new StringBuilder();
    for (RecordedStep.Used used : step.used()) {
      with.append(with.isEmpty() ? "" : ", ")
          .append(
              String.format(
                  Locale.ROOT,
                  used.amount().kind() == UnitKind.COUNT ? "%.0f %s %s" : "%.1f %s %s",
                  used.amount().inUsualUnit(),
                  used.amount().usualUnit(),
                  name(materials, used.material())))
          .append(used.lot() == null ? " (missing in the books)" : "");
    }
    if (step.temperatureC() != null) {
      with.append(with.isEmpty() ? "" : ", ")
          .append(String.format(Locale.ROOT, "%.1f °C", step.temperatureC()));
    }
    if (!step.note().isEmpty()) {
      with.append(with.isEmpty() ? "" : ", ").append(step.note());
    }
    return new DoneStep(step.key(), desk.clockTime(step.at()) + ", " + step.by(), with.toString());
  }
}
