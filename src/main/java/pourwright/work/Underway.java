package pourwright.work;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.batch.RecordedStep;
import pourwright.batch.Tightness;
import pourwright.card.CardBook;
import pourwright.plan.RunningCast;
import pourwright.plan.RunningCast.Stage;
import pourwright.plan.VesselKind;

/** Casts under way, from the books: in the mold, hardening, hard, or with a coat that dries. */
final class Underway {
  private static final List<String> STATES = List.of("Green", "Hardened", "Damp");

  /** A cast that was begun longer ago than this was forgotten, not left to set. */
  private static final Duration FORGOTTEN = Duration.ofDays(30);

  private record Group(long batch, VesselKind kind, Stage stage, Instant since) {}

  private Underway() {}

  /** What is under way now, the furthest first. */
  static List<RunningCast> of(Books books, CardBook book, Set<Long> stopped, Instant now) {
    Map<String, Group> groups = new TreeMap<>();
    Map<String, Integer> pieces = new TreeMap<>();
    List<PieceBook.Standing> free =
        books.pieces().standing(STATES).stream()
            .filter(one -> one.isFirst() && !stopped.contains(one.piece()))
            .toList();
    Map<Long, Piece> known =
        books.pieces().pieces(free.stream().map(PieceBook.Standing::piece).toList());
    for (PieceBook.Standing one : free) {
      Piece piece = known.get(one.piece());
      if (piece != null) {
        Optional<VesselKind> kind = WorkPlan.kind(book, one.vesselDesign(), one.madeBy());
        Stage stage = stage(piece.state());
        if (stage != null && kind.isPresent()) {
          count(
              new Group(piece.madeIn(), kind.get(), stage, piece.state().since()),
              1,
              groups,
              pieces);
        }
      }
    }
    for (Batch batch : books.batches().running()) {
      Instant covered = covered(books, batch);
      if (covered != null && covered.isAfter(now.minus(FORGOTTEN))) {
        for (BatchPlan.Makes makes : batch.plan().makes()) {
          WorkPlan.kind(book, makes.design(), batch.plan().card())
              .ifPresent(
                  kind ->
                      count(
                          new Group(batch.id(), kind, Stage.SETTING, covered),
                          makes.count(),
                          groups,
                          pieces));
        }
      }
    }
    List<RunningCast> running = new ArrayList<>();
    groups.forEach(
        (key, group) ->
            running.add(
                new RunningCast(
                    key,
                    group.kind(),
                    pieces.getOrDefault(key, 0),
                    group.stage(),
                    since(group.since(), now))));
    running.sort(
        Comparator.comparing(RunningCast::stage)
            .reversed()
            .thenComparing(RunningCast::sinceMin)
            .thenComparing(RunningCast::key));
    return running;
  }

  private static void count(
      Group group, int more, Map<String, Group> groups, Map<String, Integer> pieces) {
    String words = group.stage().name().toLowerCase(java.util.Locale.ROOT);
    String key = "B" + group.batch() + " " + group.kind().vessel() + " " + words;
    groups.merge(key, group, (a, b) -> a.since().isAfter(b.since()) ? a : b);
    pieces.merge(key, more, Integer::sum);
  }

  private static int since(Instant at, Instant now) {
    long minutes = Duration.between(now, at).toMinutes();
    return (int) Math.max(-1_000_000, Math.min(0, minutes));
  }

  private static @Nullable Stage stage(PieceState state) {
    if (state instanceof PieceState.Green) {
      return Stage.HARDENING;
    }
    if (state instanceof PieceState.Hardened) {
      return Stage.HARDENED;
    }
    return state instanceof PieceState.Damp damp
        ? damp.tightness() == Tightness.NONE ? Stage.SEALED : Stage.WETTED
        : null;
  }

  /** When a cast was covered; null for a pour and for one that is not yet in its molds. */
  private static @Nullable Instant covered(Books books, Batch batch) {
    if (batch.plan().kind() != BatchKind.CAST) {
      return null;
    }
    return books.batches().steps(batch.id()).stream()
        .filter(s -> s.key().equals(CastWalk.COVER))
        .map(RecordedStep::at)
        .findFirst()
        .orElse(null);
  }
}
