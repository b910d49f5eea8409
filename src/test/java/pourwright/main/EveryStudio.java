package pourwright.main;

import static org.assertj.core.api.Assertions.assertThat;

import io.javalin.config.RoutesConfig;
import java.io.ByteArrayInputStream;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.batch.PieceStep;
import pourwright.card.CandleDesign;
import pourwright.page.Place;
import pourwright.page.Routes;
import pourwright.page.Server;
import pourwright.page.ServerSettings;
import pourwright.page.Site;
import pourwright.page.Visitor;
import pourwright.page.guard.SecretsFile;
import pourwright.page.plan.BuyDesk;
import pourwright.page.plan.PlanCorner;
import pourwright.page.plan.PromiseDesk;
import pourwright.page.plan.SeasonDesk;
import pourwright.plan.ForwardRule;
import pourwright.plan.Promise;
import pourwright.plan.SeatClass;
import pourwright.stock.Purchase;
import pourwright.work.Act;
import pourwright.work.AfterSale;
import pourwright.work.AttachFile;
import pourwright.work.BeginPour;
import pourwright.work.BooksUnavailable;
import pourwright.work.CardVersion;
import pourwright.work.Classes;
import pourwright.work.Drawers;
import pourwright.work.MarketDay;
import pourwright.work.Outcome;
import pourwright.work.PieceBook;
import pourwright.work.RecordAfterSale;
import pourwright.work.Studio;
import pourwright.work.Subject;

/** Two studios to walk through: one with nothing in it, one with a year of work and work today. */
final class EveryStudio implements AutoCloseable {
  private static final List<String> HOUSE =
      List.of(
          "/help",
          "/devices",
          "/sign-in",
          "/timers",
          "/history",
          "/hold",
          "/after",
          "/stop",
          "/find",
          "/find?mark=12X",
          "/settings",
          "/welcome",
          "/plan",
          "/plan/again",
          "/after",
          "/settings/crew",
          "/m/12X",
          "/pair/none",
          "/nowhere",
          "/broken",
          "/full",
          "/piece/999999");

  private final Wiring emptyBooks;
  private final Wiring fullBooks;
  final Server empty;
  final Server full;

  EveryStudio(Path folder) {
    emptyBooks = Wiring.open(folder.resolve("empty"), "", Wiring.systemClock());
    empty = serve(emptyBooks, folder.resolve("empty"));
    fullBooks = Wiring.open(folder.resolve("full"), "", Wiring.systemClock());
    DemoStudio.make(
        fullBooks.store().unitOfWork(),
        fullBooks.studio().files(),
        new DemoStudio.Spec(1, 17),
        Instant.now(),
        ZoneId.of("UTC"));
    full = serve(fullBooks, folder.resolve("full"));
    workToday(fullBooks.studio());
  }

  @Override
  public void close() {
    empty.close();
    full.close();
    emptyBooks.close();
    fullBooks.close();
  }

  /** The studio with a year of work in it. */
  Studio year() {
    return fullBooks.studio();
  }

  /** Every page of the empty studio, to so many of each route. */
  Routes bare(int ofEach) {
    return Routes.walk(empty, start(emptyBooks), ofEach);
  }

  /** Every page of the studio with a year of work in it, to so many of each route. */
  Routes worked(int ofEach) {
    return Routes.walk(full, start(fullBooks), ofEach);
  }

  private static List<String> start(Wiring wiring) {
    List<String> from = new ArrayList<>();
    wiring.site(null).places().forEach((Place p) -> from.add(p.path()));
    from.addAll(HOUSE);
    return from;
  }

  /** A cast and two pours under way, a picture of one, a simulation. */
  private void workToday(Studio studio) {
    BatchPlan.Makes makes = new BatchPlan.Makes("bollard", 1, 2, "bollard-mold");
    BatchPlan cast = new BatchPlan(BatchKind.CAST, "grey", 1, List.of(makes), List.of(), null);
    long batch = studio.startCast.run(Act.of("MB", "a cast today"), cast).made().id();
    Subject subject = Subject.of(Subject.Kind.BATCH, batch);
    AttachFile.Request note = new AttachFile.Request(subject, "text/plain", "note.txt");
    byte[] words = "sprayed the mold twice".getBytes(StandardCharsets.UTF_8);
    assertThat(
            studio.attachFile.run(
                Act.of("MB", "a note today"), note, new ByteArrayInputStream(words)))
        .matches(Outcome::isDone);
    List<CandleDesign> designs =
        studio.look(
            books -> books.cards().all(Drawers.CANDLE).stream().map(CardVersion::body).toList());
    for (CandleDesign design : designs.subList(0, 2)) {
      assertThat(
              studio.beginPour.run(
                  Act.of("MB", "pour today of " + design.code()),
                  new BeginPour.Request(design.code(), 4, 0)))
          .matches(Outcome::isDone);
    }
    afterTheSale(studio);
    LocalDate day = studio.today().plusDays(9);
    SeatClass taught =
        new SeatClass(
            Classes.name(day, LocalTime.of(10, 0)),
            "bollard-rain",
            SeatClass.Does.CAST,
            6,
            day,
            LocalTime.of(10, 0),
            LocalTime.of(13, 0),
            "MB");
    assertThat(studio.orders.takeClass(Act.of("MB", "a class"), taught)).matches(Outcome::isDone);
    Visitor visitor = new Visitor(full.port());
    done(visitor.post("/shelf/simulate", "/shelf/simulate", Map.of("hours", "1", "grid", "5")));
    done(visitor.post("/plan", "/plan/again", Map.of()));
    await("a plan to take", () -> visitor.get("/plan/again").body().contains("/plan/take"));
    done(visitor.post("/plan/again", "/plan/take", Map.of("by", "MB")));
  }

  /** A candle that came back, and a market day that waits to be counted back. */
  private static void afterTheSale(Studio studio) {
    Piece sold =
        studio.look(
            books ->
                books.pieces().list(PieceBook.Which.ALL, null, 500).items().stream()
                    .filter(
                        p -> p.state() instanceof PieceState.Gone g && g.how() == PieceStep.SOLD)
                    .findFirst()
                    .orElseThrow());
    assertThat(
            studio.afterSale.run(
                Act.of("MB", "one came back"),
                new RecordAfterSale.Request(AfterSale.Kind.RETURN, sold.id(), null, "", null, 0)))
        .matches(Outcome::isDone);
    String candle =
        studio.look(
            books ->
                books.recalls().counts("Rested").keySet().stream()
                    .filter(code -> books.burns().proof(code, 1).isPresent())
                    .filter(
                        code ->
                            books.recalls().standing(code, "Rested", 50).stream()
                                .anyMatch(p -> books.holds().stopping(p).isEmpty()))
                    .findFirst()
                    .orElseThrow());
    assertThat(
            studio.market.pack(
                Act.of("MB", "a market"),
                new MarketDay.Pack("Market today Quay", studio.today(), Map.of(candle, 1), 0)))
        .matches(Outcome::isDone);
  }

  private static void done(HttpResponse<String> answer) {
    assertThat(answer.statusCode()).as(answer.uri().getPath()).isIn(302, 303);
  }

  private static void await(String what, BooleanSupplier there) {
    for (int i = 0; i < 300 && !there.getAsBoolean(); i++) {
      LockSupport.parkNanos(100_000_000);
    }
    assertThat(there.getAsBoolean()).as(what).isTrue();
  }

  private static Server serve(Wiring wiring, Path folder) {
    Server server =
        new Server(
            Site.of(wiring.desk(), () -> "")
                .and(new PlanCorner(wiring.desk(), new ForwardRule(), Duration.ofSeconds(2)))
                .and(
                    new PromiseDesk(
                        wiring.desk(),
                        (problem, goal, standing, effort) ->
                            new Promise.None(List.of("no search in this test")),
                        Duration.ofSeconds(1)))
                .and(new SeasonDesk(wiring.desk()))
                .and(
                    new BuyDesk(wiring.desk(), list -> new Purchase.NotToBeHad(0, "nothing", 1, 0)))
                .and(EveryStudio::broken),
            ServerSettings.onAnyPort(SampleStudio.NAME),
            new SecretsFile(folder));
    server.start();
    return server;
  }

  /** Pages on which the program or the disk fails, to see what is said then. */
  private static void broken(RoutesConfig routes) {
    routes.get(
        "/broken",
        http -> {
          throw new IllegalStateException("a fault that a test made");
        });
    routes.get(
        "/full",
        http -> {
          throw new BooksUnavailable(true, "the disk is full", "free some space and do it again");
        });
  }
}
