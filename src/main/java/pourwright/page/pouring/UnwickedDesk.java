package pourwright.page.pouring;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import pourwright.hazard.Classification;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.press.HazardWords;
import pourwright.work.Act;
import pourwright.work.Books;
import pourwright.work.LeftWax;
import pourwright.work.Outcome;
import pourwright.work.Reading;
import pourwright.work.Subject;
import pourwright.work.Unwicked;

/** Unwicked pieces from what several pitchers left, labelled from their true composition. */
final class UnwickedDesk {
  private static final String TEMPLATE = "pouring/unwicked.jte";
  private static final String PATH = "/pouring/unwicked";

  private final Desk desk;

  UnwickedDesk(Desk desk) {
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.get(PATH, http -> Show.page(http, TEMPLATE, page(Form.asked(http))));
    routes.post(PATH + "/poured", this::poured);
  }

  private static Set<Long> chosen(Form form) {
    Set<Long> chosen = new TreeSet<>();
    for (String id : form.values("pour")) {
      if (id.matches("\\d{1,18}")) {
        chosen.add(Long.parseLong(id));
      }
    }
    return chosen;
  }

  private UnwickedPage page(Form form) {
    return desk.studio().look(books -> page(books, form));
  }

  private UnwickedPage page(Books books, Form form) {
    Set<Long> chosen = chosen(form);
    Unwicked found = Unwicked.of(books, chosen);
    List<UnwickedPage.Kept> kept = new ArrayList<>();
    for (Unwicked.Kept each : found.kept()) {
      long id = each.pour().batch().id();
      kept.add(
          new UnwickedPage.Kept(
              String.valueOf(id),
              String.format(
                  Locale.ROOT,
                  "%s of %s, pour %s",
                  desk.units().massFigure(each.grams()) + " " + desk.units().mass(),
                  each.pour().candle().pour().card().name(),
                  each.pour().batch().mark().text()),
              chosen.contains(id)));
    }
    Classification classification = found.classification();
    if (classification == null) {
      return new UnwickedPage(form, kept, "", List.of(), "", List.of(), List.of());
    }
    List<String> warnings = new ArrayList<>();
    found
        .missing()
        .forEach(m -> warnings.add("Not written down: " + m + ". Nothing can be labelled so."));
    warnings.addAll(classification.stops());
    if (found.missing().isEmpty()) {
      warnings.addAll(classification.warnings());
    }
    return new UnwickedPage(
        form,
        kept,
        desk.units().massFigure(found.grams()) + " " + desk.units().mass(),
        found.shares().stream()
            .map(s -> String.format(Locale.ROOT, "%.2f %% %s", 100 * s.fraction(), s.name()))
            .toList(),
        found.missing().isEmpty()
            ? HazardWords.words(classification)
            : "Cannot be said while a sheet is missing.",
        HazardWords.statements(classification),
        warnings);
  }

  /** They are poured: what they took is no longer there. */
  private void poured(Context http) {
    Form form = Form.of(http);
    Set<Long> chosen = chosen(form);
    Optional<Act> act = form.act(http, "unwicked pieces");
    if (chosen.isEmpty() || act.isEmpty()) {
      Show.done(http, Said.refused("Nothing was chosen.", "Tick what goes in."), PATH);
      return;
    }
    Unwicked found = desk.studio().look(books -> Unwicked.of(books, chosen));
    String with =
        found.kept().stream()
            .filter(k -> chosen.contains(k.pour().batch().id()))
            .map(k -> k.pour().batch().mark().text())
            .collect(Collectors.joining(", "));
    List<Reading> readings = new ArrayList<>();
    for (Unwicked.Kept kept : found.kept()) {
      long id = kept.pour().batch().id();
      if (chosen.contains(id)) {
        Subject subject = Subject.of(Subject.Kind.BATCH, id);
        readings.add(
            new Reading(
                0, subject, LeftWax.USED_G, kept.grams(), desk.now(), null, "with " + with, 0));
      }
    }
    Outcome<List<Reading>> outcome = desk.studio().recordReading.run(act.get(), readings);
    Show.done(
        http,
        outcome instanceof Outcome.Refused<List<Reading>> refused
            ? Said.refused(refused)
            : Said.done("Written down. Label each piece from the composition that stood here."),
        PATH);
  }
}
