package pourwright.page.press;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.quantity.OutOfRange;
import pourwright.work.Act;
import pourwright.work.Attachment;
import pourwright.work.Books;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;
import pourwright.work.FolderPrinter;
import pourwright.work.FolderReader;
import pourwright.work.IssueFolder;
import pourwright.work.IssuedFolder;
import pourwright.work.Outcome;
import pourwright.work.ProofFolder;
import pourwright.work.Subject;

/** The proof folder of a candle: what would stand in it, what is new, issue, list, download. */
final class FolderDesk {
  private static final int CHANGES_SHOWN = 12;

  private final Desk desk;
  private final FolderPrinter printer;

  FolderDesk(Desk desk, FolderPrinter printer) {
    this.desk = desk;
    this.printer = printer;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/press/folder/{code}", this::show);
    routes.post("/press/folder/{code}", this::issue);
  }

  /** The folder as it would be issued now, with the label it would carry. */
  private record Drawn(LabelShown shown, ProofFolder folder) {}

  private Drawn drawn(Books books, Context http, Form form, String riskNotes) {
    LabelShown shown = LabelShown.read(books, http, form);
    ProofFolder folder =
        new FolderReader(books, desk.zone())
            .folder(shown.label(), shown.request(), shown.text(), shown.layout().kept(), riskNotes);
    return new Drawn(shown, folder);
  }

  private void show(Context http) {
    String code = http.pathParam("code");
    PressPages.FolderPage page =
        desk.studio()
            .look(
                books -> {
                  Form form = LabelLayout.asked(http, LabelShown.last(books, code));
                  return page(books, drawn(books, http, form, notes(books, code)), form);
                });
    Show.page(http, "press/folder.jte", page);
  }

  private static String notes(Books books, String code) {
    return books.cards().current(Drawers.FOLDER, code).map(v -> v.body().riskNotes()).orElse("");
  }

  private PressPages.FolderPage page(Books books, Drawn drawn, Form typed) {
    ProofFolder folder = drawn.folder();
    List<CardVersion<IssuedFolder>> issued = books.cards().history(Drawers.FOLDER, folder.candle());
    List<String> changes =
        issued.isEmpty() ? List.of() : issued.get(0).body().changes(folder.lines());
    List<PressPages.Stands> contents = new ArrayList<>();
    for (ProofFolder.Section section : folder.sections()) {
      contents.add(
          new PressPages.Stands(section.head(), section.rows().size() + section.notes().size()));
    }
    return new PressPages.FolderPage(
        folder.candle(),
        folder.name(),
        folder.against(),
        changes.stream().limit(CHANGES_SHOWN).toList(),
        Math.max(0, changes.size() - CHANGES_SHOWN),
        issued.stream().map(v -> issued(books, v)).toList(),
        contents,
        withNotes(typed, notes(books, folder.candle())),
        "/press/candle/" + folder.candle() + LabelLayout.query(typed));
  }

  private static Form withNotes(Form typed, String notes) {
    return typed.values("risks").isEmpty() ? typed.with("risks", notes) : typed;
  }

  private PressPages.Issued issued(Books books, CardVersion<IssuedFolder> version) {
    Optional<Attachment> file =
        books.attachments().of(Subject.card(Drawers.CANDLE, version.code())).stream()
            .filter(a -> a.deed() == version.deed())
            .findFirst();
    return new PressPages.Issued(
        version.version(),
        desk.dayAndTime(version.at())
            + ", "
            + version.by()
            + ", version "
            + version.body().candleVersion()
            + " of the card",
        file.map(a -> "/files/" + a.id()).orElse(""));
  }

  private void issue(Context http) {
    String code = http.pathParam("code");
    Form form = Form.of(http);
    Optional<Act> act = form.act(http, "");
    Drawn drawn = desk.studio().look(books -> drawn(books, http, form, form.value("risks")));
    if (!form.ok() || act.isEmpty()) {
      Show.again(http, "press/folder.jte", desk.studio().look(books -> page(books, drawn, form)));
      return;
    }
    Outcome<CardVersion<IssuedFolder>> outcome;
    try {
      outcome =
          desk.studio()
              .issueFolder
              .run(
                  act.get(),
                  new IssueFolder.Request(
                      drawn.folder(),
                      drawn.shown().text(),
                      drawn.shown().layout().kept(),
                      form.value("risks")),
                  printer);
    } catch (OutOfRange e) {
      throw new TurnedAway(409, e.sentence(), e.hint());
    }
    Show.done(
        http,
        outcome instanceof Outcome.Refused<CardVersion<IssuedFolder>> refused
            ? Said.refused(refused)
            : Said.done(
                "Version " + outcome.made().version() + " is issued and will not change any more."),
        "/press/folder/" + code + LabelLayout.query(form));
  }
}
