package pourwright.work;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.batch.PlannedAmount;
import pourwright.batch.PlannedStep;
import pourwright.batch.RecordedStep;
import pourwright.card.Amounts;
import pourwright.card.CardBook;
import pourwright.card.CardKind;
import pourwright.plan.PourJob;
import pourwright.plan.RunningPour;
import pourwright.plan.RunningPour.Stage;
import pourwright.plan.VesselKind;
import pourwright.stock.Movement;

/**
 * Pours under way, from the books: begun, molten, setting, or resting.
 *
 * @param pours what is under way, the furthest first
 * @param vessels vessels that still stand on the shelf and are being filled, by kind
 * @param ready candles that were poured so long ago that they are taken to have rested, by design
 */
record PoursUnderway(
    List<RunningPour> pours, Map<VesselKind, Integer> vessels, Map<String, Integer> ready) {
  /** What was begun or poured longer ago than this was forgotten in the books, not at the bench. */
  private static final Duration FORGOTTEN = Duration.ofDays(30);

  private static final List<String> STATES = List.of("Poured", "Resting");
  private static final String TABS = "tab";
  private static final String TRIM = "trim";

  /** How far, and since when. */
  private record At(Stage stage, Instant since) {}

  private static final class Group {
    private final String pour;
    private final Map<String, Integer> candles = new TreeMap<>();
    private Amounts needs = Amounts.NONE;
    private At at;

    Group(String pour, At at) {
      this.pour = pour;
      this.at = at;
    }
  }

  /** Looks at what is under way, what is held left out. */
  static PoursUnderway of(
      Books books, CardBook book, Set<Long> stopped, Set<String> heldCandles, Instant now) {
    Reader reader = new Reader(books, book, now);
    reader.pieces(stopped, heldCandles);
    for (Batch batch : books.batches().running()) {
      if (batch.plan().kind() == BatchKind.POUR
          && batch.startedAt().isAfter(now.minus(FORGOTTEN))
          && batch.plan().makes().stream().noneMatch(m -> heldCandles.contains(m.design()))) {
        reader.running(batch);
      }
    }
    return reader.found();
  }

  private static final class Reader {
    private final Books books;
    private final CardBook book;
    private final Instant now;
    private final Map<String, Group> groups = new TreeMap<>();
    private final Map<VesselKind, Integer> vessels = new TreeMap<>();
    private final Map<String, Integer> ready = new HashMap<>();

    Reader(Books books, CardBook book, Instant now) {
      this.books = books;
      this.book = book;
      this.now = now;
    }

    void pieces(Set<Long> stopped, Set<String> heldCandles) {
      List<PieceBook.Standing> free =
          books.pieces().standing(STATES).stream()
              .filter(one -> one.isFirst() && !stopped.contains(one.piece()))
              .filter(one -> !heldCandles.contains(one.design()))
              .toList();
      Map<Long, Piece> known =
          books.pieces().pieces(free.stream().map(PieceBook.Standing::piece).toList());
      Set<Long> pours = new HashSet<>();
      known.values().forEach(p -> pours.addAll(pour(p.state())));
      Map<Long, List<BatchBook.StepTime>> times = books.batches().stepTimes(List.copyOf(pours));
      for (PieceBook.Standing one : free) {
        Piece piece = known.get(one.piece());
        if (piece != null) {
          piece(one.design(), piece.state(), times);
        }
      }
    }

    private static List<Long> pour(PieceState state) {
      if (state instanceof PieceState.Poured poured) {
        return List.of(poured.pour());
      }
      return state instanceof PieceState.Resting resting ? List.of(resting.pour()) : List.of();
    }

    private void piece(String design, PieceState state, Map<Long, List<BatchBook.StepTime>> times) {
      for (long pour : pour(state)) {
        At at =
            state instanceof PieceState.Resting
                ? new At(Stage.RESTING, state.since())
                : filled(times.getOrDefault(pour, List.of()), state.since());
        if (at.since().isBefore(now.minus(FORGOTTEN))
            || book.find(CardKind.CANDLE, design).isEmpty()) {
          ready.merge(design, 1, Integer::sum);
        } else {
          count(pour, book.candle(design).pour(), at, design, 1);
        }
      }
    }

    /** Of candles whose pour is closed: what was recorded last, else when it was closed. */
    private static At filled(List<BatchBook.StepTime> times, Instant closed) {
      At at = at(times, closed);
      return at.stage().compareTo(Stage.SETTING) < 0 ? new At(Stage.SETTING, closed) : at;
    }

    private static At at(List<BatchBook.StepTime> times, Instant begun) {
      At at = new At(Stage.WICKING, begun);
      for (BatchBook.StepTime step : times) {
        @Nullable Stage stage = stage(step.key());
        if (stage != null && stage.compareTo(at.stage()) >= 0) {
          at = new At(stage, step.at());
        }
      }
      return at;
    }

    private static @Nullable Stage stage(String key) {
      return switch (key) {
        case TABS, PourWalk.TARE -> Stage.WICKED;
        case PourWalk.WARM -> Stage.MELTING;
        case PourWalk.MELT, PourWalk.SCENT, PourWalk.REHEAT -> Stage.MELTED;
        case PourWalk.POUR, PourWalk.SECOND -> Stage.SETTING;
        case TRIM -> Stage.RESTING;
        default -> null;
      };
    }

    /** Its vessels are taken in any case; its candles come only where no mistake sorts them out. */
    void running(Batch batch) {
      List<BatchBook.StepTime> times =
          books.batches().stepTimes(List.of(batch.id())).getOrDefault(batch.id(), List.of());
      At at = at(times, batch.startedAt());
      List<String> keys = times.stream().map(BatchBook.StepTime::key).toList();
      boolean first = NameMistake.sorting(false, keys).isEmpty();
      for (BatchPlan.Makes makes : batch.plan().makes()) {
        if (book.find(CardKind.CANDLE, makes.design()).isPresent()) {
          if (first) {
            Group group = count(batch.id(), batch.plan().card(), at, makes.design(), makes.count());
            group.needs = at.stage().compareTo(Stage.SETTING) < 0 ? left(batch) : Amounts.NONE;
          }
          vessels.merge(VesselKind.of(book.candle(makes.design())), makes.count(), Integer::sum);
        }
      }
    }

    private Group count(long batch, String pour, At at, String design, int more) {
      String key = "B" + batch + " " + at.stage().name().toLowerCase(Locale.ROOT);
      Group group = groups.computeIfAbsent(key, k -> new Group(pour, at));
      if (at.since().isAfter(group.at.since())) {
        group.at = at;
      }
      group.candles.merge(design, more, Integer::sum);
      return group;
    }

    /** What was planned for a batch and is neither recorded nor drawn yet. */
    private Amounts left(Batch batch) {
      Map<String, Double> used = new HashMap<>();
      for (RecordedStep step : books.batches().steps(batch.id())) {
        step.used().forEach(u -> used.merge(u.material(), u.amount().inUsualUnit(), Double::sum));
      }
      Map<String, Double> drawn = new HashMap<>();
      for (Movement movement : books.lots().ofBatch(batch.id())) {
        books
            .lots()
            .shelf(movement.lot())
            .ifPresent(
                shelf ->
                    drawn.merge(
                        shelf.lot().material(), -movement.change().inUsualUnit(), Double::sum));
      }
      Map<String, Double> left = new TreeMap<>();
      for (PlannedStep step : batch.plan().steps()) {
        for (PlannedAmount amount : step.amounts()) {
          left.merge(amount.material(), amount.amount().inUsualUnit(), Double::sum);
        }
      }
      left.replaceAll(
          (material, amount) ->
              Math.max(
                  0,
                  amount
                      - Math.max(
                          used.getOrDefault(material, 0.0), drawn.getOrDefault(material, 0.0))));
      return new Amounts(left);
    }

    PoursUnderway found() {
      List<RunningPour> pours = new ArrayList<>();
      groups.forEach(
          (key, group) -> {
            List<PourJob.Fill> fills = new ArrayList<>();
            group.candles.forEach((design, n) -> fills.add(new PourJob.Fill(design, n, 0)));
            long since = Duration.between(now, group.at.since()).toMinutes();
            pours.add(
                new RunningPour(
                    key,
                    group.pour,
                    fills,
                    group.needs,
                    group.at.stage(),
                    (int) Math.min(0, since)));
          });
      pours.sort(
          Comparator.comparing(RunningPour::stage)
              .reversed()
              .thenComparing(RunningPour::sinceMin)
              .thenComparing(RunningPour::key));
      return new PoursUnderway(pours, vessels, ready);
    }
  }
}
