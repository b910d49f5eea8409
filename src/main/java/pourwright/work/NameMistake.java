package pourwright.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.Grade;
import pourwright.batch.Mistake;
import pourwright.batch.Piece;
import pourwright.batch.PieceEvent;
import pourwright.batch.PieceState;
import pourwright.batch.PieceStep;
import pourwright.batch.PlannedAmount;
import pourwright.batch.PlannedStep;
import pourwright.batch.RecordedStep;
import pourwright.batch.RecordedStep.Used;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.stock.FirstExpiredFirstOut.Draw;
import pourwright.stock.FirstExpiredFirstOut.Line;
import pourwright.stock.Movement;

/**
 * Writes a mistake down by its name and puts stock and plan right in the same deed: what never went
 * in goes back into its lot, what went in beside the plan is drawn, pieces it reached are sorted,
 * so that the plan makes others in their place. One undo takes all of it back.
 */
public final class NameMistake {
  private final Doing doing;

  NameMistake(Doing doing) {
    this.doing = doing;
  }

  /**
   * A mistake.
   *
   * @param batch where it happened; null when only pieces are named
   * @param pieces those it reached; empty for all of the batch
   * @param otherLot the bottle that was taken, for {@link Mistake#WRONG_BOTTLE}
   */
  public record Request(
      Mistake mistake, @Nullable Long batch, List<Long> pieces, @Nullable Long otherLot) {

    /** Keeps its own copy. */
    public Request {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * What was put right.
   *
   * @param mistake which
   * @param moved what moved in stock, by material; positive into it
   * @param sorted how many pieces were sorted or scrapped
   */
  public record Righted(Mistake mistake, Map<String, Amount> moved, int sorted) {

    /** Keeps its own copy. */
    public Righted {
      moved = new LinkedHashMap<>(moved);
    }
  }

  /** Writes it down, or says why it cannot have been. */
  public Outcome<Righted> run(Act act, Request request) {
    return doing.once(
        act,
        "mistake: " + request.mistake().words(),
        turn -> right(turn, request),
        (books, deed) -> righted(books, request.mistake(), deed));
  }

  private static Righted righted(Books books, Mistake mistake, Deed deed) {
    Map<String, Amount> moved = new TreeMap<>();
    for (Movement movement : books.lots().ofDeed(deed.id())) {
      String material = books.lots().shelf(movement.lot()).orElseThrow().lot().material();
      moved.merge(material, movement.change(), Amount::plus);
    }
    return new Righted(mistake, moved, books.pieces().touchedBy(deed.id()).size());
  }

  private static Outcome<Righted> right(Turn turn, Request request) {
    List<Piece> pieces = new ArrayList<>();
    for (long id : request.pieces().stream().distinct().toList()) {
      Optional<Piece> piece = turn.books().pieces().piece(id);
      if (piece.isEmpty()) {
        return Doing.notOnFile("piece " + id);
      }
      pieces.add(piece.get());
    }
    Batch batch = null;
    if (request.batch() != null) {
      Optional<Batch> found = turn.books().batches().batch(request.batch());
      if (found.isEmpty()) {
        return Doing.notOnFile("batch " + request.batch());
      }
      batch = found.get();
    }
    if (batch == null && pieces.isEmpty()) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE, "no piece and no batch is named", "tick what it happened to");
    }
    if (batch != null && pieces.isEmpty() && request.mistake() != Mistake.DROPPED) {
      pieces.addAll(turn.books().pieces().ofBatch(batch.id()));
    }
    pieces.removeIf(p -> p.state() instanceof PieceState.Gone);
    Outcome<Righted> bar = bar(turn, request, batch, pieces);
    if (bar != null) {
      return bar;
    }
    Deed deed =
        turn.deed(
            batch == null
                ? Subject.of(Subject.Kind.PIECE, pieces.get(0).id())
                : Subject.of(Subject.Kind.BATCH, batch.id()));
    List<Used> used = batch == null ? List.of() : stock(turn, request, batch, pieces.size(), deed);
    if (batch != null) {
      note(turn, request.mistake(), batch, used, deed);
    }
    sort(turn, request.mistake(), pieces, deed);
    if (request.mistake() == Mistake.OVERHEATED && batch != null && batch.isRunning()) {
      turn.books().batches().finish(batch.id(), deed);
      answerTimers(turn, batch, deed);
    }
    return Turn.done(deed, righted(turn.books(), request.mistake(), deed));
  }

  private static @Nullable Outcome<Righted> bar(
      Turn turn, Request request, @Nullable Batch batch, List<Piece> pieces) {
    Mistake mistake = request.mistake();
    if (batch != null && !mistake.happensTo(batch.plan().kind())) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE,
          mistake.words() + " is a mistake of a pour",
          "name it at the pouring bench");
    }
    if (batch == null && mistake != Mistake.DROPPED && mistake != Mistake.BUMPED) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE,
          mistake.words() + " happens to a whole pour",
          "name it on the page of the pour");
    }
    if (mistake == Mistake.DROPPED && pieces.isEmpty()) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE,
          "it is not said which piece fell",
          "tick its mark; of a mold that fell, count fewer at demolding");
    }
    boolean scent =
        mistake == Mistake.DOSED_TWICE
            || mistake == Mistake.WRONG_BOTTLE
            || mistake == Mistake.SCENT_FORGOTTEN;
    if (scent && batch != null && recorded(turn.books(), batch).isEmpty()) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE,
          "no scent is recorded for this pour yet",
          "record the step first, then say what went wrong with it");
    }
    return mistake == Mistake.WRONG_BOTTLE ? bottleBar(turn, request.otherLot()) : null;
  }

  private static @Nullable Outcome<Righted> bottleBar(Turn turn, @Nullable Long lot) {
    return lot == null || turn.books().lots().shelf(lot).isEmpty()
        ? Outcome.refused(
            Reason.INPUT_CANNOT_BE,
            "it is not said which bottle it was",
            "choose the bottle that was taken")
        : null;
  }

  /** What the scent step of a pour recorded, in the order it was taken. */
  private static List<Used> recorded(Books books, Batch batch) {
    return books.batches().steps(batch.id()).stream()
        .filter(s -> s.key().equals(PourWalk.SCENT))
        .flatMap(s -> s.used().stream())
        .toList();
  }

  private static List<Used> stock(Turn turn, Request request, Batch batch, int reached, Deed deed) {
    return switch (request.mistake()) {
      case SCENT_FORGOTTEN -> {
        putBack(turn, batch, scents(batch), deed);
        yield List.of();
      }
      case DOSED_TWICE -> drawAgain(turn, batch, deed);
      case WRONG_BOTTLE -> swap(turn, request, batch, deed);
      case WITHOUT_A_WICK -> {
        putBackWicks(turn, batch, reached, deed);
        yield List.of();
      }
      default -> List.of();
    };
  }

  private static Set<String> scents(Batch batch) {
    return batch.plan().steps().stream()
        .filter(s -> s.key().equals(PourWalk.SCENT))
        .flatMap(s -> s.amounts().stream())
        .map(PlannedAmount::material)
        .collect(Collectors.toSet());
  }

  /** What a batch holds of each lot of some materials. */
  private static Map<Long, Amount> inBatch(Books books, long batch, Set<String> materials) {
    Map<Long, Amount> held = new TreeMap<>();
    for (Movement movement : books.lots().ofBatch(batch)) {
      String material = books.lots().shelf(movement.lot()).orElseThrow().lot().material();
      if (materials.contains(material)) {
        held.merge(movement.lot(), movement.change().negated(), Amount::plus);
      }
    }
    held.values().removeIf(a -> !a.isPositive());
    return held;
  }

  private static void putBack(Turn turn, Batch batch, Set<String> materials, Deed deed) {
    inBatch(turn.books(), batch.id(), materials)
        .forEach(
            (lot, amount) ->
                turn.books().lots().append(lot, amount, Cause.RETURNED, batch.id(), deed));
  }

  private static List<Used> drawAgain(Turn turn, Batch batch, Deed deed) {
    List<Used> used = new ArrayList<>();
    for (Used once : recorded(turn.books(), batch)) {
      used.addAll(draw(turn, batch, once.material(), null, once.amount(), deed));
    }
    return used;
  }

  private static List<Used> swap(Turn turn, Request request, Batch batch, Deed deed) {
    Amount all = null;
    for (Used once : recorded(turn.books(), batch)) {
      all = all == null ? once.amount() : all.plus(once.amount());
    }
    putBack(turn, batch, scents(batch), deed);
    Long lot = request.otherLot();
    if (all == null || lot == null) {
      return List.of();
    }
    String material = turn.books().lots().shelf(lot).orElseThrow().lot().material();
    return draw(turn, batch, material, lot, all, deed);
  }

  /** From one lot as far as it goes, or by expiry; what is not in the books is noted as missing. */
  private static List<Used> draw(
      Turn turn, Batch batch, String material, @Nullable Long lot, Amount wanted, Deed deed) {
    List<Line> lines = new ArrayList<>();
    Amount missing;
    if (lot == null) {
      Draw draw = Drawing.planned(turn, material, wanted);
      lines.addAll(draw.lines());
      missing = draw.missing();
    } else {
      Amount there = turn.books().lots().shelf(lot).orElseThrow().onHand().min(wanted);
      if (there.isPositive()) {
        lines.add(new Line(lot, there));
      }
      missing = wanted.minus(there);
    }
    List<Used> used = new ArrayList<>();
    for (Line line : lines) {
      turn.books()
          .lots()
          .append(line.lot(), line.amount().negated(), Cause.DRAWN, batch.id(), deed);
      used.add(new Used(material, line.lot(), line.amount()));
    }
    if (missing.isPositive()) {
      used.add(new Used(material, null, missing));
    }
    return used;
  }

  /** Wick, tab and sticker of so many vessels go back to where they were drawn from. */
  private static void putBackWicks(Turn turn, Batch batch, int vessels, Deed deed) {
    int planned = batch.plan().pieces();
    for (PlannedStep step : batch.plan().steps()) {
      if (!step.key().equals("tab")) {
        continue;
      }
      for (PlannedAmount amount : step.amounts()) {
        long left = amount.amount().units() / planned * vessels;
        for (var held : inBatch(turn.books(), batch.id(), Set.of(amount.material())).entrySet()) {
          Amount back = held.getValue().min(new Amount(amount.amount().kind(), left));
          if (back.isPositive()) {
            turn.books().lots().append(held.getKey(), back, Cause.RETURNED, batch.id(), deed);
            left -= back.units();
          }
        }
      }
    }
  }

  private static void note(Turn turn, Mistake mistake, Batch batch, List<Used> used, Deed deed) {
    String said = turn.act().note();
    String note = said.isBlank() ? mistake.words() : mistake.words() + ": " + said;
    RecordedStep step =
        new RecordedStep(
            0,
            batch.id(),
            mistake.stepKey(),
            used,
            null,
            note,
            turn.now(),
            turn.act().by(),
            deed.id());
    turn.books().batches().append(step);
  }

  private static void sort(Turn turn, Mistake mistake, List<Piece> pieces, Deed deed) {
    Optional<Grade> grade = mistake.grade();
    for (Piece piece : grade.isEmpty() ? List.<Piece>of() : pieces) {
      PieceStep step = grade.get() == Grade.SCRAP ? PieceStep.SCRAPPED : PieceStep.GRADED;
      turn.books().pieces().append(sorted(turn, piece.id(), step, grade.get(), deed));
    }
  }

  private static PieceEvent sorted(Turn turn, long piece, PieceStep step, Grade grade, Deed deed) {
    return new PieceEvent(0, piece, step, turn.now(), null, null, grade, null, deed.id());
  }

  private static void answerTimers(Turn turn, Batch batch, Deed deed) {
    Subject subject = Subject.of(Subject.Kind.BATCH, batch.id());
    turn.books().timers().of(subject).stream()
        .filter(t -> t.answeredAt() == null)
        .forEach(t -> turn.books().timers().answer(t.id(), deed));
  }

  /**
   * Sorts what a batch made by the mistakes that were named while it was under way: those made
   * before the pour only where they last. Belongs to the deed that closes the batch.
   */
  static void sortByMistakes(Turn turn, long batch, List<Long> pieces, Deed deed) {
    Optional<Batch> found = turn.books().batches().batch(batch);
    boolean cast = found.isPresent() && found.get().plan().kind() == BatchKind.CAST;
    Grade worst =
        sorting(cast, turn.books().batches().steps(batch).stream().map(RecordedStep::key).toList())
            .orElse(null);
    if (worst != null) {
      for (long piece : pieces) {
        turn.books().pieces().append(sorted(turn, piece, PieceStep.GRADED, worst, deed));
      }
    }
  }

  /**
   * How all pieces of a batch are sorted for the mistakes named so far; empty where they stay
   * first.
   *
   * @param cast whether it is a cast, whose pieces are there from the beginning
   * @param steps keys of what was recorded, in its order
   */
  static Optional<Grade> sorting(boolean cast, List<String> steps) {
    boolean poured = cast;
    Grade worst = null;
    for (String step : steps) {
      poured |= step.equals(PourWalk.POUR);
      Optional<Mistake> mistake = step.startsWith("mistake-") ? Mistake.of(step) : Optional.empty();
      if (mistake.isPresent() && (poured || mistake.get().isLasting())) {
        Grade grade = mistake.get().grade().orElse(null);
        boolean reaches = mistake.get() != Mistake.WITHOUT_A_WICK; // a wick was set while liquid
        if (grade != null && reaches && (worst == null || grade.compareTo(worst) > 0)) {
          worst = grade;
        }
      }
    }
    return Optional.ofNullable(worst);
  }
}
