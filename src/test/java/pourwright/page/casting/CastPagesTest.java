package pourwright.page.casting;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Batch;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.card.MixCard;
import pourwright.material.Material;
import pourwright.material.MaterialKind;
import pourwright.material.ShelfLife;
import pourwright.material.UnitKind;
import pourwright.page.MovableClock;
import pourwright.page.OpenStudio;
import pourwright.page.Visitor;
import pourwright.quantity.Sourced;
import pourwright.stock.Amount;
import pourwright.work.AdvancePieces;
import pourwright.work.CastSheet;
import pourwright.work.CastWalk;
import pourwright.work.Drawers;
import pourwright.work.FinishCast;
import pourwright.work.Reading;
import pourwright.work.ReceiveLot;
import pourwright.work.RecordStep;
import pourwright.work.Subject;
import pourwright.work.Timer;

/** The pages beside the walk: waiting, defects, molds, silicone, what a casting drinks. */
class CastPagesTest {
  private final MovableClock clock = new MovableClock();
  private OpenStudio open;
  private Visitor visitor;

  @BeforeEach
  void openTheStudio(@TempDir Path folder) {
    open = new OpenStudio(folder, clock).withDemoCards();
    visitor = open.visitor();
  }

  @AfterEach
  void closeTheStudio() {
    open.close();
  }

  private Batch cast() {
    CastSheet.Ask ask =
        new CastSheet.Ask("grey", List.of(new CastSheet.Fill("bollard", 1)), 20, 20, 1);
    CastSheet sheet = open.studio.look(b -> CastWalk.sheet(b, ask));
    return open.studio.startCast.run(open.act(), sheet.plan()).made();
  }

  private void record(Batch cast, String key, @Nullable Double celsius) {
    open.studio
        .recordStep
        .run(open.act(), new RecordStep.Request(cast.id(), key, List.of(), celsius))
        .made();
  }

  private void read(Batch cast, String quantity, double value) {
    Reading reading =
        Reading.fresh(Subject.of(Subject.Kind.BATCH, cast.id()), quantity, value, clock.instant());
    open.studio.recordReading.run(open.act(), List.of(reading)).made();
  }

  private void finish(Batch cast) {
    open.studio
        .finishCast
        .run(
            open.act(),
            new FinishCast.Request(cast.id(), List.of(new FinishCast.Demolded("bollard", 1)), null))
        .made();
  }

  private static Map<String, String> room(String celsius) {
    return Map.of("room_c", celsius, "by", "AB");
  }

  /** ASTM C1074's equivalent age, 40 kJ/mol: an hour at 10 °C is worth 0.5601 h at 20 °C. */
  @Test
  void theWaitFollowsTheTemperatureThatIsRecorded() {
    Batch cast = cast();
    String path = "/casting/" + cast.id();
    assertThat(visitor.page(path).text()).doesNotContain("Until demolding");
    record(cast, CastWalk.COVER, 20.0);
    Subject subject = Subject.of(Subject.Kind.BATCH, cast.id());
    open.studio.timers.start(
        open.act(), "Demold " + cast.mark().text(), subject, Duration.ofMinutes(90));
    clock.move(Duration.ofHours(1));
    double from =
        open.studio
            .look(b -> b.cards().current(Drawers.MIX, "grey"))
            .orElseThrow()
            .body()
            .times()
            .demoldFromH();
    assertThat(visitor.page(path).select("section[aria-labelledby=wait]").text())
        .contains("1.0 of")
        .contains("from the mix card");
    HttpResponse<String> posted = visitor.post(path, path + "/room", room("10"));
    assertThat(posted.statusCode()).isEqualTo(303);
    List<Timer> timers = open.studio.look(b -> b.timers().of(subject));
    Timer follows = timers.stream().filter(t -> t.answeredAt() == null).findFirst().orElseThrow();
    double left = Duration.between(clock.instant(), follows.dueAt()).toSeconds() / 3600.0;
    assertThat(left).isBetween((from - 1) / 0.5601 - 0.01, (from - 1) / 0.5601 + 0.01);
    clock.move(Duration.ofSeconds(Math.round(3600 * left) + 5));
    assertThat(visitor.page(path).text()).contains("It may be demolded.");
    assertThat(visitor.post(path, path + "/room", room("95")).statusCode()).isEqualTo(303);
    assertThat(visitor.page(path).select(".said").text()).contains("-10 to 60");
  }

  @Test
  void fiveCastsSheJudgedHerselfReplaceTheCardsTime() {
    for (int i = 0; i < 5; i++) {
      Batch past = cast();
      record(past, CastWalk.COVER, 20.0);
      read(past, "demold_age_h", i < 2 ? 2.0 : 3.1);
      read(past, "demold_judged_count", i < 2 ? -1 : 0);
      finish(past);
    }
    Batch cast = cast();
    record(cast, CastWalk.COVER, 20.0);
    clock.move(Duration.ofMinutes(6));
    assertThat(visitor.page("/casting/" + cast.id()).text())
        .contains("0.1 of 3.1")
        .contains("from 5 casts you judged yourself");
  }

  @Test
  void whatGoesWithADefectIsShownWithItsIntervalAndCautiously() {
    assertThat(visitor.page("/casting/defects").text()).contains("too few to say anything");
    for (int i = 0; i < 40; i++) {
      Batch past = cast();
      boolean warm = i % 2 == 0;
      record(past, CastWalk.POWDER, warm ? 28.0 : 20.0);
      if (warm ? i % 4 == 0 : i % 20 == 1) {
        read(past, "defect_crack_count", 1);
      }
      finish(past);
    }
    Document page = visitor.page("/casting/defects?defect=CRACK");
    assertThat(page.text())
        .contains("not yet its cause")
        .contains("25 °C or warmer stands out")
        .contains("10 of 20")
        .contains("Holm");
    assertThat(visitor.page("/casting").select("a[href=/casting/defects]")).hasSize(1);
  }

  @Test
  void moldsThatWoreOutTellTheLifeOfTheOthers() {
    assertThat(visitor.page("/casting/molds").text()).contains("the card's figure (house)");
    String mold = visitor.page("/casting/molds").select("#mold option").eachAttr("value").get(0);
    for (int casts : new int[] {20, 24, 31}) {
      mold = visitor.page("/casting/molds").select("#mold option").eachAttr("value").get(0);
      HttpResponse<String> retired =
          visitor.post(
              "/casting/molds",
              "/casting/molds/retire",
              Map.of("mold", mold, "casts", String.valueOf(casts), "by", "AB"));
      assertThat(retired.statusCode()).as(retired.body()).isEqualTo(303);
    }
    assertThat(visitor.page("/casting/molds").text()).contains("24 casts, half were gone by then");
    mold = visitor.page("/casting/molds").select("#mold option").eachAttr("value").get(0);
    HttpResponse<String> none =
        visitor.post(
            "/casting/molds",
            "/casting/molds/retire",
            Map.of("mold", mold, "casts", "", "by", "AB"));
    assertThat(none.statusCode()).isEqualTo(422);
  }

  /** One coat of 8 m²/l on the inside of one bollard: area over coverage, worked out here anew. */
  @Test
  void theSealerOfACoatComesFromItsLot() {
    open.studio.receiveLot.run(
        open.act(),
        new ReceiveLot.Request(
            "film-sealer", "S-1", Amount.ofMillilitres(200), null, null, null, null));
    Batch cast = cast();
    finish(cast);
    Piece piece = open.studio.look(b -> b.pieces().ofBatch(cast.id())).get(0);
    for (PieceStep step : List.of(PieceStep.HARDENED, PieceStep.DRIED)) {
      open.studio
          .advancePieces
          .run(open.act(), AdvancePieces.Request.of(List.of(piece.id()), step))
          .made();
    }
    Map<String, String> coat = new LinkedHashMap<>();
    coat.put("piece", String.valueOf(piece.id()));
    coat.put("step", "SEALED");
    coat.put("sealer", "film-sealer");
    coat.put("face", "inside");
    coat.put("by", "AB");
    String dry = "/casting/pieces/Dry";
    assertThat(visitor.post(dry, dry, coat).statusCode()).isEqualTo(303);
    assertThat(visitor.page(dry).select(".said").text()).contains("drawn").contains("full-dry");
    double inside = 64 / 2.0 * 64 / 2 * Math.PI;
    double slant = Math.PI * (32 + 37.5) * Math.hypot(5.5, 86);
    double ml = (inside + slant) * 1e-6 / 8 * 1000;
    double left =
        open.studio.look(b -> b.lots().shelves("film-sealer")).get(0).onHand().inUsualUnit();
    assertThat(200 - left).isCloseTo(ml, org.assertj.core.api.Assertions.within(0.01));
    List<Timer> bells =
        open.studio.look(b -> b.timers().of(Subject.of(Subject.Kind.PIECE, piece.id())));
    assertThat(bells).singleElement().satisfies(t -> assertThat(t.label()).contains("Full-dry"));
  }

  /** Common practice, no source: between 3:1 and 4:1 the least water goes in first. */
  @Test
  void betweenTwoRatiosTheLeastWaterGoesInFirstAndTheRestIsAskedFor() {
    MixCard grey =
        open.studio.look(b -> b.cards().current(Drawers.MIX, "grey")).orElseThrow().body();
    MixCard range =
        new MixCard(
            "range",
            "Grey to consistency",
            grey.powder(),
            new MixCard.Ratio(MixCard.By.MASS, 3, 1, 4.0),
            List.of(),
            grey.losses(),
            grey.times(),
            grey.family(),
            null);
    open.save(Drawers.MIX, "range", range);
    CastSheet.Ask ask =
        new CastSheet.Ask("range", List.of(new CastSheet.Fill("bollard", 1)), 20, 20, 0.1);
    CastSheet sheet = open.studio.look(b -> CastWalk.sheet(b, ask));
    double powder = sheet.amounts().powderG();
    assertThat(sheet.amounts().waterG() / powder)
        .isCloseTo(0.25, org.assertj.core.api.Assertions.within(0.001));
    assertThat(sheet.waterMostG() / powder)
        .isCloseTo(1 / 3.0, org.assertj.core.api.Assertions.within(0.001));
    String query = "/casting/sheet?mix=range&vessel1=bollard&count1=1&water_c=20&room_c=20&step=1";
    assertThat(visitor.page(query).text()).contains("in weighed steps until it pours");
    Batch cast = open.studio.startCast.run(open.act(), sheet.plan()).made();
    for (String key : List.of("molds", "water", CastWalk.POWDER)) {
      record(cast, key, null);
    }
    String path = "/casting/" + cast.id();
    Document page = visitor.page(path);
    assertThat(page.text()).contains("at most").contains("Write down what you added");
    assertThat(page.select("#used_mix-water").val()).isEmpty();
    HttpResponse<String> empty = visitor.post(path, path + "/step", Map.of("by", "AB"));
    assertThat(empty.statusCode()).isEqualTo(422);
    Map<String, String> added = Map.of("by", "AB", "used_mix-water", "12");
    assertThat(visitor.post(path, path + "/step", added).statusCode()).isEqualTo(303);
    Subject subject = Subject.of(Subject.Kind.BATCH, cast.id());
    assertThat(open.studio.look(b -> b.readings().newest(subject, "water_g")).orElseThrow().value())
        .isEqualTo(12);
  }

  @Test
  void whatOneMixingCannotFillIsBegunAsSeveralCasts() {
    String query =
        "/casting/sheet?mix=grey&vessel1=bollard&count1=9&vessel2=limpet&count2=5"
            + "&water_c=20&room_c=28&step=1";
    Document sheet = visitor.page(query);
    assertThat(sheet.text()).contains("Begin all");
    HttpResponse<String> begun =
        visitor.post(query, "/casting/start", Map.of("by", "AB", "all", "yes"));
    assertThat(begun.statusCode()).as(begun.body()).isEqualTo(303);
    List<Batch> running = open.studio.look(b -> b.batches().running());
    assertThat(running.size()).isGreaterThan(1);
    assertThat(running.stream().mapToInt(b -> b.plan().pieces()).sum()).isEqualTo(14);
    assertThat(visitor.page("/casting").text()).contains("casts begun");
  }

  /** Limpets are kept for rests; so many of them fit as their drawn volume says. */
  @Test
  void theRestOfAMixFillsSmallMolds() {
    String sheet = "/casting/sheet?mix=grey&vessel1=bollard&count1=4&water_c=20&room_c=20&step=1";
    String rest = visitor.page(sheet).select("a[href^=/casting/rest]").attr("href");
    assertThat(rest).contains("mix=grey").contains("left_g=");
    Document page = visitor.page("/casting/rest?mix=grey&left_g=200&which=small");
    assertThat(page.select("section[aria-labelledby=fill]").text())
        .containsPattern("\\d × Limpet mold")
        .contains("No filling gives more pieces");
    assertThat(visitor.page("/casting/rest?mix=grey&left_g=1&which=small").text())
        .contains("No free mold is small enough");
    assertThat(visitor.get("/casting/rest?mix=none&left_g=1").statusCode()).isEqualTo(422);
  }

  /** A bollard that is worth more than any number of limpets that would fit beside. */
  @Test
  void aMoldWhosePieceIsWorthMoreIsFilledFirst() {
    String edit = "/board/mold/bollard-mold/edit";
    Map<String, String> worth = Map.of("piece_value", "100", "by", "AB", "leftover_only", "no");
    assertThat(visitor.post(edit, edit, worth).statusCode()).isEqualTo(303);
    assertThat(visitor.page(edit).select("#piece_value").val()).isEqualTo("100");
    String fill = visitor.page("/casting/rest?mix=grey&left_g=900&which=all").text();
    assertThat(fill).contains("Bollard mold").contains("worth more by your molds' cards");
  }

  /** Elementary geometry: feet at 40 mm, three of them, carry 20 mm off the axis. */
  @Test
  void aLidIsPairedAndFeetMoveTheTippingEdge() {
    Document page = visitor.page("/board/vessel/bollard/beside?lid=limpet&feet=3&out=40&lift=3");
    assertThat(page.text())
        .contains("Gap of the lid, least")
        .contains("20 mm from the axis")
        .contains("without");
    assertThat(visitor.get("/board/vessel/bollard/beside?feet=2&out=40").statusCode())
        .isEqualTo(422);
    assertThat(visitor.page("/board/vessel/bollard").select("a[href$=/beside]")).hasSize(1);
  }

  /** From memory: gypsum with portland goes on forming ettringite. */
  @Test
  void plasterAndCementAreNotMixed() {
    Material plaster =
        new Material(
            "plaster",
            "Plaster",
            MaterialKind.POWDER,
            UnitKind.MASS,
            Map.of(
                "particle_density_g_per_ml", Sourced.typical(2.63, 0.01),
                "cement_fraction", Sourced.typical(0, 0)),
            ShelfLife.KEEPS,
            null);
    open.save(Drawers.MATERIAL, "plaster", plaster);
    MixCard grey =
        open.studio.look(b -> b.cards().current(Drawers.MIX, "grey")).orElseThrow().body();
    MixCard pure = mix(grey, "pure", "plaster", List.of());
    MixCard both = mix(grey, "both", "plaster", List.of(new MixCard.Part("white-portland", 0.2)));
    open.save(Drawers.MIX, "pure", pure);
    open.save(Drawers.MIX, "both", both);
    String query = "/casting/sheet?vessel1=bollard&count1=1&water_c=20&room_c=20&step=1&mix=";
    assertThat(visitor.page(query + "pure").text())
        .contains("no flame in it without measured evidence");
    HttpResponse<String> refused = visitor.get(query + "both");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("plaster and cement are not mixed");
  }

  private static MixCard mix(MixCard like, String code, String powder, List<MixCard.Part> parts) {
    return new MixCard(
        code,
        code,
        powder,
        new MixCard.Ratio(MixCard.By.MASS, 1, 0.6),
        parts,
        like.losses(),
        like.times(),
        like.family(),
        null);
  }

  /** A box of 120 × 120 × 110 mm about a cup of 249.097 ml: elementary geometry. */
  @Test
  void siliconeIsTheBoxLessTheMaster() {
    String query = "/board/silicone?box_length=120&box_width=120&box_height=110&b_to_a=0.1";
    String text =
        visitor.page(query + "&master_ml=249.097&density=1.1&waste=0&shrink=0.3&vessel=").text();
    double total = (1584 - 249.097) * 1.1;
    assertThat(text).contains(Math.round(total / 1.1) + " g").contains("99.70 mm");
    String dear =
        visitor
            .page(
                query
                    + "&master_ml=249.097&density=1.1&waste=0&shrink=0.3&vessel="
                    + "&price_kg=20&more=10&lasts=40&shore=20&sleeve=10")
            .text();
    double cost = total / 1000 * 20 + 10;
    assertThat(dear)
        .contains(String.format(java.util.Locale.ROOT, "%.2f each", cost / 40))
        .contains("Bulges at its foot by");
    assertThat(visitor.get(query + "&master_ml=2000&vessel=").body())
        .contains("the master is larger than the box");
    assertThat(visitor.page("/board").select("a[href=/board/silicone]")).hasSize(1);
  }

  /** ASTM C642's example and C1585's form, as in the check values. */
  @Test
  void whatACastingDrinks() {
    String soak =
        visitor
            .page("/casting/absorption?dry_g=1000&soaked_g=1090&boiled_g=1100&hung_g=500")
            .text();
    assertThat(soak).contains("9.0 %").contains("10.0 %").contains("16.7 %").contains("1.67 g/ml");
    String rise =
        visitor
            .page(
                "/casting/absorption?face_cm2=78.5398&wall_mm=8&pores=15"
                    + "&gains=0+0%0A90+2.5%0A360+5")
            .text();
    assertThat(rise).contains("0.03 mm/√min").contains("Only the wax test tells");
    assertThat(
            visitor.get("/casting/absorption?dry_g=1000&soaked_g=900&boiled_g=1&hung_g=1").body())
        .contains("not in the order");
  }
}
