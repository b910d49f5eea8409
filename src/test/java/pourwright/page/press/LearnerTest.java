package pourwright.page.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Piece;
import pourwright.card.Person;
import pourwright.page.Server;
import pourwright.page.TestStudio;
import pourwright.page.Visitor;
import pourwright.work.Act;
import pourwright.work.BurnTest;
import pourwright.work.Drawers;
import pourwright.work.Hold;
import pourwright.work.Outcome;
import pourwright.work.Reading;
import pourwright.work.Reason;
import pourwright.work.RunBurnTest;
import pourwright.work.Subject;

/** A learner records, but proves nothing for sale, lifts no hold and prints nothing for sale. */
class LearnerTest {
  private static Reason refused(Outcome<?> outcome) {
    assertThat(outcome).isInstanceOf(Outcome.Refused.class);
    return ((Outcome.Refused<?>) outcome).reason();
  }

  @Test
  void sheRecordsButDoesNotProveLiftOrPrintForSale(@TempDir Path folder) {
    PressStudio press = new PressStudio(folder);
    press.sheets("2026-01", PressStudio.OIL);
    press.maker();
    List<Piece> tested = press.candles(3);
    BurnTest test = press.prove(tested, 3, 4);
    press.clock.move(Duration.ofDays(1));
    press.save(Drawers.PERSON, "to", new Person("TO", "Tove", Person.Role.LEARNER, null));
    Act learner = Act.of("TO", "learner-1");

    Subject pour = Subject.of(Subject.Kind.BURN_TEST, test.id());
    Reading reading = Reading.fresh(pour, "room_c", 20, press.studio.now());
    assertThat(press.studio.recordReading.run(learner, List.of(reading)).isDone()).isTrue();

    RunBurnTest.Word word =
        new RunBurnTest.Word(
            press.candle.code(), test.candleVersion(), test.id(), true, "may be sold");
    assertThat(refused(press.studio.burnTests.word(Act.of("TO", "learner-2"), word)))
        .isEqualTo(Reason.A_MAKER_IS_NEEDED);

    Subject piece = Subject.of(Subject.Kind.PIECE, tested.get(0).id());
    Hold hold = press.studio.placeHold.run(Act.of("TO", "learner-3"), piece, "smells odd").made();
    assertThat(
            refused(
                press.studio.liftHold.run(
                    Act.of("TO", "learner-4"), hold.id(), "Tove Oren", "looked again")))
        .isEqualTo(Reason.A_MAKER_IS_NEEDED);
    assertThat(
            press.studio.liftHold.run(press.act(), hold.id(), "Mira Bern", "looked again").isDone())
        .isTrue();

    // neither is come by through the back door of taking a lift or a word back
    for (String verb : List.of("lifted a hold", "gave a word on a design")) {
      long deed =
          press.studio.history(null, 50).items().stream()
              .filter(d -> d.verb().equals(verb))
              .findFirst()
              .orElseThrow()
              .id();
      assertThat(refused(press.studio.undo.run(press.act(), deed)))
          .as(verb)
          .isEqualTo(Reason.A_NAME_IS_NEEDED);
    }

    String mark = press.candles(1).get(0).mark().text();
    String labels =
        "/press/candle/"
            + press.candle.code()
            + "/labels.pdf?width=74&height=105&to=us&language=en&carrier=tag&paper=single&mark="
            + mark;
    try (Server server = TestStudio.open(press.desk, folder)) {
      Visitor visitor = new Visitor(server.port());
      visitor.post("/", "/hand", Map.of("hand", "TO"));
      assertThat(press.label(null).gate().isOpen()).isTrue();
      var turnedAway = visitor.get(labels);
      assertThat(turnedAway.statusCode()).isEqualTo(403);
      assertThat(turnedAway.body()).contains("does not print for sale");
      visitor.post("/", "/hand", Map.of("hand", "MB"));
      assertThat(visitor.get(labels).body()).contains("Your name in full");
      String print = visitor.page(labels).select("main form").attr("action");
      Map<String, String> unsaid = Map.of("printed_by", "Mira Bern", "printed_why", "");
      assertThat(visitor.post(labels, print, unsaid).statusCode()).isEqualTo(422);
      Map<String, String> initials = Map.of("printed_by", "MB", "printed_why", "order 1042");
      assertThat(visitor.post(labels, print, initials).statusCode()).isEqualTo(422);
      Map<String, String> named = Map.of("printed_by", "Mira Bern", "printed_why", "order 1042");
      var signed = visitor.post(labels, print, named);
      assertThat(signed.statusCode()).isEqualTo(303);
      var paper = visitor.get(signed.headers().firstValue("Location").orElseThrow());
      assertThat(paper.headers().firstValue("Content-Type")).contains("application/pdf");
      var deed = press.studio.history(null, 1).items().get(0);
      assertThat(deed.verb()).isEqualTo("printed for sale");
      assertThat(deed.note()).isEqualTo("Mira Bern: order 1042");
      assertThat(refused(press.studio.undo.run(press.act(), deed.id())))
          .isEqualTo(Reason.A_NAME_IS_NEEDED);
    }
  }
}
