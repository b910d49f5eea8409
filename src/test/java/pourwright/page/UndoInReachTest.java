package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.FormElement;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Batch;
import pourwright.batch.PlannedStep;
import pourwright.work.Drawers;
import pourwright.work.PieceBook;

/**
 * Every answer that says an amount, a piece or an order was written has an Undo beside it, which
 * takes back just that and all of it.
 */
class UndoInReachTest {
  private Workshop workshop;
  private Server server;
  private Visitor visitor;

  @BeforeEach
  void openTheStudio(@TempDir Path folder) {
    workshop = new Workshop(folder);
    server = TestStudio.open(workshop.desk, folder);
    visitor = new Visitor(server.port());
    visitor.post("/", "/hand", Map.of("hand", "MB"));
  }

  @AfterEach
  void closeTheStudio() {
    server.close();
  }

  /** Amounts, pieces, batches with their steps, orders and cards, as they count now. */
  private String state() {
    return workshop
        .desk
        .studio()
        .look(
            books -> {
              StringBuilder all = new StringBuilder();
              books.lots().allShelves().stream()
                  .sorted(java.util.Comparator.comparingLong(s -> s.lot().id()))
                  .forEach(
                      s ->
                          all.append(s.lot().id())
                              .append(s.lot().openedOn())
                              .append(s.onHand())
                              .append('\n'));
              books.pieces().list(PieceBook.Which.ALL, null, 200).items().forEach(all::append);
              for (Batch batch : books.batches().list(null, null, 50).items()) {
                all.append(batch).append(books.batches().steps(batch.id())).append('\n');
                all.append(
                        books
                            .readings()
                            .of(
                                pourwright.work.Subject.of(
                                    pourwright.work.Subject.Kind.BATCH, batch.id())))
                    .append('\n');
              }
              books.orders().list(null, null, 50).items().forEach(all::append);
              books.cards().all(Drawers.MIX).forEach(c -> all.append(c.version()));
              return all.toString();
            });
  }

  /** Does it, takes it back by the Undo beside the answer, and does it again. */
  private Document deed(String page, String action, Map<String, String> fields) {
    String before = state();
    Document answer = done(page, action, fields);
    assertThat(state()).as(action + " wrote").isNotEqualTo(before);
    if (!(answer.selectFirst(".said form[action=/undo]") instanceof FormElement undo)) {
      throw new AssertionError(
          action + " has no Undo beside its answer: " + answer.select(".said"));
    }
    Map<String, String> taken = new LinkedHashMap<>();
    undo.formData().forEach(kv -> taken.put(kv.key(), kv.value()));
    assertThat(visitor.post("/undo", taken).statusCode()).isEqualTo(303);
    assertThat(state()).as(action + " is taken back").isEqualTo(before);
    return done(page, action, fields);
  }

  private Document done(String page, String action, Map<String, String> fields) {
    HttpResponse<String> response = visitor.post(page, action, fields);
    assertThat(response.statusCode()).as(action + ": " + response.body()).isEqualTo(303);
    return visitor.page(response.headers().firstValue("Location").orElseThrow());
  }

  private Batch running() {
    return workshop.desk.studio().look(b -> b.batches().running()).get(0);
  }

  @Test
  void stockAndOrders() {
    deed(
        "/stockroom/receive",
        "/stockroom/receive",
        Map.of("material", "soft-wax-a", "amount", "2 kg", "lot", "N-1"));
    deed(
        "/stockroom/delivery",
        "/stockroom/delivery",
        Map.of("lines", "5 kg Soft plant wax A, 48.20, lot N-2", "do", "keep"));
    String lot = "/stockroom/lot/" + workshop.lot("soft-wax-a");
    deed(lot, lot + "/count", Map.of("found", "4100"));
    deed(lot, lot + "/open", Map.of());
    deed(lot, lot + "/off", Map.of("off", "10", "cause", "waste", "off-why", "spilt"));
    deed("/orders/new", "/orders/new", Map.of("design", "bollard-rain", "quantity", "2"));
    deed("/board/mix/grey/edit", "/board/mix/grey/edit", Map.of("waste", "0.12"));
  }

  @Test
  void aCastFromItsBeginToTheSealedVessel() {
    String sheet = "/casting/sheet?mix=grey&vessel1=bollard&count1=2&water_c=20&room_c=20&step=1";
    deed(sheet, "/casting/start", Map.of());
    String path = "/casting/" + running().id();
    for (PlannedStep step : running().plan().steps()) {
      assertThat(visitor.page(path).select("input[name=key]").attr("value")).isEqualTo(step.key());
      deed(path, path + "/step", Map.of());
    }
    deed(path, path + "/demold", Map.of("tray", "A"));
    Map<String, String> one = Map.of("piece", firstGreen(), "step", "HARDENED");
    deed("/casting/pieces/Green", "/casting/pieces/Green", one);
    deed("/casting/trays", "/casting/trays/lay", Map.of("piece", firstGreen(), "label", "B"));
    String two = String.valueOf(lastPiece());
    deed("/piece/" + two, "/mistake", Map.of("piece", two, "mistake", "dropped"));
  }

  private long lastPiece() {
    return workshop
        .desk
        .studio()
        .look(b -> b.pieces().list(PieceBook.Which.ALL, null, 1).items().get(0).id());
  }

  private String firstGreen() {
    PieceBook.Which green = new PieceBook.Which(null, "Green");
    long piece =
        workshop.desk.studio().look(b -> b.pieces().list(green, null, 1).items().get(0).id());
    return String.valueOf(piece);
  }

  @Test
  void aPourFromItsBeginToTheCandle() {
    workshop.vessels("bollard", 2);
    deed("/pouring", "/pouring", Map.of("candle", "bollard-rain", "count", "1"));
    String path = "/pouring/" + running().id();
    for (int i = 0; i < 12 && visitor.page(path).select("form[action$=/step]").size() > 0; i++) {
      deed(path, path + "/step", Map.of());
    }
    deed(path, path + "/finish", Map.of());
  }

  @Test
  void anUndoTakesBackWhatThePageShowedAndNotWhatAnotherHandDidSince() {
    Map<String, String> mine = Map.of("material", "soft-wax-a", "amount", "2 kg", "lot", "MINE");
    Document answer = done("/stockroom/receive", "/stockroom/receive", mine);
    String foot = answer.select(".foot form[action=/undo] input[name=deeds]").attr("value");
    String said = answer.select(".said form[action=/undo] input[name=deeds]").attr("value");
    assertThat(foot).isEqualTo(said).matches("\\d+");
    workshop.order("HERS", "bollard-rain", 2, "shop");
    visitor.post("/history", "/undo", Map.of("deeds", foot));
    var studio = workshop.desk.studio();
    boolean hers = studio.look(b -> b.orders().order("HERS").isPresent());
    boolean gone = studio.look(b -> b.lots().shelf("soft-wax-a", "MINE").isEmpty());
    assertThat(hers).as("what another hand did stands").isTrue();
    assertThat(gone).as("what this page showed is taken back").isTrue();
  }
}
