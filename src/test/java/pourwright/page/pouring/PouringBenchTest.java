package pourwright.page.pouring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pourwright.batch.Batch;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.batch.RecordedStep;
import pourwright.card.CandleDesign;
import pourwright.card.PourCard;
import pourwright.main.DemoCards;
import pourwright.material.Material;
import pourwright.material.MaterialKind;
import pourwright.material.ShelfLife;
import pourwright.material.UnitKind;
import pourwright.stock.Amount;
import pourwright.stock.Price;
import pourwright.work.Drawers;
import pourwright.work.PourWalk;
import pourwright.work.ReceiveLot;

/** Steps of a pour: what is refused, what is a fact of its own. */
class PouringBenchTest extends PouringBench {
  /** House rule: above the oil's flash point (68 °C in the invented sheet) a reason is recorded. */
  @Test
  void aboveTheFlashPointAReasonIsAFactOfItsOwnAndIsAskedFor() {
    String pour = begin("bollard-hearth", 1);
    toScent(pour);
    visitor.post(pour, pour + "/reading", Map.of("wax_c", "74", "room_c", "21", "by", "MB"));
    var refused = visitor.post(pour, pour + "/step", Map.of("by", "MB"));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("above the oil's flash point (68");
    step(pour, Map.of("reason", "the wax's sheet says 74 °C; heat off, fan on"));
    List<RecordedStep> steps = steps(pour);
    RecordedStep reason = steps.get(steps.size() - 2);
    assertThat(reason.key()).isEqualTo(PourWalk.REASON);
    assertThat(reason.note()).contains("fan on");
    assertThat(reason.temperatureC()).isEqualTo(74);
    assertThat(steps.get(steps.size() - 1).key()).isEqualTo(PourWalk.SCENT);
    assertThat(visitor.page(pour).text()).contains("reason above the flash point");
  }

  @Test
  void belowTheFlashPointNoReasonIsKept() {
    String pour = begin("bollard-rain", 1);
    toScent(pour);
    visitor.post(pour, pour + "/reading", Map.of("wax_c", "72", "room_c", "21", "by", "MB"));
    step(pour, Map.of());
    assertThat(steps(pour)).noneMatch(s -> s.key().equals(PourWalk.REASON));
  }

  @Test
  void boughtVesselsAreFinishedFromTheirLotAndRest() {
    open.save(
        Drawers.MATERIAL,
        "bollard",
        new Material(
            "bollard",
            "Bought tumbler",
            MaterialKind.VESSEL,
            UnitKind.COUNT,
            Map.of(),
            ShelfLife.KEEPS,
            null));
    open.studio.receiveLot.run(
        open.act(),
        new ReceiveLot.Request(
            "bollard", "T-1", Amount.ofPieces(12), null, null, null, new Price(4800, "EUR")));
    String pour = begin("bollard-rain", 2);
    for (int i = 0; i < 9; i++) {
      step(pour, Map.of());
    }
    String field = visitor.page(pour).select("input[name^=bought-]").attr("name");
    assertThat(visitor.page(pour).text()).contains("Bought, lot T-1 (12 there)");
    var none = visitor.post(pour, pour + "/finish", Map.of("by", "MB"));
    assertThat(none.statusCode()).isEqualTo(422);
    var done = visitor.post(pour, pour + "/finish", Map.of(field, "2", "by", "MB"));
    assertThat(done.statusCode()).isEqualTo(303);
    long id = Long.parseLong(pour.replaceAll(".*/", ""));
    assertThat(open.studio.<List<Piece>>look(b -> b.pieces().ofBatch(id)))
        .hasSize(2)
        .allMatch(p -> p.state() instanceof PieceState.Resting)
        .allMatch(p -> p.vesselLot() != null);
    assertThat(open.studio.look(b -> b.lots().shelves("bollard")).get(0).onHand())
        .isEqualTo(Amount.ofPieces(10));
    assertThat(visitor.page(pour).text()).contains("2 candles rest");
  }

  @Test
  void aFillWhoseHotLineDoesNotFitIsRefusedBeforeAnythingIsMelted() {
    CandleDesign design = DemoCards.book().candle("bollard-rain");
    open.save(
        Drawers.CANDLE,
        "bollard-full",
        new CandleDesign(
            "bollard-full",
            "Bollard to the brim",
            design.vessel(),
            design.mix(),
            design.finish(),
            design.pour(),
            design.wicks(),
            2,
            null,
            1,
            List.of(),
            null));
    var answer =
        visitor.post(
            "/pouring",
            "/pouring",
            Map.of("candle", "bollard-full", "count", "1", "top_up", "0", "by", "MB"));
    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(visitor.page("/pouring").text()).contains("hot wax would stand above the rim");
    assertThat(open.studio.<List<Batch>>look(b -> b.batches().running())).isEmpty();
  }

  /** House: heated again at most once; above it a reason is asked for. */
  @Test
  void heatingAgainIsCountedAndAsksForAReasonTheSecondTime() {
    String pour = begin("bollard-rain", 1);
    toScent(pour);
    step(pour, Map.of());
    assertThat(visitor.page(pour).text()).contains("Not heated again yet");
    visitor.post(pour, pour + "/reheat", Map.of("by", "MB"));
    assertThat(visitor.page(pour).text()).contains("Heated again once");
    visitor.post(pour, pour + "/reheat", Map.of("by", "MB"));
    assertThat(visitor.page(pour).text()).contains("was heated again before (house: at most 1)");
    assertThat(steps(pour)).filteredOn(s -> s.key().equals(PourWalk.REHEAT)).hasSize(1);
    visitor.post(
        pour, pour + "/reheat", Map.of("by", "MB", "reheat_reason", "the door stood open"));
    assertThat(steps(pour)).filteredOn(s -> s.key().equals(PourWalk.REHEAT)).hasSize(2);
    assertThat(visitor.page(pour).text()).contains("the door stood open");
  }

  /** Typical rest of plant wax 10 to 14 days, common practice: the longer end counts. */
  @Test
  void aPourCardIsWrittenByHandAndAsksForTheWindows() {
    Map<String, String> card = new LinkedHashMap<>();
    card.put("name", "Rain, strong");
    card.put("family", "fresh");
    card.put("wax1", "soft-wax-a");
    card.put("scent1", "scent-rain");
    card.put("load", "9.5");
    card.put("load_of", "TOTAL");
    card.put("rest_kind", "PLANT");
    card.put("by", "MB");
    String path = "/board/pour/new";
    assertThat(visitor.post(path, path, card).body()).contains("the temperature on the wax");
    card.putAll(Map.of("add_from", "68", "add_to", "74", "pour_from", "54", "pour_to", "60"));
    assertThat(visitor.post(path, path, card).statusCode()).isEqualTo(303);
    PourCard kept =
        open.studio.look(b -> b.cards().current(Drawers.POUR, "rain-strong")).orElseThrow().body();
    assertThat(kept.load()).isCloseTo(0.095, within(1e-12));
    assertThat(kept.restDays()).isEqualTo(14);
    assertThat(kept.temperatures()).isEqualTo(new PourCard.Temperatures(68, 74, 54, 60));
    String edit = "/board/pour/rain-strong/edit";
    visitor.post(edit, edit, Map.of("rest", "10", "by", "MB"));
    PourCard again =
        open.studio.look(b -> b.cards().current(Drawers.POUR, "rain-strong")).orElseThrow().body();
    assertThat(again.restDays()).isEqualTo(10);
    assertThat(again.waxes()).isEqualTo(kept.waxes());
    assertThat(visitor.page("/board").text()).contains("Rain, strong 9.5 % of the total");
  }

  /** By hand, Fisher 1935: 6 of 6 against 0 of 6 has the two-sided chance 2/924 = 0.00216. */
  @Test
  void whatGoesWithATopIsFoundByTheSameTestAsForCastings() {
    assertThat(visitor.page("/pouring/tops").text()).contains("No top was recorded yet");
    for (int i = 0; i < 12; i++) {
      boolean cold = i % 2 == 0;
      String pour = begin("bollard-rain", 1);
      for (int k = 0; k < 3; k++) {
        step(pour, Map.of());
      }
      step(pour, Map.of("step_c", cold ? "18" : "35"));
      String tap = cold ? "frosting" : "smooth";
      visitor.post(pour, pour + "/tap", Map.of("tap", tap, "by", "MB"));
    }
    String page = visitor.page("/pouring/tops").text();
    assertThat(page)
        .contains("Stands on 12 pours")
        .contains("frosting 6 of 12 pours, 6 candles. Goes with: ")
        .contains("stone under 30 °C")
        .contains("6 of 6 0 of 6")
        .contains("Not yet its cause");
  }
}
