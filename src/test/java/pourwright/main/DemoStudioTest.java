package pourwright.main;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.order.OrderState;
import pourwright.work.PieceBook;

/** The invented studio's history holds what the demo is to show. */
@Tag("long")
class DemoStudioTest {
  @Test
  void twoYearsHoldOrdersTestsABadLotAndAWornMold(@TempDir Path folder) {
    Clock clock = Clock.fixed(Instant.parse("2026-03-02T10:00:00Z"), ZoneOffset.UTC);
    try (Wiring wiring = Wiring.open(folder, "", clock)) {
      DemoStudio.make(
          wiring.store().unitOfWork(),
          wiring.studio().files(),
          new DemoStudio.Spec(2, 17),
          clock.instant(),
          ZoneOffset.UTC);
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
}
