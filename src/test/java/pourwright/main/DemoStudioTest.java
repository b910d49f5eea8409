package pourwright.main;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.order.OrderState;
import pourwright.page.now.WorkAhead;
import pourwright.plan.ForwardRule;
import pourwright.plan.Goal;
import pourwright.plan.Plan;
import pourwright.plan.StepKind;
import pourwright.stock.Cause;
import pourwright.work.Hold;
import pourwright.work.PieceBook;
import pourwright.work.Recall;
import pourwright.work.WorkPlan;

/** The invented studio's history holds what the demo is to show. */
@Tag("long")
class DemoStudioTest {
  /** Two years of the invented studio as they stand on a day. */
  private static Wiring studioOf(String day, Path folder) {
    Clock clock = Clock.fixed(Instant.parse(day), ZoneOffset.UTC);
    Wiring wiring = Wiring.open(folder, "", clock);
    DemoStudio.make(
        wiring.store().unitOfWork(),
        wiring.studio().files(),
        new DemoStudio.Spec(2, 17),
        clock.instant(),
        ZoneOffset.UTC);
    return wiring;
  }

  /** Laid out on any day, it has work for today; the days are those of both seasons. */
  @ParameterizedTest
  @ValueSource(strings = {"2026-03-02T10:00:00Z", "2026-07-18T06:00:00Z", "2026-11-25T10:45:00Z"})
  void onAnyDayThereIsSomethingToCastToPourAndOneOrderIsLate(String day, @TempDir Path folder) {
    try (Wiring wiring = studioOf(day, folder)) {
      WorkPlan plan =
          wiring
              .studio()
              .look(
                  books ->
                      WorkPlan.of(
                          books,
                          WorkAhead.open(books),
                          Instant.parse(day),
                          ZoneOffset.UTC,
                          new ForwardRule()));
      assertThat(plan.reasons()).isEmpty();
      assertThat(plan.make().casts()).isNotEmpty();
      assertThat(plan.make().pours()).isNotEmpty();
      Plan work = Objects.requireNonNull(plan.plan());
      List<String> late =
          plan.problem().goals().stream()
              .filter(g -> work.at(g.lastStep()).endMin() > g.dueMin())
              .map(Goal::words)
              .distinct() // a line that several pours serve has a goal for each
              .toList();
      assertThat(late).isNotEmpty().hasSizeLessThan(6);
      LocalDate today = LocalDate.ofInstant(Instant.parse(day), ZoneOffset.UTC);
      assertThat(
              plan.problem().stepsByKey().values().stream()
                  .filter(step -> step.kind() != StepKind.WAIT)
                  .map(step -> plan.problem().clock(work.at(step.key()).startMin()).toLocalDate())
                  .filter(start -> !start.isAfter(today.plusDays(3))))
          .hasSizeGreaterThan(3);
    }
  }

  @Test
  void twoYearsHoldOrdersTestsABadLotAndAWornMold(@TempDir Path folder) {
    try (Wiring wiring = studioOf("2026-03-02T10:00:00Z", folder)) {
      wiring
          .studio()
          .look(
              books -> {
                assertThat(books.pieces().list(PieceBook.Which.ALL, null, 500).items())
                    .hasSize(500);
                assertThat(books.orders().list(OrderState.SENT, null, 100).items())
                    .hasSizeGreaterThan(40);
                assertThat(books.holds().standing()).hasSize(1);
                assertThat(books.timers().running()).hasSize(1);
                return "";
              });
      assertThat(wiring.unsound()).isEmpty();
      assertThat(wiring.store().keptRowsWrong()).isZero();
    }
  }

  /**
   * A maker who opens the sample sees Hold and Trace on candles that are there and that are out.
   */
  @ParameterizedTest
  @ValueSource(strings = {"2026-03-02T10:00:00Z", "2026-07-18T06:00:00Z", "2026-11-25T10:45:00Z"})
  void theBadLotWasPouredSoldAndHeldAndIsFoundWithExactlyItsPieces(
      String day, @TempDir Path folder) {
    try (Wiring wiring = studioOf(day, folder)) {
      wiring
          .studio()
          .look(
              books -> {
                Hold hold = books.holds().standing().get(0);
                long lot = hold.subject().number();
                Set<Long> batches = new TreeSet<>();
                books.lots().movements(lot, null, 10_000).items().stream()
                    .filter(m -> m.cause() == Cause.DRAWN)
                    .forEach(m -> batches.add(Objects.requireNonNull(m.batch())));
                Set<Long> pieces = new TreeSet<>();
                batches.forEach(
                    b -> books.pieces().ofBatch(b).forEach(piece -> pieces.add(piece.id())));
                Recall recall = Recall.ofLot(books, lot).orElseThrow();
                assertThat(recall.rows())
                    .extracting(Recall.Row::piece)
                    .containsExactlyInAnyOrderElementsOf(pieces);
                assertThat(recall.out()).isGreaterThanOrEqualTo(3);
                assertThat(recall.rows())
                    .extracting(Recall.Row::customer)
                    .contains("Harbour Reading Room", "Tolbooth Tea House", "Net Loft Lodgings");
                assertThat(recall.rows().size() - recall.out()).isPositive();
                assertThat(recall.rows())
                    .allSatisfy(r -> assertThat(books.holds().stopping(r.piece())).hasSize(1));
                assertThat(books.holds().stopped()).isEqualTo(pieces);
                return "";
              });
    }
  }
}
