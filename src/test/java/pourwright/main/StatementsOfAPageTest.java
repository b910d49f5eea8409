package pourwright.main;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.card.CandleDesign;
import pourwright.card.Finish;
import pourwright.material.UnitKind;
import pourwright.page.Server;
import pourwright.page.ServerSettings;
import pourwright.page.Visitor;
import pourwright.page.guard.SecretsFile;
import pourwright.stock.Amount;
import pourwright.work.Act;
import pourwright.work.AdvancePieces;
import pourwright.work.CountLot;
import pourwright.work.Deed;
import pourwright.work.Drawers;
import pourwright.work.PieceBook;
import pourwright.work.RunBurnTest;
import pourwright.work.SaveCard;
import pourwright.work.Studio;
import pourwright.work.Subject;
import pourwright.work.Undo;

/**
 * How many statements each page asks of the database, on the sample studio with its dozen candles,
 * hundreds of pieces and years of lots. A page that asks once for each row is found here and not by
 * whoever waits for it. No clock is read: the bounds are counts.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StatementsOfAPageTest {
  private static final List<String> PAGES =
      List.of(
          "/",
          "/orders",
          "/board",
          "/casting",
          "/pouring",
          "/shelf",
          "/stockroom",
          "/slate",
          "/press",
          "/plan",
          "/history",
          "/timers");

  /** The frame asks four; the fullest page asks eleven. */
  private static final int MOST = 16;

  /** After a card was changed: every drawer is read anew, eleven of them. */
  private static final int MOST_AFTER_A_CARD = 32;

  /** Only the press then walks back from each candle that was burnt for a proof; it has 18 here. */
  private static final int PRESS_AFTER_A_CARD = 300;

  private int acts;

  @SuppressWarnings("NullAway.Init")
  private Path folder;

  private final List<String> heard = Collections.synchronizedList(new ArrayList<>());

  @SuppressWarnings("NullAway.Init")
  private Wiring wiring;

  @SuppressWarnings("NullAway.Init")
  private Server server;

  @SuppressWarnings("NullAway.Init")
  private Visitor visitor;

  @BeforeAll
  void openTheSample(@TempDir Path corner) {
    folder = corner;
    wiring = Wiring.open(folder, "", Wiring.systemClock());
    DemoStudio.make(
        wiring.store().unitOfWork(),
        wiring.studio().files(),
        new DemoStudio.Spec(1, 17),
        Instant.now(),
        ZoneId.systemDefault());
    server =
        new Server(wiring.site(null), ServerSettings.onAnyPort("counted"), new SecretsFile(folder));
    visitor = new Visitor(server.start());
    wiring.file().orElseThrow().listen(this::hear);
    for (String page : PAGES) {
      visitor.get(page);
    }
  }

  /** What is planned beside the pages is not counted to whichever page is open then. */
  private void hear(String sql) {
    if (!Thread.currentThread().getName().equals("work-ahead")) {
      heard.add(sql);
    }
  }

  @AfterAll
  void close() {
    server.close();
    wiring.close();
  }

  /** The statements of a page, those that come more than once with their number. */
  private Map<String, Integer> statements(String page) {
    heard.clear();
    assertThat(visitor.get(page).statusCode()).as(page).isEqualTo(200);
    Map<String, Integer> times = new TreeMap<>();
    for (String sql : List.copyOf(heard)) {
      times.merge(sql.replaceAll("\\s+", " ").strip(), 1, Integer::sum);
    }
    return times;
  }

  private Map<String, Integer> tooMany(int most) {
    Map<String, Integer> tooMany = new LinkedHashMap<>();
    for (String page : PAGES) {
      Map<String, Integer> times = statements(page);
      int all = times.values().stream().mapToInt(Integer::intValue).sum();
      boolean walks = page.equals("/press") && most == MOST_AFTER_A_CARD;
      if (all > (walks ? PRESS_AFTER_A_CARD : most)) {
        tooMany.put(page + " " + times, all);
      }
    }
    return tooMany;
  }

  @Test
  void everyPageAsksFewStatementsOnceItWasOpened() {
    assertThat(tooMany(MOST)).isEmpty();
  }

  @Test
  void afterACardWasChangedTheDrawersAreReadAnewButNotForEachRow() {
    Finish finish = wiring.studio().look(Drawers::book).all(Finish.class).get(0);
    wiring
        .studio()
        .saveCard
        .run(
            Act.of("MB", "one-more-version"),
            SaveCard.Request.of(Drawers.FINISH, finish.code(), 1, finish));
    assertThat(tooMany(MOST_AFTER_A_CARD)).isEmpty();
  }

  /** What is kept between pages must be what a program that has just been started shows. */
  @Test
  void whatIsKeptIsWhatAFreshStartShows(@TempDir Path other) {
    Studio studio = wiring.studio();
    CandleDesign cog = studio.look(Drawers::book).candle("cog-rain");
    List<Supplier<Object>> deeds =
        List.of(
            () -> studio.placeHold.run(act(), card("pour/rain"), "test").made(),
            () -> studio.placeHold.run(act(), card("candle/cog-rain"), "test").made(),
            () -> studio.placeHold.run(act(), Subject.of(Subject.Kind.LOT, 3), "test").made(),
            () -> studio.saveSetting.run(act(), "slate.wage", "31").made(),
            () -> studio.advancePieces.run(act(), scrap()).made(),
            () -> studio.countLot.run(act(), nothingLeft("soft-wax-a")).made(),
            () -> studio.burnTests.word(act(), takenBack(cog)).made(),
            () ->
                studio.saveCard.run(
                    act(), SaveCard.Request.of(Drawers.CANDLE, cog.code(), 1, cog)));
    for (int i = 0; i < deeds.size(); i++) {
      assertThat(deeds.get(i).get()).isNotNull();
      asFresh(other, "deed " + i);
    }
    for (int i = 0; i < 4; i++) { // the first takes back what was last, and so on
      Deed last =
          studio.history(null, 60).items().stream()
              .filter(d -> !d.undone() && d.undoes() == null && Undo.serves(d))
              .findFirst()
              .orElseThrow();
      studio.undo.run(act(), last.id());
      asFresh(other, "taken back: " + last.verb());
    }
  }

  private Act act() {
    return Act.of("MB", "kept-" + ++acts);
  }

  private static Subject card(String key) {
    return new Subject(Subject.Kind.CARD, key);
  }

  private AdvancePieces.Request scrap() {
    long piece = wiring.studio().look(b -> b.pieces().standing(List.of("Rested")).get(0).piece());
    return AdvancePieces.Request.of(List.of(piece), PieceStep.SCRAPPED);
  }

  private CountLot.Request nothingLeft(String material) {
    long lot = wiring.studio().look(b -> b.lots().shelves(material).get(0).lot().id());
    return new CountLot.Request(lot, Amount.none(UnitKind.MASS), null);
  }

  private static RunBurnTest.Word takenBack(CandleDesign candle) {
    return new RunBurnTest.Word(candle.code(), 1, null, false, "taken back");
  }

  private void asFresh(Path other, String when) {
    try (Wiring again = Wiring.open(folder, "", Wiring.systemClock());
        Server second =
            new Server(
                again.site(null), ServerSettings.onAnyPort("counted"), new SecretsFile(other))) {
      Visitor fresh = new Visitor(second.start());
      for (String page : List.of("/press", "/slate", "/shelf", "/stockroom")) {
        assertThat(shown(visitor, page)).as(when + ", " + page).isEqualTo(shown(fresh, page));
      }
    }
  }

  private static String shown(Visitor visitor, String page) {
    return visitor.page(page).select("main").text();
  }

  /** What is asked of many pieces at once must be what each of them says. */
  @Test
  void manyAtOnceSayWhatEachSays() {
    Studio studio = wiring.studio();
    List<Subject> subjects =
        List.of(
            Subject.of(Subject.Kind.LOT, 2),
            Subject.of(Subject.Kind.PIECE, 7),
            card("vessel/cog"),
            card("candle/ferry-fig"),
            card("mix/" + studio.look(Drawers::book).candle("cog-rain").mix()),
            card("pour/" + studio.look(Drawers::book).candle("bollard-fig").pour()));
    for (Subject subject : subjects) {
      long hold = studio.placeHold.run(act(), subject, "looked at").made().id();
      studio.look(
          books -> {
            Set<Long> stopped = books.holds().stopped();
            for (Piece piece : books.pieces().list(PieceBook.Which.ALL, null, 2000).items()) {
              assertThat(stopped.contains(piece.id()))
                  .as(subject + " and piece " + piece.id())
                  .isEqualTo(!books.holds().stopping(piece.id()).isEmpty());
            }
            return 0;
          });
      studio.liftHold.run(act(), hold, "Mara Brook", "looked at");
    }
  }

  @Test
  void piecesInShortAreThePiecesThemselves() {
    wiring
        .studio()
        .look(
            books -> {
              List<String> states = List.of("Rested", "Poured", "Dry", "Damp", "Green", "Gone");
              List<PieceBook.Standing> all = books.pieces().standing(states);
              assertThat(all).hasSizeGreaterThan(100);
              for (PieceBook.Standing standing : all) {
                Piece piece = books.pieces().piece(standing.piece()).orElseThrow();
                assertThat(standing)
                    .isEqualTo(
                        new PieceBook.Standing(
                            piece.id(),
                            piece.candle().orElse(piece.vesselDesign()),
                            piece.state().code(),
                            piece.vesselDesign(),
                            books.batches().batch(piece.madeIn()).orElseThrow().plan().card(),
                            piece.grade()));
              }
              return 0;
            });
  }

  @Test
  void noPageAsksTheSameManyTimes() {
    for (String page : PAGES) {
      assertThat(statements(page)).as(page).allSatisfy((sql, n) -> assertThat(n).isLessThan(6));
    }
  }

  @Test
  void theCountNoticesAPageThatAsksForEachRow() {
    heard.clear();
    wiring
        .studio()
        .look(
            books -> {
              for (long piece = 1; piece <= 30; piece++) {
                books.pieces().piece(piece);
              }
              return 0;
            });
    assertThat(heard).hasSizeGreaterThan(MOST);
  }
}
