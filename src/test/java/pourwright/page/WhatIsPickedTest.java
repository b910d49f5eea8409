package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.page.now.WorkAhead;
import pourwright.work.AdvancePieces;
import pourwright.work.Signed;
import pourwright.work.Studio;

/** What is picked for an order is not made, and not counted for the last day to cast, again. */
class WhatIsPickedTest {
  @Test
  void onlyWhatIsLeftOfALineWaits(@TempDir Path folder) {
    Workshop workshop = new Workshop(folder);
    Studio studio = workshop.desk.studio();
    List<Piece> made =
        workshop.candles("bollard-rain", "soft-a", workshop.vessels("bollard", 3), "scent-rain", 0);
    Signed.forSale(studio, "bollard-rain");
    OrderLine line =
        new OrderLine("F-1", "bollard-rain", 1, 3, workshop.desk.today().plusDays(60), null);
    studio
        .orders
        .take(workshop.act(), new Order("F-1", "shop", null, OrderState.OPEN, List.of(line)))
        .made();
    assertThat(open(studio)).containsExactly(3);
    long id = studio.look(books -> books.orders().lineIds("F-1").get(line.key()));
    pick(workshop, made.subList(0, 2), id);
    assertThat(open(studio)).containsExactly(1);
    pick(workshop, made.subList(2, 3), id);
    assertThat(open(studio)).as("all of it stands picked").isEmpty();
  }

  private static void pick(Workshop workshop, List<Piece> pieces, long line) {
    List<Long> ids = pieces.stream().map(Piece::id).toList();
    workshop
        .desk
        .studio()
        .advancePieces
        .run(workshop.act(), new AdvancePieces.Request(ids, PieceStep.PICKED, null, line));
  }

  private static List<Integer> open(Studio studio) {
    return studio.look(books -> WorkAhead.open(books).stream().map(OrderLine::quantity).toList());
  }
}
