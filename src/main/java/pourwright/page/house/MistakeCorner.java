package pourwright.page.house;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Grade;
import pourwright.batch.Mistake;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.quantity.Counted;
import pourwright.stock.Amount;
import pourwright.work.Act;
import pourwright.work.AdvancePieces;
import pourwright.work.NameMistake;
import pourwright.work.Outcome;

/** Mistakes by name and grades: one tap each, from whatever page it was seen on. */
public final class MistakeCorner implements Corner {
  private final Desk desk;

  /** Mistakes in this studio. */
  public MistakeCorner(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.post("/mistake", this::mistake);
    routes.post("/grade", this::grade);
  }

  private static List<Long> pieces(Form form) {
    List<Long> pieces = new ArrayList<>();
    form.values("piece").stream()
        .filter(p -> p.matches("\\d{1,18}"))
        .map(Long::valueOf)
        .forEach(pieces::add);
    String subject = form.value("subject");
    if (pieces.isEmpty() && subject.matches("PIECE/\\d{1,18}")) {
      pieces.add(Long.valueOf(subject.substring("PIECE/".length())));
    }
    return pieces;
  }

  private static @Nullable Long number(String text, String before) {
    return text.matches(before + "\\d{1,18}")
        ? Long.valueOf(text.substring(before.length()))
        : null;
  }

  private void mistake(Context http) {
    Form form = Form.of(http);
    String back = Numbers.ownPath(form.value("back"));
    Optional<Mistake> mistake = Mistake.of(form.value("mistake"));
    if (mistake.isEmpty()) {
      Show.done(http, Said.refused("There is no such button.", "Load the page again."), back);
      return;
    }
    Optional<Act> act = form.act(http, form.optionalText("why"));
    if (act.isEmpty()) {
      Show.who(http, form);
      return;
    }
    Outcome<NameMistake.Righted> outcome =
        desk.studio()
            .nameMistake
            .run(
                act.get(),
                new NameMistake.Request(
                    mistake.get(),
                    number(form.value("subject"), "BATCH/"),
                    pieces(form),
                    number(form.value("lot"), "")));
    Show.done(
        http,
        outcome instanceof Outcome.Refused<?> refused
            ? Said.refused(refused)
            : told(outcome.made()),
        back);
  }

  private Said told(NameMistake.Righted righted) {
    Mistake mistake = righted.mistake();
    List<String> lines = new ArrayList<>();
    lines.add(mistake.remedy());
    lines.add("Sellable: " + mistake.sellable());
    for (Map.Entry<String, Amount> moved : righted.moved().entrySet()) {
      lines.add(
          (moved.getValue().isNegative() ? "Drawn: " : "Back in its lot: ")
              + moved.getKey()
              + ", "
              + figure(moved.getValue())
              + ".");
    }
    if (righted.sorted() > 0) {
      lines.add(
          Counted.of(
              righted.sorted(),
              "no longer counts as first; the plan makes another in its place.",
              "no longer count as first; the plan makes others in their place."));
    }
    return Said.warning("Recorded: " + mistake.words() + ".", String.join(" ", lines));
  }

  private String figure(Amount amount) {
    double usual = Math.abs(amount.inUsualUnit());
    String form = amount.usualUnit().equals("pcs") ? "%,.0f" : "%,.1f";
    return String.format(desk.locale(), form, usual) + " " + amount.usualUnit();
  }

  private void grade(Context http) {
    Form form = Form.of(http);
    String back = Numbers.ownPath(form.value("back"));
    List<Long> pieces = pieces(form);
    Optional<Grade> grade = gradeOf(form.value("grade"));
    String why = form.optionalText("why").isEmpty() ? form.optionalText("note") : form.value("why");
    if (pieces.isEmpty() || grade.isEmpty()) {
      Show.done(
          http, Said.refused("Nothing was sorted.", "Tick what is to be sorted, then tap."), back);
      return;
    }
    if (grade.get() == Grade.SECOND && why.isBlank()) {
      Show.done(http, Said.refused("A second needs a why.", "Tap what is wrong with it."), back);
      return;
    }
    Optional<Act> act = form.act(http, why);
    if (act.isEmpty()) {
      Show.who(http, form);
      return;
    }
    PieceStep step = grade.get() == Grade.SCRAP ? PieceStep.SCRAPPED : PieceStep.GRADED;
    Outcome<List<Piece>> outcome =
        desk.studio()
            .advancePieces
            .run(act.get(), new AdvancePieces.Request(pieces, step, grade.get(), null));
    Show.done(
        http,
        outcome instanceof Outcome.Refused<?> refused
            ? Said.refused(refused)
            : Said.done(
                outcome.made().size()
                    + " sorted: "
                    + grade.get().name().toLowerCase(Locale.ROOT)
                    + (why.isBlank() ? "." : ", " + why + ".")),
        back);
  }

  private static Optional<Grade> gradeOf(String word) {
    for (Grade grade : Grade.values()) {
      if (grade.name().toLowerCase(Locale.ROOT).equals(word)) {
        return Optional.of(grade);
      }
    }
    return Optional.empty();
  }
}
