package pourwright.page.house;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Mark;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.stock.Trace;
import pourwright.work.Act;
import pourwright.work.AfterSale;
import pourwright.work.Books;
import pourwright.work.Outcome;
import pourwright.work.PageOf;
import pourwright.work.PriceText;
import pourwright.work.RecordAfterSale;
import pourwright.work.Subject;

/** What comes after a sale: returns, breakage, refunds, replacements, complaints, incidents. */
public final class AfterCorner implements Corner {
  private static final int ROWS = 40;
  private static final Map<String, String> SEEN = seen();
  private final Desk desk;

  /** The register of this studio. */
  public AfterCorner(Desk desk) {
    this.desk = desk;
  }

  private static Map<String, String> seen() {
    Map<String, String> seen = new LinkedHashMap<>();
    seen.put("", "no incident");
    seen.put("crack", "a crack");
    seen.put("flare", "a flare");
    seen.put("scorch", "a scorch");
    seen.put("other", "something else");
    return seen;
  }

  private static Map<String, String> kinds() {
    Map<String, String> kinds = new LinkedHashMap<>();
    kinds.put("", "choose what came");
    for (AfterSale.Kind kind : AfterSale.Kind.values()) {
      kinds.put(kind.code(), kind.words());
    }
    return kinds;
  }

  /**
   * The register: finished strings.
   *
   * @param next where earlier ones begin, or an empty string
   */
  public record AfterPage(
      Form form,
      Map<String, String> kinds,
      Map<String, String> seen,
      List<Row> rows,
      String next) {}

  /** An entry. */
  public record Row(String path, String day, String what, String about, String words) {}

  /**
   * One entry, and what can be done about it.
   *
   * @param subject what a photo is kept with, such as {@code PIECE/12}
   * @param files photos
   * @param stops what can be put on hold
   * @param ways where it goes on: the piece, a refill, the order's money
   */
  public record EntryPage(
      String title,
      List<String> facts,
      String subject,
      List<TracePage.Link> files,
      List<Stop> stops,
      List<TracePage.Link> ways) {}

  /** Something that can be held with one tap. */
  public record Stop(String words, String subject) {}

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/after", http -> Show.page(http, "house/after.jte", page(http, begun(http))));
    routes.post("/after", this::record);
    routes.get("/after/{id}", this::entry);
  }

  private static Form begun(Context http) {
    Map<String, String> begun = new LinkedHashMap<>();
    for (String field : List.of("mark", "order", "kind")) {
      String value = http.queryParam(field);
      if (value != null) {
        begun.put(field, value);
      }
    }
    return Form.startingFrom(begun);
  }

  private AfterPage page(Context http, Form form) {
    PageOf<AfterSale> entries =
        desk.studio().look(books -> books.afterSales().list(http.queryParam("next"), ROWS));
    List<Row> rows =
        desk.studio().look(books -> entries.items().stream().map(e -> row(books, e)).toList());
    String next = entries.next();
    return new AfterPage(form, kinds(), SEEN, rows, next == null ? "" : next);
  }

  private Row row(Books books, AfterSale entry) {
    return new Row(
        "/after/" + entry.id(),
        desk.day(entry.learnedOn()),
        what(entry),
        about(books, entry),
        entry.words());
  }

  private static String what(AfterSale entry) {
    return entry.what().isEmpty()
        ? entry.kind().words()
        : entry.kind().words() + ": " + SEEN.getOrDefault(entry.what(), entry.what());
  }

  private static String about(Books books, AfterSale entry) {
    String order = entry.order();
    Long piece = entry.piece();
    String mark =
        piece == null
            ? ""
            : books.pieces().piece(piece).map(p -> p.mark().text()).orElse("piece " + piece);
    return (mark + (order == null ? "" : " order " + order)).strip();
  }

  private void record(Context http) {
    Form form = Form.of(http);
    Optional<String> kind = form.choice("kind", "what came", List.copyOf(kinds().keySet()));
    Optional<Long> piece = form.readIfThere("mark", "a mark", this::piece);
    String order = form.optionalText("order");
    String seen = form.value("seen");
    Optional<LocalDate> learned = form.readIfThere("learned", "a day", LocalDate::parse);
    String currency = desk.studio().look(books -> books.settings().value("currency")).orElse("EUR");
    Optional<Long> refund =
        form.readIfThere("refund", "an amount", t -> PriceText.minor(t, desk.locale(), currency));
    String words = form.text("said", "what was said");
    Optional<Act> act = form.act(http, words);
    boolean incident = kind.filter(k -> k.equals(AfterSale.Kind.INCIDENT.code())).isPresent();
    if (incident && (seen.isEmpty() || !SEEN.containsKey(seen))) {
      form.complain("seen", "Please say what was seen.");
    }
    if (!form.ok() || kind.isEmpty() || act.isEmpty()) {
      Show.again(http, "house/after.jte", page(http, form));
      return;
    }
    Outcome<AfterSale> outcome =
        desk.studio()
            .afterSale
            .run(
                act.get(),
                new RecordAfterSale.Request(
                    AfterSale.Kind.valueOf(kind.get().toUpperCase(java.util.Locale.ROOT)),
                    piece.orElse(null),
                    order.isEmpty() ? null : order,
                    incident ? seen : "",
                    learned.orElse(null),
                    refund.orElse(0L)));
    if (outcome instanceof Outcome.Refused<AfterSale> refused) {
      form.complain("mark", refused.sentence() + ": " + refused.hint() + ".");
      Show.again(http, "house/after.jte", page(http, form));
      return;
    }
    Show.done(http, Said.done("It is in the register."), "/after/" + outcome.made().id());
  }

  private Long piece(String text) {
    return desk.studio()
        .find(Mark.read(text))
        .filter(s -> s.kind() == Subject.Kind.PIECE)
        .map(Subject::number)
        .orElseThrow(
            () ->
                new pourwright.quantity.OutOfRange(
                    "mark", "no piece carries the mark '" + text + "'", "read it again"));
  }

  private void entry(Context http) {
    long id = Numbers.of(http.pathParam("id"));
    EntryPage page =
        desk.studio()
            .look(books -> books.afterSales().entry(id).map(e -> entry(books, e)))
            .orElseThrow(
                () -> new TurnedAway(404, "There is no such entry", "Look in the register."));
    Show.page(http, "house/afterone.jte", page);
  }

  private EntryPage entry(Books books, AfterSale entry) {
    List<String> facts = new ArrayList<>();
    facts.add(about(books, entry) + ", learned on " + desk.day(entry.learnedOn()));
    facts.add(entry.words());
    Long piece = entry.piece();
    String order = entry.order();
    Subject subject =
        piece != null
            ? Subject.of(Subject.Kind.PIECE, piece)
            : new Subject(Subject.Kind.ORDER, order == null ? "" : order);
    List<TracePage.Link> files =
        books.attachments().of(subject).stream()
            .map(a -> new TracePage.Link(a.name(), "/files/" + a.id()))
            .toList();
    return new EntryPage(
        what(entry),
        facts,
        subject.kind() + "/" + subject.id(),
        files,
        piece == null ? List.of() : stops(books, piece),
        ways(books, piece, order));
  }

  private static List<TracePage.Link> ways(
      Books books, @Nullable Long piece, @Nullable String order) {
    List<TracePage.Link> ways = new ArrayList<>();
    if (piece != null) {
      ways.add(new TracePage.Link("The piece and its trace", "/piece/" + piece));
      boolean back =
          books
              .pieces()
              .piece(piece)
              .filter(p -> p.state() instanceof PieceState.CameBack)
              .isPresent();
      if (back) {
        ways.add(new TracePage.Link("Clear it for a refill", "/refill/" + piece));
      }
    }
    if (order != null) {
      String coded = URLEncoder.encode(order, StandardCharsets.UTF_8).replace("+", "%20");
      ways.add(new TracePage.Link("Money of order " + order, "/slate/order/" + coded));
    }
    return ways;
  }

  /** The piece, its design, and every lot in it. */
  private static List<Stop> stops(Books books, long id) {
    List<Stop> stops = new ArrayList<>();
    Optional<Piece> piece = books.pieces().piece(id);
    if (piece.isEmpty()) {
      return stops;
    }
    stops.add(new Stop("mark " + piece.get().mark().text(), "PIECE/" + id));
    piece.get().candle().ifPresent(c -> stops.add(new Stop("design " + c, "CARD/candle/" + c)));
    stops.add(
        new Stop(
            "vessel " + piece.get().vesselDesign(), "CARD/vessel/" + piece.get().vesselDesign()));
    Trace.Reached back =
        Trace.walk(new Trace.Node(Trace.Kind.PIECE, id), books.trace()::back, false);
    for (long lot : back.of(Trace.Kind.LOT)) {
      books
          .lots()
          .shelf(lot)
          .filter(s -> !s.held())
          .ifPresent(
              s ->
                  stops.add(new Stop(s.lot().material() + " lot " + s.lot().code(), "LOT/" + lot)));
    }
    return stops;
  }
}
