package pourwright.page.pouring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pourwright.hazard.HazardSheet;
import pourwright.work.Drawers;
import pourwright.work.Proving;
import pourwright.work.RunBurnTest;

/** What is left in the pitcher: into unwicked pieces or a proved candle, never unseen. */
class WhatIsLeftOfAPourTest extends PouringBench {
  /**
   * By hand: 60 g at 10 % of one scent and 40 g at 1/11 of another are 6.0 % and 3.64 % of the
   * whole. 30 % of P in the first is 1.8 %, above the 1 % of CLP annex I, table 3.4.5 for skin
   * sensitisers 1B; 5 % of Q in the second is 0.18 %, above the 0.1 % of table 3.4.6 and named.
   */
  @Test
  void whatIsLeftGoesIntoUnwickedPiecesWithAllItsIngredients() {
    String rain = poured("bollard-rain");
    String hearth = poured("cog-hearth");
    var tooMuch = Map.of("left_g", "9000", "whither", "unwicked", "by", "MB");
    visitor.post(rain, rain + "/left", tooMuch);
    assertThat(visitor.page(rain).text()).contains("9000.0 g cannot be left of");
    var proved = Map.of("left_g", "60", "whither", "proved:bollard-rain", "by", "MB");
    visitor.post(rain, rain + "/left", proved);
    assertThat(visitor.page(rain).text()).contains("not proved for this scent and load");
    visitor.post(rain, rain + "/left", Map.of("left_g", "60", "whither", "unwicked", "by", "MB"));
    visitor.post(
        hearth, hearth + "/left", Map.of("left_g", "40", "whither", "unwicked", "by", "MB"));
    String chosen = "/pouring/unwicked?pour=" + id(rain) + "&pour=" + id(hearth);
    assertThat(visitor.page(chosen).text())
        .contains("100.0 g made of")
        .containsPattern("(5\\.9[89]|6\\.0[01]) % Rain on slate")
        .containsPattern("3\\.6[345] % Cold hearth")
        .contains("Not written down: the safety data sheet of")
        .contains("Cannot be said while a sheet is missing");
    sheet("soft-wax-a", List.of());
    sheet("blend-b", List.of());
    sheet("scent-rain", List.of(line("Substance P", 0.3, "Skin Sens. 1B")));
    sheet("scent-hearth", List.of(line("Substance Q", 0.05, "Skin Sens. 1B")));
    assertThat(visitor.page(chosen).text())
        .contains("Warning: H317")
        .contains("Substance P")
        .contains("Substance Q")
        .doesNotContain("Not written down");
    Map<String, String> one = Map.of("pour", id(rain), "by", "MB");
    visitor.post("/pouring/unwicked?pour=" + id(rain), "/pouring/unwicked/poured", one);
    assertThat(visitor.page("/pouring/unwicked").text())
        .doesNotContain("60.0 g")
        .contains("40.0 g");
  }

  /** House: proved for this scent and load, and never heated more than once. */
  @Test
  void aProvedCandleTakesWhatIsLeftUnlessItWasHeatedAgain() {
    long test = burnt("ferry-rain", 1, 7.0);
    open.studio.burnTests.close(open.act(), test, "pass", "by hand").made();
    waxTight("ferry");
    open.studio.saveSetting.run(open.act(), Proving.RULE, "0 0 0 20").made();
    var word = new RunBurnTest.Word("ferry-rain", 1, test, true, "proved, MB");
    open.studio.burnTests.word(open.act(), word).made();
    String pour = poured("bollard-rain");
    assertThat(visitor.page(pour).select("#whither").text())
        .contains("Ferry, Rain on slate (proved)");
    Map<String, String> left = Map.of("left_g", "30", "whither", "proved:ferry-rain", "by", "MB");
    visitor.post(pour, pour + "/left", left);
    assertThat(visitor.page(pour).text()).contains("for a proved candle 30.0 g");
    visitor.post(pour, pour + "/reheat", Map.of("by", "MB"));
    assertThat(visitor.page(pour).select("#whither").text()).doesNotContain("(proved)");
    assertThat(visitor.page(pour).text())
        .contains("No candle may be poured from it: it was heated");
  }

  private void sheet(String material, List<HazardSheet.Line> lines) {
    open.save(Drawers.SHEET, material, new HazardSheet(material, "1", lines, true));
  }

  private static HazardSheet.Line line(String name, double fraction, String hazard) {
    return new HazardSheet.Line(
        name, null, fraction, fraction, List.of(hazard), Map.of(), null, null, null, null);
  }
}
