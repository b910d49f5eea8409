package pourwright.main;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import pourwright.cli.Doors;
import pourwright.cli.ExitCode;
import pourwright.cli.Reading;
import pourwright.material.Material;
import pourwright.order.Order;
import pourwright.work.Act;
import pourwright.work.Drawer;
import pourwright.work.Drawers;
import pourwright.work.SaveCard;
import pourwright.work.Signed;

/** The main job without pages: an order file in, a plan and its sheets out. */
class OrdersFromTheCommandLineTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-02T07:30:00Z"), ZoneOffset.UTC);
  private static final String MAP = "order=Name,design=Item,quantity=Qty,due=Ship by";

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  @TempDir private Path folder = Path.of("");

  @BeforeEach
  void layTheCards() {
    try (Wiring wiring = Wiring.open(folder, "", CLOCK)) {
      for (Material material : DemoCards.materials()) {
        save(wiring, Drawers.MATERIAL, material.code(), material);
      }
      for (Drawer<? extends pourwright.card.Card> drawer : Drawers.ofCards()) {
        saveAll(wiring, drawer);
      }
    }
  }

  private static <T extends pourwright.card.Card> void saveAll(Wiring wiring, Drawer<T> drawer) {
    DemoCards.book().all(drawer.type()).forEach(card -> save(wiring, drawer, card.code(), card));
  }

  private static <T> void save(Wiring wiring, Drawer<T> drawer, String code, T body) {
    wiring
        .studio()
        .saveCard
        .run(Act.of("MB", drawer.name() + code), SaveCard.Request.of(drawer, code, 0, body));
  }

  private Path file(String text) throws IOException {
    Path file = folder.resolve("orders.csv");
    Files.writeString(file, text, StandardCharsets.UTF_8);
    return file;
  }

  private static Reading reading(String... words) {
    Reading reading = new Reading();
    new CommandLine(
            CommandLine.Model.CommandSpec.forAnnotatedObject(new Bare())
                .addMixin("r", CommandLine.Model.CommandSpec.forAnnotatedObject(reading)))
        .parseArgs(words);
    return reading;
  }

  /** A command with nothing of its own. */
  @CommandLine.Command
  private static final class Bare {}

  private OrderDoors doors() {
    return new OrderDoors(new PrintWriter(out, true), new PrintWriter(err, true), CLOCK);
  }

  private List<Order> inTheBook() {
    try (Wiring wiring = Wiring.open(folder, "", CLOCK)) {
      return wiring.studio().look(books -> books.orders().wanting());
    }
  }

  @Test
  void aFileWithItsOwnColumnNamesBecomesAPlanAndSheets() throws IOException {
    Path orders =
        file(
            "Name;Item;Qty;Ship by\n#1;Bollard, Rain on slate;3;28.04.2026\n"
                + "#2;cog-fig;2;30.04.2026\n");
    Path pdf = folder.resolve("out.pdf");
    Doors.PlanWish wish =
        new Doors.PlanWish(orders, reading("--map", MAP), pdf, "letter", true, false, 0);
    assertThat(doors().plan(folder, "", wish)).isZero();
    JsonNode plan = new ObjectMapper().readTree(out.toString());
    assertThat(plan.get("orders")).hasSize(2);
    assertThat(plan.get("casts")).hasSize(2);
    assertThat(plan.get("steps").size()).isGreaterThan(30);
    for (JsonNode material : plan.get("materials")) {
      assertThat(material.get("short").asDouble()).isEqualTo(material.get("need").asDouble());
    }
    try (PDDocument document = Loader.loadPDF(Files.readAllBytes(pdf))) {
      assertThat(document.getNumberOfPages()).isGreaterThan(4);
    }
  }

  @Test
  void whatIsOpenInTheBookIsPlannedToo() throws IOException {
    Path book = file("Order,Item,Qty,Due\n7,cog-fig,2,2026-05-20\n8,cog-fig,1,2026-05-20\n");
    assertThat(doors().importOrders(folder, "", book, reading())).isZero();
    Path orders = file("Order,Item,Qty,Due\n8,cog-fig,3,2026-05-20\n9,bollard-rain,1,2026-05-22\n");
    JsonNode all = planned(orders, false);
    assertThat(all.get("orders")).hasSize(3); // 7 of the book, 8 and 9 as the file has them
    assertThat(all.get("orders").findValuesAsText("quantity")).containsExactly("2", "3", "1");
    assertThat(all.get("late_min").asLong()).isZero();
    assertThat(planned(orders, false)).isEqualTo(all);
    assertThat(planned(orders, true).get("orders")).hasSize(2);
  }

  @Test
  void noDayIsPromisedBeforeTheCandleIsProvedForSale() throws IOException {
    JsonNode before = promised(ExitCode.ERROR);
    assertThat(before.get("proved_for_sale").asBoolean()).isFalse();
    assertThat(before.get("leaves_at").isNull()).as("no promise").isTrue();
    assertThat(before.get("not_proved").get(0).asText())
        .contains("no word stands behind version 1");
    assertThat(before.get("missing").get(0).asText())
        .isEqualTo("the vessel is not proved wax-tight yet");
    String made = before.get("could_be_made_at").asText();
    assertThat(made).startsWith("20");
    out.getBuffer().setLength(0);
    assertThat(promise().promise(folder, "", new Doors.PromiseWish("cog-fig", 2, "", 0, false)))
        .isEqualTo(ExitCode.ERROR);
    assertThat(out.toString())
        .startsWith("No date can be promised before it is proved for sale:")
        .contains("If the tests pass, the making could be done: ")
        .doesNotContain("Earliest");
    try (Wiring wiring = Wiring.open(folder, "", CLOCK)) {
      Signed.waxTight(wiring.studio(), "cog", "grey");
      Signed.forSale(wiring.studio(), "cog-fig");
    }
    JsonNode after = promised(ExitCode.OK);
    assertThat(after.get("not_proved")).isEmpty();
    assertThat(after.get("leaves_at").asText()).isEqualTo(made);
    assertThat(after.get("way_min").asLong()).isGreaterThan(708 * 60);
  }

  @Test
  void aWishThatNamesNoCandleIsRefused() {
    assertThat(promise().promise(folder, "", new Doors.PromiseWish("cog", 2, "", 0, true)))
        .isEqualTo(ExitCode.USAGE);
    assertThat(err.toString()).contains("there is no candle 'cog'").contains("cog-fig");
    assertThat(promise().promise(folder, "", new Doors.PromiseWish("cog-fig", 0, "", 0, true)))
        .isEqualTo(ExitCode.USAGE);
    assertThat(promise().promise(folder, "", new Doors.PromiseWish("cog-fig", 1, "May", 0, true)))
        .isEqualTo(ExitCode.USAGE);
  }

  private PromiseDoor promise() {
    return new PromiseDoor(CLOCK, new PrintWriter(out, true), new PrintWriter(err, true));
  }

  private JsonNode promised(int code) throws IOException {
    out.getBuffer().setLength(0);
    assertThat(promise().promise(folder, "", new Doors.PromiseWish("cog-fig", 2, "", 0, true)))
        .isEqualTo(code);
    return new ObjectMapper().readTree(out.toString());
  }

  private JsonNode planned(Path orders, boolean alone) throws IOException {
    out.getBuffer().setLength(0);
    Doors.PlanWish wish = new Doors.PlanWish(orders, reading(), null, "a4", true, alone, 0);
    assertThat(doors().plan(folder, "", wish)).isZero();
    return new ObjectMapper().readTree(out.toString());
  }

  @Test
  void aFileImportedTwiceAddsNothing() throws IOException {
    Path orders = file("Order,Item,Qty\n1,cog-fig,2\n2,bollard-rain,1\n");
    assertThat(doors().importOrders(folder, "", orders, reading())).isZero();
    assertThat(doors().importOrders(folder, "", orders, reading())).isZero();
    assertThat(out.toString())
        .contains("2 lines added, 0 changed, 0 cancelled, 0 as they were")
        .contains("0 lines added, 0 changed, 0 cancelled, 2 as they were");
    assertThat(inTheBook()).hasSize(2);
  }

  @Test
  void aBadDateOnLineSeventeenKeepsEveryLineOut() throws IOException {
    StringBuilder text = new StringBuilder("Order,Customer,Item,Qty,Due\n");
    for (int line = 2; line <= 20; line++) {
      text.append(line).append(line == 9 ? ",\"=1+2\"" : ",Ann").append(",cog-fig,1,");
      text.append(line == 17 ? "2026-02-31\n" : "2026-05-01\n");
    }
    Path orders = file(text.toString());
    assertThat(doors().importOrders(folder, "", orders, reading())).isEqualTo(2);
    assertThat(err.toString()).contains("line 17: '2026-02-31' is not a date");
    assertThat(inTheBook()).isEmpty();
  }

  @Test
  void aDateThatCanBeReadTwoWaysAsksForTheOption() throws IOException {
    Path orders = file("Order,Item,Qty,Due\n1,cog-fig,2,03/04/2026\n");
    Doors.PlanWish wish = new Doors.PlanWish(orders, reading(), null, "a4", false, false, 0);
    assertThat(doors().plan(folder, "", wish)).isEqualTo(2);
    assertThat(err.toString()).contains("--dates").contains("d/m/y");
    Doors.PlanWish told =
        new Doors.PlanWish(orders, reading("--dates", "d/m/y"), null, "a4", false, false, 0);
    assertThat(doors().plan(folder, "", told)).isZero();
    assertThat(out.toString()).contains("due 2026-04-03");
  }

  @Test
  void aFolderWithoutAStudioSaysWhatToDo() throws IOException {
    Path orders = file("Order,Item,Qty\n1,cog-fig,2\n");
    Path empty = folder.resolve("empty");
    Doors.PlanWish wish = new Doors.PlanWish(orders, reading(), null, "a4", false, false, 0);
    assertThat(doors().plan(empty, "", wish)).isEqualTo(2);
    assertThat(err.toString()).contains("there is no studio in").contains("demo --data");
  }
}
