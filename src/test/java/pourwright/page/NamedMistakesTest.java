package pourwright.page;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Batch;
import pourwright.batch.Grade;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.batch.PlannedAmount;
import pourwright.batch.PlannedStep;
import pourwright.plan.ForwardRule;
import pourwright.plan.PourJob;
import pourwright.work.AdvancePieces;
import pourwright.work.BeginPour;
import pourwright.work.Deed;
import pourwright.work.FinishPour;
import pourwright.work.RecordStep;
import pourwright.work.Replan;
import pourwright.work.WorkPlan;

/**
 * Each mistake by its name, tapped on the page: ledger, plan and stock are worked out again here,
 * from what was weighed and what the mistake means, and by plain SQL over the raw movements.
 */
@DisplayName("Each named mistake leaves ledger, plan and stock equal to a recomputation")
class NamedMistakesTest {
  private static final String CANDLE = "bollard-rain";
  private static final String SCENT = "scent-rain";
  private static final int ORDERED = 5;
  private static final int POURED = 3;

  private Workshop workshop;
  private Path folder;
  private Server server;
  private Visitor visitor;
  private List<Piece> vessels;
  private Batch pour;

  /** How many of the planned steps are recorded. */
  private int walked;

  /** What should be left of each material, in micrograms or pieces: this test's own book. */
  private final Map<String, Long> left = new TreeMap<>();

  @BeforeEach
  void open(@TempDir Path dir) {
    folder = dir;
    workshop = new Workshop(dir);
    vessels = workshop.vessels("bollard", POURED);
    server = TestStudio.open(workshop.desk, dir);
    visitor = new Visitor(server.port());
    visitor.post("/settings", "/settings/hand", Map.of("hand", "MB"));
    workshop.order("T-1", CANDLE, ORDERED, "shop");
    workshop
        .desk
        .studio()
        .look(b -> b.lots().allShelves())
        .forEach(s -> left.put(s.lot().material(), s.onHand().units()));
    pour =
        workshop
            .desk
            .studio()
            .beginPour
            .run(workshop.act(), new BeginPour.Request(CANDLE, POURED, 0))
            .made();
  }

  @AfterEach
  void close() {
    server.close();
  }

  /** Records, as planned, the steps that are not recorded yet, up to and with this one. */
  private void walkTo(String last) {
    List<PlannedStep> steps = pour.plan().steps();
    boolean there = false;
    for (; walked < steps.size() && !there; walked++) {
      PlannedStep step = steps.get(walked);
      List<RecordStep.Taken> taken = new ArrayList<>();
      for (PlannedAmount amount : step.amounts()) {
        taken.add(new RecordStep.Taken(amount.material(), null, amount.amount()));
        left.merge(amount.material(), -amount.amount().units(), Long::sum);
      }
      workshop
          .desk
          .studio()
          .recordStep
          .run(workshop.act(), new RecordStep.Request(pour.id(), step.key(), taken, null))
          .made();
      there = step.key().equals(last);
    }
    assertThat(there).as("a step " + last).isTrue();
  }

  private void finish() {
    List<Long> ids = vessels.stream().map(Piece::id).toList();
    var filled = List.of(new FinishPour.Filled(CANDLE, ids));
    workshop
        .desk
        .studio()
        .finishPour
        .run(workshop.act(), new FinishPour.Request(pour.id(), filled, List.of()))
        .made();
  }

  private long scentOfThePour() {
    return planned("scent").get(0).amount().units();
  }

  private List<PlannedAmount> planned(String key) {
    return pour.plan().steps().stream()
        .filter(s -> s.key().equals(key))
        .findFirst()
        .orElseThrow()
        .amounts();
  }

  /** One tap on the page of the pour, with these fields beside it. */
  private String tap(String page, String mistake, Map<String, List<String>> more) {
    Document shown = visitor.page(page);
    Element form = shown.selectFirst("form:has(button[name=mistake][value=" + mistake + "])");
    assertThat(form).as("a button for " + mistake).isNotNull();
    Map<String, String> fields = new LinkedHashMap<>();
    ((org.jsoup.nodes.FormElement) requireNonNull(form))
        .formData()
        .forEach(kv -> fields.put(kv.key(), kv.value()));
    fields.put("mistake", mistake);
    more.forEach((name, values) -> fields.put(name, values.get(0)));
    var answer = visitor.post("/mistake", fields);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
    return visitor.page(page).select(".said").text();
  }

  /** Ledger, stock and plan against this test's own book; a pour under way is on its way. */
  private void rightWith(int candlesMadeOrComing, Map<String, Long> moved) {
    moved.forEach((material, units) -> left.merge(material, units, Long::sum));
    Map<String, Long> onHand = new TreeMap<>();
    workshop
        .desk
        .studio()
        .look(b -> b.lots().onHand())
        .forEach((material, amount) -> onHand.put(material, amount.units()));
    assertThat(onHand).as("stock").isEqualTo(left);
    assertThat(
            sums(
                "SELECT l.material, SUM(m.units) FROM movement m JOIN lot l ON l.id = m.lot_id"
                    + " GROUP BY l.material"))
        .as("raw ledger")
        .isEqualTo(left);
    assertThat(sums("SELECT l.material, b.units FROM lot_balance b JOIN lot l ON l.id = b.lot_id"))
        .as("kept balances")
        .isEqualTo(left);
    assertThat(toPour()).as("still to pour").isEqualTo(ORDERED - candlesMadeOrComing);
  }

  private int toPour() {
    return workshop
        .desk
        .studio()
        .look(
            books ->
                WorkPlan.of(
                    books,
                    Replan.openLines(books),
                    workshop.desk.now(),
                    workshop.desk.zone(),
                    new ForwardRule()))
        .make()
        .pours()
        .stream()
        .mapToInt(PourJob::candles)
        .sum();
  }

  private Map<String, Long> sums(String sql) {
    Map<String, Long> sums = new TreeMap<>();
    try (Connection db = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("studio.db"));
        Statement ask = db.createStatement();
        ResultSet rows = ask.executeQuery(sql)) {
      while (rows.next()) {
        sums.merge(rows.getString(1), rows.getLong(2), Long::sum);
      }
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
    return sums;
  }

  private Deed lastDeed(String verb) {
    Deed deed = workshop.desk.studio().history(null, 1).items().get(0);
    assertThat(deed.verb()).isEqualTo(verb);
    return deed;
  }

  private void undone(String verb, Runnable before) {
    Deed deed = lastDeed(verb);
    assertThat(workshop.desk.studio().undo.run(workshop.act(), deed.id()).isDone()).isTrue();
    before.run();
  }

  private List<Batch> running() {
    return workshop.desk.studio().look(b -> b.batches().running());
  }

  private List<Grade> grades() {
    return vessels.stream()
        .map(p -> workshop.desk.studio().look(b -> b.pieces().piece(p.id()).orElseThrow()).grade())
        .toList();
  }

  @Test
  void scentForgottenGoesBackIntoItsLotAndThePourIsMadeAgain() {
    walkTo("trim");
    finish();
    rightWith(POURED, Map.of());
    String said = tap("/pouring/" + pour.id(), "scent-forgotten", Map.of());
    assertThat(said).contains("scent forgotten", "Sellable:", "Back in its lot: " + SCENT);
    rightWith(0, Map.of(SCENT, scentOfThePour()));
    assertThat(grades()).containsOnly(Grade.SECOND);
    undone("mistake: scent forgotten", () -> rightWith(POURED, Map.of(SCENT, -scentOfThePour())));
  }

  @Test
  void scentForgottenBeforeThePourIsWeighedInAfterAll() {
    walkTo("scent");
    tap("/pouring/" + pour.id(), "scent-forgotten", Map.of());
    rightWith(POURED, Map.of(SCENT, scentOfThePour()));
    Document page = visitor.page("/pouring/" + pour.id());
    double asked = Double.parseDouble(page.select("#grams").val());
    assertThat(asked * 1e6)
        .isCloseTo(scentOfThePour(), org.assertj.core.api.Assertions.within(1e5));
  }

  @Test
  void dosedTwiceIsDrawnTwiceAndTheWaxThatPutsItRightIsNamed() {
    walkTo("scent");
    tap("/pouring/" + pour.id(), "dosed-twice", Map.of());
    rightWith(POURED, Map.of(SCENT, -scentOfThePour()));
    // 10 % on the total: 2 s of scent want 18 s of wax, s is a tenth of the first charge
    Document page = visitor.page("/pouring/" + pour.id());
    double wax = planned("melt").stream().mapToDouble(a -> a.amount().inUsualUnit()).sum();
    double wanted = 2 * scentOfThePour() / 1e6 * 9 - wax;
    assertThat(Double.parseDouble(page.select("#grams").val()))
        .isCloseTo(wanted, org.assertj.core.api.Assertions.within(0.2));
    undone("mistake: dosed twice", () -> rightWith(POURED, Map.of(SCENT, scentOfThePour())));
  }

  @Test
  void wrongBottleSwapsTheTwoLotsAndNothingOfItIsThisCandle() {
    walkTo("scent");
    String other =
        requireNonNull(visitor.page("/pouring/" + pour.id()).selectFirst("#bottle option")).text();
    String material = other.substring(0, other.indexOf(','));
    assertThat(material).isNotEqualTo(SCENT);
    tap("/pouring/" + pour.id(), "wrong-bottle", Map.of());
    rightWith(0, Map.of(SCENT, scentOfThePour(), material, -scentOfThePour()));
    for (PlannedStep step : pour.plan().steps().subList(6, pour.plan().steps().size())) {
      workshop
          .desk
          .studio()
          .recordStep
          .run(workshop.act(), new RecordStep.Request(pour.id(), step.key(), List.of(), null));
    }
    finish();
    rightWith(0, Map.of());
    assertThat(grades()).containsOnly(Grade.SECOND);
  }

  @Test
  void overheatedWaxClosesThePourAndWhatWasMeltedStaysDrawn() {
    walkTo("melt");
    tap("/pouring/" + pour.id(), "overheated", Map.of());
    rightWith(0, Map.of());
    assertThat(running()).isEmpty();
    undone("mistake: overheated", () -> rightWith(POURED, Map.of()));
    assertThat(running()).hasSize(1);
  }

  @Test
  void bumpedWhileSettingSortsTheOneThatWasBumped() {
    walkTo("set");
    walkTo("trim");
    finish();
    String one = String.valueOf(vessels.get(0).id());
    tap("/pouring/" + pour.id(), "bumped", Map.of("piece", List.of(one)));
    rightWith(POURED - 1, Map.of());
    assertThat(grades()).containsExactly(Grade.SECOND, null, null);
    undone("mistake: bumped while setting", () -> rightWith(POURED, Map.of()));
  }

  @Test
  void pouredWithoutAWickGivesWickTabAndStickerBack() {
    walkTo("trim");
    finish();
    String one = String.valueOf(vessels.get(1).id());
    tap("/pouring/" + pour.id(), "without-a-wick", Map.of("piece", List.of(one)));
    Map<String, Long> back = new TreeMap<>();
    planned("tab").forEach(a -> back.put(a.material(), a.amount().units() / POURED));
    assertThat(back).isNotEmpty();
    rightWith(POURED - 1, back);
    assertThat(grades()).containsExactly(null, Grade.PLANTER, null);
    back.replaceAll((m, u) -> -u);
    undone("mistake: poured without a wick", () -> rightWith(POURED, back));
  }

  @Test
  void aPowerCutIsWrittenDownAndMovesNothing() {
    walkTo("melt");
    String said = tap("/pouring/" + pour.id(), "power-cut", Map.of());
    assertThat(said).contains("power cut", "Switch off what was hot");
    rightWith(POURED, Map.of());
    lastDeed("mistake: power cut");
    walkTo("trim");
    finish();
    rightWith(POURED, Map.of());
  }

  @Test
  void aDroppedCandleIsGoneAndMadeAgain() {
    walkTo("trim");
    finish();
    Piece fell = vessels.get(2);
    var ids = vessels.stream().map(Piece::id).toList();
    var studio = workshop.desk.studio();
    studio.advancePieces.run(workshop.act(), AdvancePieces.Request.of(ids, PieceStep.RESTING));
    studio.advancePieces.run(workshop.act(), AdvancePieces.Request.of(ids, PieceStep.RESTED));
    rightWith(POURED, Map.of());
    String said = tap("/piece/" + fell.id(), "dropped", Map.of());
    assertThat(said).contains("dropped", "1 no longer counts as first");
    rightWith(POURED - 1, Map.of());
    undone("mistake: dropped", () -> rightWith(POURED, Map.of()));
  }

  @Test
  void aMistakeThatCannotHaveBeenIsRefusedAndNothingMoves() {
    walkTo("melt");
    String said = tap("/pouring/" + pour.id(), "dosed-twice", Map.of());
    assertThat(said).contains("No scent is recorded for this pour yet");
    rightWith(POURED, Map.of());
  }
}
