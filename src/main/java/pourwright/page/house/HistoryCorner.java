package pourwright.page.house;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.StudioSurroundings;
import pourwright.work.Act;
import pourwright.work.CloseBooks;
import pourwright.work.Deed;
import pourwright.work.Outcome;
import pourwright.work.PageOf;

/** Every deed, newest first, each with its way back. */
public final class HistoryCorner implements Corner {
  private static final int ROWS = 50;
  private final Desk desk;

  /** The history of this studio. */
  public HistoryCorner(Desk desk) {
    this.desk = desk;
  }

  /**
   * The page.
   *
   * @param rows newest first
   * @param next what to ask for to see older ones, or an empty string
   */
  public record HistoryPage(List<Row> rows, String next) {}

  /**
   * One deed.
   *
   * @param id its number
   * @param at when
   * @param by who
   * @param what what was done to what
   * @param note what was said about it
   * @param state such as {@code taken back}, or an empty string
   * @param button what the button says, or an empty string for none
   */
  public record Row(
      long id, String at, String by, String what, String note, String state, String button) {}

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/history", this::show);
    routes.post(
        "/history/{id}/undo", http -> undo(http, List.of(Numbers.of(http.pathParam("id")))));
    routes.post("/undo", this::undoLast);
  }

  private void show(Context http) {
    String after = http.queryParam("after");
    PageOf<Deed> deeds = desk.studio().history(after, ROWS);
    String next = deeds.next();
    List<Row> rows = deeds.items().stream().map(this::row).toList();
    Show.page(http, "house/history.jte", new HistoryPage(rows, next == null ? "" : next));
  }

  private Row row(Deed deed) {
    String subject =
        deed.subject().kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    String of = deed.undoes() == null ? "" : ", deed " + deed.undoes();
    return new Row(
        deed.id(),
        desk.dayAndTime(deed.at()),
        deed.by(),
        deed.verb() + of + ": " + subject + " " + deed.subject().id(),
        deed.note(),
        deed.undone() ? "taken back" : "",
        deed.undone() ? "" : deed.undoes() == null ? "Undo" : "Redo");
  }

  /** What the page showed, and not what somebody else did since; the newest deed without that. */
  private void undoLast(Context http) {
    String deeds = Form.of(http).value("deeds");
    if (deeds.matches("\\d{1,18}(,\\d{1,18}){0,19}")) {
      undo(http, Stream.of(deeds.split(",", -1)).map(Long::valueOf).toList());
      return;
    }
    Optional<Deed> last = StudioSurroundings.undoable(desk);
    if (last.isEmpty()) {
      Show.done(
          http,
          Said.note("There is nothing to take back.", ""),
          Numbers.ownPath(Form.of(http).value("back")));
      return;
    }
    undo(http, List.of(last.get().id()));
  }

  /** Whether what is taken back lies in days whose books are closed. */
  private boolean inClosedDays(long id) {
    return desk.studio()
        .look(
            books ->
                CloseBooks.closed(books)
                    .flatMap(
                        last ->
                            books
                                .deeds()
                                .deed(id)
                                .map(d -> LocalDate.ofInstant(d.at(), desk.zone()))
                                .map(day -> !day.isAfter(last)))
                    .orElse(false));
  }

  /** Takes deeds back, one after the other, until one cannot be. */
  private void undo(Context http, List<Long> ids) {
    Form form = Form.of(http);
    Optional<Act> act = form.act(http, "");
    if (act.isEmpty()) {
      Show.who(http, form);
      return;
    }
    long id = ids.get(0);
    Outcome<Deed> outcome = desk.studio().undo.run(act.get(), id);
    for (int i = 1; i < ids.size() && outcome.isDone(); i++) {
      id = ids.get(i);
      Act next = new Act(act.get().by(), act.get().requestKey() + "-" + i, "");
      outcome = desk.studio().undo.run(next, id);
    }
    String back = form.value("back");
    Said said =
        outcome instanceof Outcome.Refused<Deed> refused
            ? Said.refused(refused)
            : new Said(
                Said.Tone.DONE,
                "Taken back.",
                inClosedDays(id)
                    ? "The books of that day are closed: it counts in the open year."
                    : "Nothing was erased; the history has a button to do it again.");
    Show.done(http, said, back.isEmpty() ? "/history" : Numbers.ownPath(back));
  }
}
