package pourwright.page.house;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.batch.Grade;
import pourwright.batch.Piece;
import pourwright.batch.PieceEvent;
import pourwright.batch.PieceState;
import pourwright.batch.TrayCard;
import pourwright.page.Desk;
import pourwright.quantity.Counted;
import pourwright.stock.Lot;
import pourwright.stock.Shelf;
import pourwright.stock.Trace;
import pourwright.work.Attachment;
import pourwright.work.Books;
import pourwright.work.Hold;
import pourwright.work.Subject;

/** Reads one thing and its trace out of the books. */
final class TraceReader {
  private final Books books;
  private final Desk desk;

  TraceReader(Books books, Desk desk) {
    this.books = books;
    this.desk = desk;
  }

  Optional<TracePage> page(Trace.Node node) {
    return switch (node.kind()) {
      case PIECE -> books.pieces().piece(node.id()).map(this::piece);
      case BATCH -> books.batches().batch(node.id()).map(this::batch);
      case LOT -> books.lots().shelf(node.id()).map(this::lot);
      case ORDER_LINE -> Optional.empty();
    };
  }

  private TracePage piece(Piece piece) {
    List<TracePage.Fact> facts = new ArrayList<>();
    facts.add(new TracePage.Fact("Stands at", piece.state().words()));
    facts.add(new TracePage.Fact("Since", desk.dayAndTime(piece.since())));
    facts.add(new TracePage.Fact("Vessel", piece.vesselDesign()));
    piece.candle().ifPresent(c -> facts.add(new TracePage.Fact("Candle", c)));
    Long tray = piece.tray();
    if (tray != null) {
      books.pieces().tray(tray).ifPresent(t -> facts.add(new TracePage.Fact("Tray card", tray(t))));
    }
    Grade grade = piece.grade();
    if (grade != null) {
      facts.add(new TracePage.Fact("Grade", grade(piece, grade)));
    }
    for (Hold hold : books.holds().stopping(piece.id())) {
      facts.add(new TracePage.Fact("On hold", hold.reason()));
    }
    List<String> events = books.pieces().events(piece.id()).stream().map(this::event).toList();
    String mark = piece.mark().text();
    Subject subject = Subject.of(Subject.Kind.PIECE, piece.id());
    return with("Piece " + mark, facts, events, "/hold?what=" + mark, subject);
  }

  private static String tray(TrayCard tray) {
    return tray.mixedUp()
        ? tray.label() + "; marks mixed up: what it is made of is all that it could be"
        : tray.label();
  }

  private String event(PieceEvent event) {
    return desk.dayAndTime(event.at()) + ": " + event.step().words();
  }

  private TracePage batch(Batch batch) {
    String kind = batch.plan().kind().name().toLowerCase(Locale.ROOT);
    List<TracePage.Fact> facts = new ArrayList<>();
    facts.add(
        new TracePage.Fact(
            "Card", batch.plan().card() + ", version " + batch.plan().cardVersion()));
    facts.add(new TracePage.Fact("Pieces", String.valueOf(batch.plan().pieces())));
    facts.add(new TracePage.Fact("Begun", desk.dayAndTime(batch.startedAt()) + ", " + batch.by()));
    facts.add(
        new TracePage.Fact(
            "Finished",
            batch.finishedAt() == null ? "not yet" : desk.dayAndTime(batch.finishedAt())));
    List<String> events =
        books.batches().steps(batch.id()).stream()
            .map(s -> desk.dayAndTime(s.at()) + ": " + s.key() + " (" + s.by() + ") " + s.note())
            .toList();
    String title = kind.equals("cast") ? "Cast " : "Pour ";
    Subject subject = Subject.of(Subject.Kind.BATCH, batch.id());
    return with(title + batch.mark().text(), facts, events, "", subject);
  }

  private TracePage lot(Shelf shelf) {
    Lot lot = shelf.lot();
    List<TracePage.Fact> facts = new ArrayList<>();
    facts.add(
        new TracePage.Fact(
            "On hand",
            String.format(desk.locale(), "%,.1f", shelf.onHand().inUsualUnit())
                + " "
                + shelf.onHand().usualUnit()));
    facts.add(new TracePage.Fact("Received", desk.day(lot.receivedOn())));
    facts.add(new TracePage.Fact("Opened", day(lot.openedOn(), "not yet")));
    facts.add(new TracePage.Fact("Last good day", day(lot.expiresOn(), "not known")));
    if (shelf.held()) {
      facts.add(new TracePage.Fact("On hold", "yes"));
    }
    Subject subject = Subject.of(Subject.Kind.LOT, lot.id());
    String title = lot.material() + ", lot " + lot.code();
    return with(title, facts, List.of(), "/hold?what=" + lot.code(), subject);
  }

  private String day(@Nullable LocalDate day, String otherwise) {
    return day == null ? otherwise : desk.day(day);
  }

  private TracePage with(
      String title, List<TracePage.Fact> facts, List<String> events, String hold, Subject subject) {
    Trace.Node node = subject.node();
    List<TracePage.Group> back = List.of();
    List<TracePage.Group> onward = List.of();
    if (node != null) {
      back = groups(Trace.walk(node, books.trace()::back, false));
      onward = groups(Trace.walk(node, books.trace()::onward, true));
    }
    List<TracePage.Link> files =
        books.attachments().of(subject).stream().map(TraceReader::file).toList();
    return new TracePage(
        title,
        facts,
        events,
        back,
        onward,
        hold,
        files,
        ways(subject),
        subject.kind() + "/" + subject.id(),
        mistakes(subject));
  }

  private MistakesPart mistakes(Subject subject) {
    return switch (subject.kind()) {
      case PIECE ->
          books.pieces().piece(subject.number()).map(MistakesPart::of).orElse(MistakesPart.none());
      case BATCH ->
          books
              .batches()
              .batch(subject.number())
              .map(b -> MistakesPart.of(books, b))
              .orElse(MistakesPart.none());
      default -> MistakesPart.none();
    };
  }

  /** The grade with the why that was given for it. */
  private String grade(Piece piece, Grade grade) {
    String why =
        books.pieces().events(piece.id()).stream()
            .filter(e -> e.grade() == grade)
            .reduce((a, b) -> b)
            .flatMap(e -> books.deeds().deed(e.deed()))
            .map(d -> d.verb().startsWith("mistake: ") ? d.verb() : d.note())
            .orElse("");
    String word = grade.name().toLowerCase(Locale.ROOT);
    return why.isEmpty() ? word : word + ", " + why;
  }

  private List<TracePage.Link> ways(Subject subject) {
    if (subject.kind() == Subject.Kind.LOT) {
      return List.of(
          new TracePage.Link(
              "Who has what it is in", "/stockroom/lot/" + subject.id() + "/recall"));
    }
    Optional<Piece> piece =
        subject.kind() == Subject.Kind.PIECE
            ? books.pieces().piece(subject.number())
            : Optional.empty();
    if (piece.isEmpty()) {
      return List.of();
    }
    if (piece.get().state() instanceof PieceState.CameBack) {
      return List.of(new TracePage.Link("Clear it for a refill", "/refill/" + subject.id()));
    }
    return piece.get().state() instanceof PieceState.Gone
        ? List.of(
            new TracePage.Link(
                "It came back, broke or hurt", "/after?mark=" + piece.get().mark().text()))
        : List.of();
  }

  private static TracePage.Link file(Attachment attachment) {
    return new TracePage.Link(attachment.name(), "/files/" + attachment.id());
  }

  private List<TracePage.Group> groups(Trace.Reached reached) {
    List<TracePage.Group> groups = new ArrayList<>();
    for (Trace.Kind kind : Trace.Kind.values()) {
      List<TracePage.Link> links = reached.of(kind).stream().map(id -> link(kind, id)).toList();
      if (!links.isEmpty()) {
        groups.add(new TracePage.Group(heading(kind, links.size()), links));
      }
    }
    return groups;
  }

  private static String heading(Trace.Kind kind, int count) {
    String one =
        switch (kind) {
          case LOT -> "lot";
          case BATCH -> "batch";
          case PIECE -> "piece";
          case ORDER_LINE -> "order line";
        };
    String many = kind == Trace.Kind.BATCH ? "batches" : one + "s";
    return Counted.of(count, one, many);
  }

  private TracePage.Link link(Trace.Kind kind, long id) {
    return switch (kind) {
      case LOT ->
          new TracePage.Link(
              books
                  .lots()
                  .shelf(id)
                  .map(s -> s.lot().material() + ", lot " + s.lot().code())
                  .orElse("lot " + id),
              "/lot/" + id);
      case BATCH ->
          new TracePage.Link(
              books
                  .batches()
                  .batch(id)
                  .map(b -> b.plan().kind().name().toLowerCase(Locale.ROOT) + " " + b.mark().text())
                  .orElse("batch " + id),
              "/batch/" + id);
      case PIECE ->
          new TracePage.Link(
              books.pieces().piece(id).map(p -> p.mark().text()).orElse("piece " + id),
              "/piece/" + id);
      case ORDER_LINE -> new TracePage.Link("order line " + id, "/orders");
    };
  }
}
