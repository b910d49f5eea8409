package pourwright.page.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.order.Order;
import pourwright.order.OrderState;
import pourwright.page.Desk;
import pourwright.page.OpenStudio;
import pourwright.page.Server;
import pourwright.page.ServerSettings;
import pourwright.page.TestStudio;
import pourwright.page.Visitor;
import pourwright.plan.ForwardRule;
import pourwright.plan.Window;
import pourwright.work.Replan;
import pourwright.work.WorkPlan;

/** A class is taken on, told on its page and in the plan, printed, and called off again. */
class ClassDeskTest {
  private static final String PATH = "/plan/classes";
  private static final Instant NOW = Instant.parse("2026-03-02T07:00:00Z");
  private static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);
  private static final Map<String, String> TYPED =
      Map.of(
          "candle",
          "bollard-rain",
          "does",
          "cast",
          "seats",
          "12",
          "day",
          "2026-03-10",
          "from",
          "10:00",
          "to",
          "13:00",
          "by",
          "AB");

  private static WorkPlan plan(OpenStudio open) {
    return open.studio.look(
        books ->
            WorkPlan.of(books, Replan.openLines(books), NOW, ZoneOffset.UTC, new ForwardRule()));
  }

  @Test
  void twelveSeatsAreFourteenKitsInNeedsPlanAndPrintUntilCalledOff(@TempDir Path folder)
      throws IOException {
    try (OpenStudio open = new OpenStudio(folder, CLOCK).withDemoCards();
        Server server = server(open, folder)) {
      Visitor visitor = new Visitor(server.port());
      Document all = visitor.page(PATH);
      String teacher = all.select("#teacher option").get(0).val();
      Map<String, String> typed = new HashMap<>(TYPED);
      typed.put("teacher", teacher);

      typed.put("to", "09:00");
      assertThat(visitor.post(PATH, PATH, typed).body()).contains("ends before it begins");
      assertThat(plan(open).make().classes()).isEmpty();
      typed.put("to", "13:00");
      assertThat(visitor.post(PATH, PATH, typed).statusCode()).isEqualTo(303);
      assertThat(visitor.post(PATH, PATH, typed).body()).contains("at that hour already");

      String own = PATH + "/2026-03-10-1000";
      String page = visitor.page(own).text();
      assertThat(page)
          .contains("12 seats, 14 kits: ", "10:00\u201313:00", "It sets in class", "mask, goggles")
          .contains("Harden damp", "Can be posted from: ");
      assertThat(visitor.page("/plan").text()).contains("Kits: 14. Sets in class: all of it.");

      WorkPlan plan = plan(open);
      assertThat(plan.make().casts()).as("the seats cast, not the maker").isEmpty();
      assertThat(plan.make().shortages()).isNotEmpty();
      assertThat(visitor.page("/plan/habits").select("#spare")).hasSize(1);
      int ten = plan.problem().minuteOf(Instant.parse("2026-03-10T10:00:00Z"));
      List<Window> hours =
          plan.problem().people().stream()
              .filter(p -> p.words().equals(teacher))
              .flatMap(p -> p.windows().stream())
              .toList();
      assertThat(hours).isNotEmpty().noneMatch(w -> w.fromMin() < ten + 180 && w.toMin() > ten);

      byte[] pdf =
          URI.create(visitor.base() + own + "/kits.pdf").toURL().openStream().readAllBytes();
      try (PDDocument read = Loader.loadPDF(pdf)) {
        assertThat(new PDFTextStripper().getText(read)).contains("Kit list", "14 kits", "Water");
      }

      visitor.post("/plan/habits", "/plan/habits", Map.of("spare", "25", "by", "AB"));
      assertThat(visitor.page(own).text()).contains("12 seats, 15 kits: ");
      assertThat(visitor.post(own, own, Map.of("state", "off", "by", "AB")).statusCode())
          .isEqualTo(303);
      assertThat(plan(open).make().classes()).isEmpty();
      Optional<Order> off =
          open.studio.look(books -> books.orders().order("Class 2026-03-10 10:00"));
      assertThat(off.map(Order::state)).contains(OrderState.CANCELLED);
      assertThat(visitor.get(PATH + "/2026-03-11-1000").statusCode()).isEqualTo(404);
    }
  }

  @Test
  void aClassTakenOnIsTakenBackByAnUndoAndStandsAgainByAnother(@TempDir Path folder) {
    try (OpenStudio open = new OpenStudio(folder, CLOCK).withDemoCards();
        Server server = server(open, folder)) {
      Visitor visitor = new Visitor(server.port());
      WorkPlan without = plan(open);
      assertThat(visitor.post(PATH, PATH, TYPED).statusCode()).isEqualTo(303);
      WorkPlan with = plan(open);
      assertThat(with.make().classes()).hasSize(1);
      assertThat(with.make().needs().byMaterial()).isNotEmpty();
      assertThat(hours(with)).isNotEqualTo(hours(without));
      long deed = newest(open);
      assertThat(open.studio.undo.run(open.act(), deed).isDone()).isTrue();
      WorkPlan undone = plan(open);
      assertThat(undone.make()).as("kits, needs and draws are gone").isEqualTo(without.make());
      assertThat(hours(undone)).as("her hours are her own again").isEqualTo(hours(without));
      assertThat(visitor.get(PATH + "/2026-03-10-1000").statusCode()).isEqualTo(404);
      assertThat(open.studio.undo.run(open.act(), newest(open)).isDone()).isTrue();
      assertThat(plan(open).make()).isEqualTo(with.make());
      assertThat(hours(plan(open))).isEqualTo(hours(with));
    }
  }

  private static long newest(OpenStudio open) {
    return open.studio.look(books -> books.deeds().history(null, 1).items().get(0).id());
  }

  private static List<Window> hours(WorkPlan plan) {
    return plan.problem().people().stream().flatMap(p -> p.windows().stream()).toList();
  }

  private static Server server(OpenStudio open, Path folder) {
    Desk desk = new Desk(open.studio, CLOCK, ZoneOffset.UTC, java.util.Locale.UK);
    PlanCorner corner = new PlanCorner(desk, new ForwardRule(), Duration.ofSeconds(1));
    return TestStudio.open(
        TestStudio.site(desk).and(corner), ServerSettings.onAnyPort("Test studio"), folder);
  }
}
