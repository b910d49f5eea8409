package pourwright.page.casting;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import pourwright.batch.Piece;
import pourwright.batch.TrayCard;
import pourwright.card.CardBook;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.work.Act;
import pourwright.work.Books;
import pourwright.work.Drawers;
import pourwright.work.Outcome;
import pourwright.work.PieceBook;

/**
 * Tray cards carry castings through sanding and sealing, where wet stone takes no label: they are
 * split and merged by laying what is ticked on a new card, and owned up to when mixed up.
 */
final class TrayDesk {
  private static final String PATH = "/casting/trays";
  private static final String TEMPLATE = "casting/trays.jte";

  /** Vessels without a tray card that are shown. */
  private static final int LOOSE_MOST = 60;

  private final Desk desk;

  TrayDesk(Desk desk) {
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.get(PATH, http -> Show.page(http, TEMPLATE, page(Form.blank())));
    routes.post(PATH + "/lay", this::lay);
    routes.post(PATH + "/mixed", this::mixed);
  }

  private TraysPage page(Form form) {
    return desk.studio().look(books -> page(books, form));
  }

  private static TraysPage page(Books books, Form form) {
    CardBook book = Drawers.book(books);
    Set<Long> onOne = new HashSet<>();
    List<TraysPage.Tray> trays = new ArrayList<>();
    for (TrayCard tray : books.pieces().trays()) {
      onOne.addAll(tray.pieces());
      List<Piece> pieces = List.copyOf(books.pieces().pieces(tray.pieces()).values());
      Set<String> casts = new TreeSet<>();
      for (Piece piece : pieces) {
        books.batches().batch(piece.madeIn()).ifPresent(b -> casts.add(b.mark().text()));
      }
      trays.add(
          new TraysPage.Tray(
              tray.id(),
              tray.label(),
              tray.mixedUp(),
              String.join(", ", casts),
              pieces.stream().map(p -> tick(p, book)).toList()));
    }
    List<TraysPage.Tick> loose =
        Stream.of(Bay.values())
            .flatMap(
                bay ->
                    books
                        .pieces()
                        .list(new PieceBook.Which(null, bay.state()), null, LOOSE_MOST)
                        .items()
                        .stream())
            .filter(p -> !onOne.contains(p.id()))
            .limit(LOOSE_MOST)
            .map(p -> tick(p, book))
            .toList();
    return new TraysPage(form, trays, loose);
  }

  private static TraysPage.Tick tick(Piece piece, CardBook book) {
    return new TraysPage.Tick(
        String.valueOf(piece.id()),
        CastReader.name(book, piece.vesselDesign())
            + " "
            + piece.mark().text()
            + ", "
            + piece.state().words());
  }

  private void lay(Context http) {
    Form form = Form.of(http);
    List<Long> pieces = PiecesDesk.ticked(form);
    if (pieces.isEmpty()) {
      form.complain("label", "Please tick what lies on it.");
    }
    String label = form.text("label", "what is written on the card");
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty()) {
      Show.again(http, TEMPLATE, page(form));
      return;
    }
    Outcome<TrayCard> outcome = desk.studio().arrangeTrays.lay(act.get(), label, pieces);
    Show.done(
        http,
        outcome instanceof Outcome.Refused<TrayCard> refused
            ? Said.refused(refused)
            : Said.done("Laid on the tray card " + label + "."),
        PATH);
  }

  private void mixed(Context http) {
    Form form = Form.of(http);
    Optional<Long> tray =
        Optional.of(form.value("tray")).filter(t -> t.matches("\\d{1,18}")).map(Long::valueOf);
    Optional<Act> act = form.act(http, "");
    if (act.isEmpty()) {
      Show.who(http, form);
      return;
    }
    Outcome<TrayCard> outcome = desk.studio().arrangeTrays.mixUp(act.get(), tray.orElse(0L));
    Show.done(
        http,
        outcome instanceof Outcome.Refused<TrayCard> refused
            ? Said.refused(refused)
            : Said.note(
                "Written down: marks mixed up.",
                "Each vessel of this tray is traced to all it could be of."),
        PATH);
  }
}
