package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.batch.PlannedStep;
import pourwright.card.CandleDesign;
import pourwright.work.BeginPour;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;
import pourwright.work.Reading;
import pourwright.work.Subject;

/** Units set in the settings are those in which pages show and take amounts. */
class UnitsTest {
  private static final Map<String, String> HERS =
      Map.of("units.mass", "oz", "units.length", "in", "units.temperature", "f");
  private static final Units UNITS = Units.of(HERS, Locale.US);

  /** NIST Handbook 44 (2024), Appendix C: 1 oz 28.349523125 g, 1 in 25.4 mm; SP 811, B.8: °F. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Heat to 85 °C.|Heat to 85 °C (185 °F).",
        "at 72 °C (68 to 76)|at 72 °C (162 °F) (68 to 76)",
        "68 to 76 °C|68 to 76 °C (154 to 169 °F)",
        "412.0 g of wax|412.0 g (14.53 oz) of wax",
        "1.25 kg|1.25 kg (2.76 lb)",
        "1,250 g|1,250 g (44.09 oz)",
        "trim to 5 mm (house)|trim to 5 mm (0.20 in) (house)",
        "2.1 g/h and 0.8 g/ml|2.1 g/h and 0.8 g/ml",
        "about 5 K hotter|about 5 K hotter",
        "lot NQ-40 g|lot NQ-40 g",
        "<option>5 g</option><p>5 g</p>|<option>5 g</option><p>5 g (0.18 oz)</p>",
        "<svg><text>80 mm</text></svg>|<svg><text>80 mm</text></svg>",
        "<input value=\"5 g\">|<input value=\"5 g\">"
      })
  void herUnitStandsBesideTheMetricOne(String page, String shown) {
    assertThat(UNITS.beside(page)).isEqualTo(shown);
  }

  @Test
  void aCommaThatMayMeanTwoThingsIsLeftAlone() {
    Units german = Units.of(HERS, Locale.GERMANY);
    assertThat(german.beside("1,25 kg und 85 °C")).isEqualTo("1,25 kg und 85 °C (185 °F)");
    assertThat(Units.of(Map.of(), Locale.US).beside("85 °C")).isEqualTo("85 °C");
  }

  @Test
  void aNumberWithoutAUnitIsInHersAndOneWithAUnitInItsOwn() {
    assertThat(UNITS.grams("14.53")).isCloseTo(411.92, within(0.005));
    assertThat(UNITS.grams("412 g")).isEqualTo(412);
    assertThat(UNITS.celsius("185")).isCloseTo(85, within(1e-6));
    assertThat(UNITS.celsius("85 °C")).isCloseTo(85, within(1e-6));
    assertThat(UNITS.massFigure(412)).isEqualTo("14.53");
  }

  @Test
  void setToFahrenheitAndOuncesThePouringBenchShowsAndTakesThem(@TempDir Path folder) {
    try (OpenStudio open = new OpenStudio(folder).withDemoCards()) {
      CandleDesign candle =
          open.studio.look(
              books ->
                  books.cards().all(Drawers.CANDLE).stream()
                      .map(CardVersion::body)
                      .findFirst()
                      .orElseThrow());
      long pour =
          open.studio
              .beginPour
              .run(open.act(), new BeginPour.Request(candle.code(), 2, 0))
              .made()
              .id();
      Visitor visitor = open.visitor();
      visitor.post("/", "/hand", Map.of("hand", "MK"));
      Map<String, String> settings =
          Map.of(
              "studio.name",
              "Tidewater",
              "currency",
              "USD",
              "units.mass",
              "oz",
              "units.temperature",
              "f",
              "units.length",
              "in");
      assertThat(visitor.post("/settings", "/settings", settings).statusCode()).isEqualTo(303);
      String path = "/pouring/" + pour;
      walkToTheFirstWeighing(visitor, path);
      Document page = visitor.page(path);
      assertThat(page.select("#step ~ form .unit").eachText()).contains("oz").doesNotContain("g");
      Element entry = page.selectFirst("input[id^=amount-]");
      assertThat(entry).isNotNull();
      double ounces = Double.parseDouble(entry == null ? "0" : entry.val());
      double planned = plannedGrams(open, pour, page.select("input[name=key]").val());
      assertThat(ounces * 28.349523125).isCloseTo(planned, within(0.15));
      if (page.select("[name=wax_c]").isEmpty()) {
        visitor.post(path, path + "/step", Map.of());
      }
      Document waiting = visitor.page(path);
      assertThat(waiting.select("label[for=wax_c]").text() + waiting.select(".unit").text())
          .contains("°F");
      assertThat(waiting.select(".said-warning").text()).contains("°C (").contains("°F)");
      visitor.post(path, path + "/reading", Map.of("wax_c", "185", "room_c", "68"));
      List<Double> read =
          open.studio.look(
              books ->
                  books.readings().of(Subject.of(Subject.Kind.BATCH, pour)).stream()
                      .filter(r -> r.quantity().equals("wax_c"))
                      .map(Reading::value)
                      .toList());
      assertThat(read).hasSize(1);
      assertThat(read.get(0)).isCloseTo(85, within(1e-6));
      assertThat(visitor.page(path).text()).contains("185.0 °F");
    }
  }

  private static double plannedGrams(OpenStudio open, long pour, String key) {
    return open.studio.look(
        books ->
            books.batches().batch(pour).orElseThrow().plan().steps().stream()
                .filter(step -> step.key().equals(key))
                .map(PlannedStep::amounts)
                .findFirst()
                .orElseThrow()
                .get(0)
                .amount()
                .inUsualUnit());
  }

  private static void walkToTheFirstWeighing(Visitor visitor, String path) {
    for (int i = 0; i < 12; i++) {
      Element unit = visitor.page(path).selectFirst("input[id^=amount-] + .unit");
      if (unit != null && !unit.text().equals("pcs")) {
        return;
      }
      visitor.post(path, path + "/step", Map.of());
    }
  }

  @Test
  void theOtherPlacesShowThemToo(@TempDir Path folder) {
    try (OpenStudio open = new OpenStudio(folder).withDemoCards()) {
      HERS.forEach((key, value) -> open.studio.saveSetting.run(open.act(), key, value));
      Visitor visitor = open.visitor();
      Document cast = visitor.page("/casting/new");
      assertThat(cast.select("#water_c").val()).isEqualTo("68");
      assertThat(cast.select("#water_c ~ .unit, .entry:has(#water_c) .unit").text())
          .isEqualTo("°F");
      String sheet = "/casting/sheet?mix=grey&vessel1=bollard&count1=2&water_c=68&room_c=68&step=1";
      assertThat(visitor.page(sheet).select("main").text()).contains("g (").contains("oz)");
      Document weigh = visitor.page("/board/vessel/bollard/weigh");
      assertThat(weigh.select(".entry:has(#empty_g) .unit").text()).isEqualTo("oz");
      assertThat(visitor.page("/board/vessel/bollard").select("main").text()).contains("in)");
      visitor.post(
          "/stockroom/receive",
          "/stockroom/receive",
          Map.of("material", "rapid-grey", "amount", "80", "lot", "L1", "by", "MK"));
      double received =
          open.studio.look(books -> books.lots().allShelves().get(0).onHand().inUsualUnit());
      assertThat(received).isCloseTo(80 * 28.349523125, within(0.001));
      assertThat(visitor.page("/stockroom").select("main").text()).contains("lb)");
    }
  }

  /** NIST Handbook 44 (2024), Appendix C: 1 in is 25.4 mm, 1 lb is 453.59237 g. */
  @Test
  void aFieldIsShownInHersAndComesBackExactly() {
    HerFields fields = new HerFields(UNITS);
    String asked = "<input id=\"w\" name=\"w\" value=\"75\"> <span class=\"unit\">mm</span>";
    assertThat(fields.shown(asked))
        .isEqualTo(
            "<input id=\"w\" name=\"w\" value=\"2.953\"> <span class=\"unit\">in</span>"
                + "<input type=\"hidden\" name=\"shown-as.w\" value=\"mm|2.953|75\">");
    assertThat(fields.metric("2.953", "mm|2.953|75")).isEqualTo("75");
    assertThat(fields.metric("3", "mm|2.953|75")).isEqualTo("76.2");
    assertThat(fields.metric("1 1/2 in", "mm|2.953|75")).isEqualTo("38.1");
    assertThat(fields.metric("38 mm", "mm|2.953|75")).isEqualTo("38");
    assertThat(fields.metric("1", "kg||")).isEqualTo("0.453592");
    assertThat(fields.metric("70", "\u00b0C|69.8|21")).startsWith("21.11");
    assertThat(fields.metric("wide", "mm|2.953|75")).isEqualTo("wide");
    assertThat(fields.complaint("Please give a number from 20 to 400.", "mm|2.953|75"))
        .isEqualTo("Please give a number from 0.79 to 15.75.");
    assertThat(new HerFields(Units.of(Map.of(), Locale.US)).shown(asked)).isEqualTo(asked);
  }

  @Test
  void whatSheTypesInHersIsShownAgainAsItWasTyped(@TempDir Path folder) {
    try (OpenStudio open = new OpenStudio(folder).withDemoCards()) {
      HERS.forEach((key, value) -> open.studio.saveSetting.run(open.act(), key, value));
      Visitor visitor = open.visitor();
      String path = "/shelf/simulate";
      assertThat(visitor.page(path).select("#room").val()).isEqualTo("69.8");
      Document again =
          Jsoup.parse(visitor.post(path, path, Map.of("length", "90", "wall", "1/4 in")).body());
      assertThat(again.select("#length").val()).isEqualTo("90");
      assertThat(again.select("#length-wrong").text()).contains("from 0.79 to 15.75");
      assertThat(again.select("#room").val()).isEqualTo("69.8");
      assertThat(again.select(".entry:has(#length) .unit").text()).isEqualTo("in");
      Document rest = visitor.page("/casting/rest");
      assertThat(rest.select(".entry:has(#left_g) .unit").text()).isEqualTo("oz");
      Document net = visitor.page("/press/net");
      assertThat(net.select(".entry:has(#label) .unit").text()).isEqualTo("oz");
    }
  }

  /** Goal G15: changed to hers, kept there untouched, and changed back, all by the pages' forms. */
  @Test
  @DisplayName("G15 what was entered is shown unchanged after the units went there and back")
  void whatWasEnteredComesBackUnchangedFromHerUnits(@TempDir Path folder) {
    try (OpenStudio open = new OpenStudio(folder).withDemoCards()) {
      Visitor visitor = open.visitor();
      visitor.post("/", "/hand", Map.of("hand", "MK"));
      String vessel = "/board/vessel/bollard/edit";
      Map<String, String> typed = new java.util.LinkedHashMap<>();
      int odd = 0;
      for (Element field : visitor.page(vessel).select(".entry > input")) {
        if (field.val().matches("\\d+ mm")) {
          // a last digit that no round number of inches has
          typed.put(field.attr("name"), field.val().replace(" mm", ".3" + ++odd + " mm"));
        }
      }
      assertThat(typed).hasSizeGreaterThan(4);
      assertThat(visitor.post(vessel, vessel, typed).statusCode()).isEqualTo(303);
      Map<String, String> entered = values(visitor.page(vessel));
      assertThat(entered).containsAllEntriesOf(typed);
      change(visitor, HERS);
      assertThat(visitor.page("/board/vessel/bollard").select("main").text()).contains("in)");
      // a figure that was typed with its unit stands as it was typed, whatever the rest is shown in
      assertThat(values(visitor.page(vessel))).isEqualTo(entered);
      assertThat(visitor.post(vessel, vessel, Map.of()).statusCode()).isEqualTo(303);
      assertThat(values(visitor.page(vessel))).isEqualTo(entered);
      change(visitor, Map.of("units.mass", "g", "units.length", "mm", "units.temperature", "c"));
      assertThat(values(visitor.page(vessel))).isEqualTo(entered);
    }
  }

  private static void change(Visitor visitor, Map<String, String> units) {
    Map<String, String> settings = new java.util.LinkedHashMap<>(units);
    settings.put("studio.name", "Tidewater");
    assertThat(visitor.post("/settings", "/settings", settings).statusCode()).isEqualTo(303);
  }

  private static Map<String, String> values(Document page) {
    Map<String, String> values = new java.util.LinkedHashMap<>();
    page.select(".entry > input").forEach(field -> values.put(field.attr("name"), field.val()));
    return values;
  }
}
