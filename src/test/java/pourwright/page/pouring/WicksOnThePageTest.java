package pourwright.page.pouring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pourwright.card.CandleDesign;
import pourwright.work.Drawers;
import pourwright.work.Proving;
import pourwright.work.RunBurnTest;

/** Wicks as the page proposes them from own tests, and their places on the card. */
class WicksOnThePageTest extends PouringBench {
  @Test
  void wicksAreProposedFromOwnTestsByCountAndHeat() {
    String before = visitor.page("/pouring/wicks?candle=bollard-rain").text();
    assertThat(before)
        .contains("Stands on no test of this wick")
        .contains("No candle is proved for sale yet")
        .contains("Two in a round vessel is a choice")
        .contains("no wick fits");
    burnt("bollard-rain", 2, 5.3);
    String after = visitor.page("/pouring/wicks?candle=bollard-rain").text();
    assertThat(after)
        .contains("Stands on 1 test of this wick, 1 just like this.")
        .containsPattern("Flat braid, 4.8 g/h 5\\.[123] g/h")
        .containsPattern("reaches (25|24) mm");
    long test = burnt("ferry-rain", 1, 7.0);
    RunBurnTest tests = open.studio.burnTests;
    tests.close(open.act(), test, "pass", "by hand").made();
    waxTight("ferry");
    open.studio.saveSetting.run(open.act(), Proving.RULE, "0 0 0 20").made();
    tests.word(open.act(), new RunBurnTest.Word("ferry-rain", 1, test, true, "proved, MB")).made();
    String proved = visitor.page("/pouring/wicks?candle=bollard-rain").text();
    assertThat(proved)
        .contains("Heat is held against Ferry, Rain on slate, proved for sale")
        .contains("times the proved vessel's")
        .contains("Hotter than 1.5 times the proved vessel (house)");
    assertThat(visitor.page("/pouring/wicks?candle=nothing").text()).contains("There is no candle");
    assertThat(visitor.page("/pouring/wicks?candle=ferry-rain").text()).contains("2 wicks");
  }

  @Test
  void placesOfWicksAreKeptOnTheCardAndPrinted() {
    String path = "/pouring/wicks?candle=ferry-rain";
    assertThat(visitor.page(path).text()).contains("The card has no places for");
    var keep = visitor.page(path).select("form[action=/pouring/wicks/keep]").get(1);
    Map<String, String> fields = new LinkedHashMap<>();
    for (String name : List.of("candle", "version", "count", "free")) {
      fields.put(name, keep.select("input[name=" + name + "]").attr("value"));
    }
    fields.put("by", "MB");
    visitor.post(path, "/pouring/wicks/keep", fields);
    CandleDesign kept =
        open.studio.look(b -> b.cards().current(Drawers.CANDLE, "ferry-rain")).orElseThrow().body();
    assertThat(kept.wicks().positionsMm()).hasSize(2);
    assertThat(visitor.page(path).text()).contains("The card has places for 2: each pool must");
    assertThat(visitor.page("/board/candle/ferry-rain").text())
        .contains("places as written on the card");
    visitor.post(path, "/pouring/wicks/keep", fields);
    assertThat(visitor.page(path).text()).contains("The card was changed meanwhile");
    assertThat(visitor.get("/pouring/template/ferry-rain").statusCode()).isEqualTo(200);
  }
}
