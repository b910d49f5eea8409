package pourwright.page.pouring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Batch;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.batch.RecordedStep;
import pourwright.card.CandleDesign;
import pourwright.main.DemoCards;
import pourwright.material.Material;
import pourwright.material.MaterialKind;
import pourwright.material.ShelfLife;
import pourwright.material.UnitKind;
import pourwright.page.OpenStudio;
import pourwright.page.Visitor;
import pourwright.stock.Amount;
import pourwright.stock.Price;
import pourwright.work.Drawers;
import pourwright.work.PourWalk;
import pourwright.work.ReceiveLot;

/** The pouring bench without a browser: what is refused, what is a fact of its own. */
class PouringBenchTest {
  private OpenStudio open;
  private Visitor visitor;

  @BeforeEach
  void open(@TempDir Path folder) {
    open = new OpenStudio(folder).withDemoCards();
    visitor = open.visitor();
    visitor.post("/settings", "/settings/hand", Map.of("hand", "MB"));
  }

  @AfterEach
  void close() {
    open.close();
  }

  private String begin(String candle, int count) {
    var answer =
        visitor.post(
            "/pouring",
            "/pouring",
            Map.of("candle", candle, "count", "" + count, "top_up", "0", "by", "MB"));
    assertThat(answer.statusCode()).isEqualTo(303);
    return answer.headers().firstValue("Location").orElseThrow();
  }

  private void step(String pour, Map<String, String> fields) {
    Map<String, String> all = new LinkedHashMap<>(fields);
    all.putIfAbsent("by", "MB");
    assertThat(visitor.post(pour, pour + "/step", all).statusCode()).isEqualTo(303);
  }

  private void toScent(String pour) {
    for (int i = 0; i < 5; i++) {
      step(pour, Map.of());
    }
  }

  private List<RecordedStep> steps(String pour) {
    long id = Long.parseLong(pour.replaceAll(".*/", ""));
    return open.studio.look(books -> books.batches().steps(id));
  }

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
}
