package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import pourwright.order.Order;
import pourwright.order.OrderImport;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.work.Act;
import pourwright.work.AttachFile;
import pourwright.work.BurnTest;
import pourwright.work.CardVersion;
import pourwright.work.Customer;
import pourwright.work.Draft;
import pourwright.work.Drawer;
import pourwright.work.PageOf;
import pourwright.work.Reading;
import pourwright.work.Reason;
import pourwright.work.RunBurnTest;
import pourwright.work.SaveCard;
import pourwright.work.Subject;

/** Cards, lists, timers, readings, files, burn tests, orders. */
abstract class DeskBooksContract extends PieceBooksContract {

  /** A card as the drawing board might keep one. */
  record Sheet(String name, Shade shade, LocalDate day, List<Double> values) {}

  /** A sealed part of a card. */
  sealed interface Shade {
    /** One. */
    record Plain(String colour) implements Shade {}

    /** Two. */
    record Blend(double share, Plain base) implements Shade {}
  }

  private static final Drawer<Sheet> SHEETS = new Drawer<>("sheet", Sheet.class);

  private static Sheet sheet(String name) {
    return new Sheet(
        name,
        new Shade.Blend(0.25, new Shade.Plain("slate")),
        LocalDate.parse("2026-03-01"),
        List.of(1.5, 2.0));
  }

  @Test
  void twoPeopleWhoEditTheSameCardGetAConflictAndNothingIsLost() {
    var saved = studio.saveCard.run(act(), SaveCard.Request.of(SHEETS, "a", 0, sheet("one")));
    assertThat(saved).isInstanceOf(SaveCard.Saving.Saved.class);
    studio.saveCard.run(act(), SaveCard.Request.of(SHEETS, "a", 1, sheet("two")));
    var late = studio.saveCard.run(act(), SaveCard.Request.of(SHEETS, "a", 1, sheet("three")));
    assertThat(late).isInstanceOf(SaveCard.Saving.Conflict.class);
    assertThat(((SaveCard.Saving.Conflict<Sheet>) late).theirs().body()).isEqualTo(sheet("two"));
    CardVersion<Sheet> current = studio.look(b -> b.cards().current(SHEETS, "a").orElseThrow());
    assertThat(current.body()).isEqualTo(sheet("two"));
    assertThat(current.version()).isEqualTo(2);
    studio.undo.run(act(), current.deed());
    assertThat(see(b -> b.cards().current(SHEETS, "a").orElseThrow().body()).it())
        .isEqualTo(sheet("one"));
    assertThat(see(b -> b.cards().version(SHEETS, "a", 2)).it()).isPresent();
  }

  @Test
  void longListsPageByKeyFromEndToEnd() {
    for (int i = 0; i < 23; i++) {
      bench.lot("grey-powder", "P-" + i, 10);
    }
    List<Long> seen = new ArrayList<>();
    String after = null;
    do {
      String from = after;
      PageOf<pourwright.stock.Shelf> page = studio.look(b -> b.lots().list("grey-powder", from, 5));
      page.items().forEach(s -> seen.add(s.lot().id()));
      after = page.next();
    } while (after != null);
    assertThat(seen).hasSize(23).doesNotHaveDuplicates();
    assertThat(studio.history(null, 10).items()).hasSize(10);
  }

  @Test
  void aTimerSurvivesAndIsAnsweredOnce() {
    Subject batch = Subject.of(Subject.Kind.STUDIO, 1);
    long timer = studio.timers.start(act(), "set", batch, Duration.ofMinutes(40)).made().id();
    bench.clock.move(Duration.ofMinutes(41));
    var ringing = studio.look(b -> b.timers().running()).get(0);
    assertThat(ringing.rings(studio.now())).isTrue();
    studio.timers.answer(act(), timer);
    assertThat(see(b -> b.timers().running()).it()).isEmpty();
    assertThat(reason(studio.timers.answer(act(), timer))).isEqualTo(Reason.IT_IS_ALREADY_ANSWERED);
  }

  @Test
  void readingsFilesAndBurnTestsAreKept() {
    Subject pitcher = Subject.of(Subject.Kind.BATCH, 7);
    studio.recordReading.run(act(), List.of(Reading.fresh(pitcher, "wax_c", 71.3, studio.now())));
    assertThat(see(b -> b.readings().newest(pitcher, "wax_c").orElseThrow().value()).it())
        .isEqualTo(71.3);
    var attached =
        studio
            .attachFile
            .run(
                act(),
                new AttachFile.Request(pitcher, "image/png", "top.png"),
                new ByteArrayInputStream("pixels".getBytes(StandardCharsets.UTF_8)))
            .made();
    assertThat(see(b -> b.attachments().of(pitcher)).it()).containsExactly(attached);
    var samples = List.of(new RunBurnTest.NewSample("A", null));
    long test =
        studio
            .burnTests
            .begin(act(), new RunBurnTest.Request("rain-bollard", 1, "house", "first", samples))
            .made()
            .id();
    long sample = studio.look(b -> b.burns().samples(test).get(0).id());
    long cycle = studio.burnTests.light(act(), test, sample).made().id();
    BurnTest.Look look =
        new BurnTest.Look(
            60, 412.5, 28.0, null, null, 6.0, 41.0, null, null, "small", null, null, false, null,
            true, "");
    studio.burnTests.look(act(), cycle, look);
    assertThat(see(b -> b.burns().seen(cycle).get(0).look()).it()).isEqualTo(look);
    studio.burnTests.putOut(act(), cycle, "after 4 h");
    var word = new RunBurnTest.Word("rain-bollard", 1, test, true, "burns well");
    assertThat(reason(studio.burnTests.word(act(), word))).isEqualTo(Reason.INPUT_CANNOT_BE);
    studio.burnTests.close(act(), test, "pass", "all looks within the rules");
    assertThat(reason(studio.burnTests.word(act(), word))).isEqualTo(Reason.INPUT_CANNOT_BE);
    studio.saveSetting.run(act(), "proof.rule", "0 0 0 20");
    studio.burnTests.word(act(), word);
    assertThat(see(b -> b.burns().proof("rain-bollard", 1).orElseThrow().proved()).it()).isTrue();
  }

  private static OrderImport.Ready file(String print, OrderLine... lines) {
    List<OrderImport.Read> reads = new ArrayList<>();
    for (OrderLine line : lines) {
      reads.add(new OrderImport.Read(reads.size() + 2, line, "shop", "Ada Quay"));
    }
    return new OrderImport.Ready(
        new OrderImport.Detected("CSV", "UTF-8", "comma", ".", "ISO", Map.of(), lines.length),
        reads,
        List.of(),
        print);
  }

  @Test
  void aDraftIsWrittenOverAndIsGoneOnceItsRequestWasDone() {
    String form = "/stockroom/delivery";
    assertThat(studio.drafts.save("phone", form, "key-1", "5 kg")).isPresent();
    assertThat(studio.drafts.save("phone", form, "key-1", "5 kg so")).isPresent();
    assertThat(studio.drafts.save("laptop", form, "key-2", "9 kg")).isPresent();
    assertThat(studio.drafts.find("phone", form).map(Draft::typed)).contains("5 kg so");
    assertThat(studio.drafts.find("laptop", form).map(Draft::typed)).contains("9 kg");
    assertThat(studio.drafts.find("phone", "/after")).isEmpty();
    assertThat(studio.history(null, 5).items()).as("a draft is no deed").isEmpty();
    studio.saveSetting.run(Act.of("MB", "key-1"), "draft.test", "kept");
    assertThat(studio.drafts.find("phone", form)).isEmpty();
    assertThat(studio.drafts.save("phone", form, "key-1", "too late")).isEmpty();
    assertThat(see(b -> b.drafts().draft("phone", form)).it()).isEmpty();
    studio.drafts.drop("laptop", form);
    assertThat(studio.drafts.find("laptop", form)).isEmpty();
  }

  @Test
  void ofManyDraftsOfADeviceTheNewestFiftyStay() {
    for (int i = 0; i < 55; i++) {
      assertThat(studio.drafts.save("phone", "/board/mix/m" + i + "/edit", "key-" + i, "x"))
          .isPresent();
    }
    assertThat(studio.drafts.find("phone", "/board/mix/m54/edit")).isPresent();
    long left =
        IntStream.range(0, 55)
            .filter(i -> studio.drafts.find("phone", "/board/mix/m" + i + "/edit").isPresent())
            .count();
    assertThat(left).isEqualTo(50);
  }

  @Test
  void anOrderFileGoesInOnceAndItsCustomerCanBeErased() {
    OrderLine two = new OrderLine("2001", "rain", 1, 2, LocalDate.parse("2026-04-01"), null);
    OrderLine one = new OrderLine("2001", "fig", 1, 1, null, "a card please");
    studio.acceptOrders.run(act(), "march.csv", file("f1", two, one));
    studio.acceptOrders.run(act(), "march.csv", file("f1", two, one));
    Order order = studio.look(b -> b.orders().order("2001").orElseThrow());
    assertThat(order.lines()).containsExactly(two, one);
    assertThat(see(b -> b.orders().wanting()).it()).hasSize(1);
    OrderLine three = new OrderLine("2001", "rain", 1, 3, LocalDate.parse("2026-04-01"), null);
    long edit = studio.acceptOrders.run(act(), "march2.csv", file("f2", three)).deed().id();
    assertThat(see(b -> b.orders().order("2001").orElseThrow().lines()).it())
        .containsExactly(three);
    studio.undo.run(act(), edit);
    assertThat(see(b -> b.orders().order("2001").orElseThrow().lines()).it())
        .containsExactly(two, one);
    String ref = java.util.Objects.requireNonNull(order.customer());
    assertThat(see(b -> b.customers().customer(ref).map(Customer::name)).it()).contains("Ada Quay");
    studio.customers.erase(act(), ref);
    assertThat(see(b -> b.customers().customer(ref)).it()).isEmpty();
    assertThat(see(b -> b.orders().order("2001").orElseThrow()).it()).isEqualTo(order);
    studio.orders.move(act(), "2001", OrderState.SENT);
    assertThat(see(b -> b.orders().wanting()).it()).isEmpty();
    assertThat(see(b -> b.orders().list(OrderState.SENT, null, 5).items()).it()).hasSize(1);
  }
}
