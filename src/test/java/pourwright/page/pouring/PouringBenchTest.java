package pourwright.page.pouring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.batch.PieceStep;
import pourwright.batch.RecordedStep;
import pourwright.card.CandleDesign;
import pourwright.card.PourCard;
import pourwright.hazard.HazardSheet;
import pourwright.main.DemoCards;
import pourwright.material.Material;
import pourwright.material.MaterialKind;
import pourwright.material.ShelfLife;
import pourwright.material.UnitKind;
import pourwright.page.OpenStudio;
import pourwright.page.Visitor;
import pourwright.stock.Amount;
import pourwright.stock.Price;
import pourwright.work.AdvancePieces;
import pourwright.work.BurnTest;
import pourwright.work.Drawers;
import pourwright.work.FinishCast;
import pourwright.work.PourWalk;
import pourwright.work.Proving;
import pourwright.work.ReceiveLot;
import pourwright.work.RunBurnTest;

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

  private long burnt(String candle, int cycles, double gramsPerHour) {
    RunBurnTest tests = open.studio.burnTests;
    long test =
        tests
            .begin(
                open.act(),
                new RunBurnTest.Request(
                    candle,
                    1,
                    "house",
                    "how fast it burns",
                    List.of(new RunBurnTest.NewSample("A", null))))
            .made()
            .id();
    long sample = open.studio.<List<BurnTest.Sample>>look(b -> b.burns().samples(test)).get(0).id();
    for (int i = 0; i < cycles; i++) {
      long cycle = tests.light(open.act(), test, sample).made().id();
      for (int h = 0; h <= 3; h++) {
        tests.look(open.act(), cycle, weighed(60.0 * h, 600 - gramsPerHour * h)).made();
      }
      tests.putOut(open.act(), cycle, "end of its cycle").made();
    }
    return test;
  }

  private void waxTight(String vessel) {
    var studio = open.studio;
    BatchPlan plan =
        new BatchPlan(
            BatchKind.CAST,
            "grey",
            1,
            List.of(new BatchPlan.Makes(vessel, 1, 1, vessel + "-mold")),
            List.of(),
            null);
    long cast = studio.startCast.run(open.act(), plan).made().id();
    var demolded = List.of(new FinishCast.Demolded(vessel, 1));
    List<Long> ids =
        studio
            .finishCast
            .run(open.act(), new FinishCast.Request(cast, demolded, null))
            .made()
            .stream()
            .map(Piece::id)
            .toList();
    for (PieceStep step :
        List.of(PieceStep.HARDENED, PieceStep.DRIED, PieceStep.SEEP_TEST, PieceStep.HELD_WAX)) {
      studio.advancePieces.run(open.act(), AdvancePieces.Request.of(ids, step)).made();
    }
  }

  private static BurnTest.Look weighed(double minute, double grams) {
    return new BurnTest.Look(
        minute, grams, null, 50.0, 48.0, null, null, null, null, null, null, null, null, null, null,
        "");
  }

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

  /** By hand, invented sheets: fig binds at its certificate's 8.5 %, above its load of 8 %. */
  @Test
  void theLimitThatBindsIsNamedByEachFragrance() {
    String fig = visitor.page("/pouring/blend?pour=fig").text();
    assertThat(fig)
        .contains("the certificate of Fig loft 8.50 % binds; kept")
        .contains("what the wax holds 10.00 % kept")
        .contains("8.00 % on the total, 8.70 % on the wax")
        .contains("Fig loft 80.0 g 81.6 ml");
    assertThat(visitor.page("/pouring/blend?pour=fig&legal=7").text())
        .contains("the legal limit 7.00 % binds; exceeded")
        .contains("is above 7.00 %: the legal limit");
    assertThat(visitor.page("/pouring/blend?pour=fig&total=40&scale=1").text())
        .contains("more than 2 %");
    assertThat(visitor.page("/pouring/blend?pour=fig&total=-3").text())
        .contains("less than nothing");
    assertThat(
            visitor
                .page(
                    "/pouring/blend?pour=rain&scent_1=rain&grams_1=500&scent_2=hearth&grams_2=300")
                .text())
        .contains("in one melt 722.7 g");
    assertThat(visitor.page("/pouring/blend?pour=rain&scent_1=fig&grams_1=500").text())
        .contains("is poured in another wax");
  }

  @Test
  void aDaysCandlesAreGroupedIntoMeltsAndPitchersAndThePitchersAreKept() {
    Map<String, String> day = new LinkedHashMap<>();
    day.put("n-bollard-rain", "3");
    day.put("n-cog-hearth", "2");
    day.put("n-ferry-fig", "1");
    day.put("pitchers", "jug; 1200; 8");
    day.put("melter", "4000");
    day.put("by", "MB");
    String page = visitor.post("/pouring/day", "/pouring/day", day).body();
    assertThat(page)
        .contains("3 pitchers (the fewest), 2 melts (the fewest), 3 times washing up (the fewest)")
        .contains("3 × Bollard, Rain on slate")
        .contains("or to waste");
    assertThat(visitor.page("/pouring/day").select("#pitchers").text()).contains("jug; 1200; 8");
    day.put("pitchers", "cup; 100; 5");
    var refused = visitor.post("/pouring/day", "/pouring/day", day);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("no pitcher holds that");
    day.put("pitchers", "cup");
    assertThat(visitor.post("/pouring/day", "/pouring/day", day).body())
        .contains("grams that stay in it");
  }

  /** By hand: the pitcher's wax and fragrance are the page's, whatever the two vessels hold. */
  @Test
  void aProposedPitcherBeginsAsOnePourOfAllItsCandles() throws IOException {
    Map<String, String> day = new LinkedHashMap<>();
    day.put("n-bollard-rain", "2");
    day.put("n-ferry-rain", "1");
    day.put("pitchers", "jug; 2000; 8");
    day.put("melter", "4000");
    day.put("by", "MB");
    var grouped = Jsoup.parse(visitor.post("/pouring/day", "/pouring/day", day).body());
    var form = grouped.select("form[action=/pouring/day/begin]");
    String of = form.select("input[name=of]").attr("value");
    assertThat(of).contains("bollard-rain:2").contains("ferry-rain:1");
    String pour = beginPitcher(of).headers().firstValue("Location").orElseThrow();
    assertThat(visitor.page(pour).select("h1").text())
        .contains("2 × Bollard")
        .contains("1 × Ferry");
    assertThat(visitor.page("/pouring/day").select("input[name=n-bollard-rain]").attr("value"))
        .isEmpty();
    long id = Long.parseLong(pour.replaceAll(".*/", ""));
    Batch batch = open.studio.look(b -> b.batches().batch(id)).orElseThrow();
    double planned =
        batch.plan().steps().stream()
            .filter(s -> s.key().equals(PourWalk.MELT) || s.key().equals(PourWalk.SCENT))
            .flatMap(s -> s.amounts().stream())
            .filter(a -> !a.material().contains("dye"))
            .mapToDouble(a -> a.amount().inUsualUnit())
            .sum();
    String title = grouped.select("li strong").text();
    Matcher grams = Pattern.compile("(\\d+) g wax, (\\d+) g fragrance").matcher(title);
    assertThat(grams.find()).isTrue();
    double shown = Double.parseDouble(grams.group(1)) + Double.parseDouble(grams.group(2));
    assertThat(planned).isCloseTo(shown, within(1.1));
    assertThat(paper(id)).contains("g into each of 1 × Ferry").contains("beside the wick");
    waxTight("bollard");
    waxTight("ferry");
    for (int i = 0; i < 9; i++) {
      step(pour, Map.of());
    }
    var finish = visitor.page(pour);
    assertThat(finish.select("#pieces legend").text()).contains("Bollard");
    assertThat(finish.select("#piece1s legend").text()).contains("Ferry");
    Map<String, String> ticks = new LinkedHashMap<>();
    ticks.put("piece", finish.select("input[name=piece]").attr("value"));
    ticks.put("piece1", finish.select("input[name=piece1]").attr("value"));
    ticks.put("by", "MB");
    assertThat(visitor.post(pour, pour + "/finish", ticks).statusCode()).isEqualTo(303);
    assertThat(open.studio.<List<Piece>>look(b -> b.pieces().ofBatch(id)))
        .extracting(p -> PieceState.candleOf(p.state()).orElse(""))
        .containsExactlyInAnyOrder("bollard-rain", "ferry-rain");
  }

  @Test
  void aLegalLimitIsKeptWithTheFragranceAndBinds() {
    Map<String, String> limit = Map.of("fragrance", "scent-fig", "limit", "7.4", "by", "MB");
    visitor.post("/pouring/blend?pour=fig", "/pouring/blend/legal", limit);
    assertThat(visitor.page("/pouring/blend?pour=fig").text())
        .contains("Kept with Fig loft")
        .contains("the legal limit of Fig loft 7.40 % binds; exceeded")
        .contains("is above 7.40 %: the legal limit of Fig loft");
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

  private String poured(String candle) {
    String pour = begin(candle, 1);
    toScent(pour);
    step(pour, Map.of());
    step(pour, Map.of());
    return pour;
  }

  private void sheet(String material, List<HazardSheet.Line> lines) {
    open.save(Drawers.SHEET, material, new HazardSheet(material, "1", lines, true));
  }

  private static HazardSheet.Line line(String name, double fraction, String hazard) {
    return new HazardSheet.Line(
        name, null, fraction, fraction, List.of(hazard), Map.of(), null, null, null, null);
  }

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

  private static String id(String pour) {
    return pour.replaceAll(".*/", "");
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

  /** The words of a pour's sheet on paper, in one line. */
  private String paper(long pour) throws IOException {
    URI sheet = URI.create(open.base() + "/sheet/" + pour + "/print");
    try (InputStream in = sheet.toURL().openStream();
        PDDocument pdf = Loader.loadPDF(in.readAllBytes())) {
      return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
    }
  }

  private java.net.http.HttpResponse<String> beginPitcher(String of) {
    Map<String, String> begin = new LinkedHashMap<>();
    visitor
        .page("/pouring/day")
        .select("form[action=/pouring/day] input[type=hidden]")
        .forEach(i -> begin.put(i.attr("name"), i.attr("value")));
    begin.putAll(Map.of("of", of, "residue", "8", "top_up", "0", "by", "MB"));
    return visitor.post("/pouring/day/begin", begin);
  }

  @Test
  void candlesOfDifferentMeltsAreNotBegunFromOnePitcher() {
    beginPitcher("bollard-rain:1,cog-hearth:1");
    assertThat(visitor.page("/pouring/day").text()).contains("do not share a wax, a scent");
    assertThat(open.studio.<List<Batch>>look(b -> b.batches().running())).isEmpty();
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
