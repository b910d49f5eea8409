package pourwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import pourwright.card.CardBook;
import pourwright.main.DemoCards;
import pourwright.material.Material;
import pourwright.order.OrderLine;
import pourwright.plan.Explosion;
import pourwright.plan.Floor;
import pourwright.plan.ForwardRule;
import pourwright.plan.Habits;
import pourwright.plan.InHand;
import pourwright.plan.MakePlan;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner;
import pourwright.plan.Routing;
import pourwright.stock.Amount;
import pourwright.stock.Lot;
import pourwright.stock.Shelf;
import pourwright.work.WorkPlan;

/** The sheets of a plan, read back. */
class PlanSheetsTest {
  private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
  private static final Instant NOW = Instant.parse("2026-03-02T07:30:00Z");
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);

  private static WorkPlan plan() {
    CardBook book = DemoCards.book();
    List<OrderLine> lines = new ArrayList<>();
    String[] designs = {"bollard-rain", "cog-fig", "trough-hearth", "ferry-rain", "bollard-fig"};
    for (int i = 0; i < 10; i++) {
      lines.add(
          new OrderLine(
              "#" + (1040 + i), designs[i % 5], 1, 1 + i % 4, TODAY.plusDays(25 + i * 3), null));
    }
    Map<String, List<Shelf>> shelves = new HashMap<>();
    long id = 1;
    for (Material material : book.materials().all()) {
      List<Shelf> lots = new ArrayList<>();
      for (int i = 0; i < 2; i++) {
        Lot lot =
            new Lot(
                id++,
                material.code(),
                "NQ-" + (400 + id),
                material.unit(),
                null,
                TODAY,
                null,
                TODAY.plusDays(90 + 30 * i),
                null,
                1);
        lots.add(new Shelf(lot, new Amount(material.unit(), material.unit().toSmall(1500)), false));
      }
      shelves.put(material.code(), lots);
    }
    InHand inHand = new InHand(Map.of("cog-fig", 2), Map.of(), shelves, TODAY);
    Floor floor = Floor.house(NOW, ZONE, List.of("MB"));
    MakePlan make = Explosion.of(lines, book, inHand, Habits.HOUSE);
    PlanProblem problem = Routing.of(make, book, Habits.HOUSE, floor);
    Planner.Outcome outcome =
        new ForwardRule().plan(problem, Planner.Effort.of(Duration.ofSeconds(1)));
    return new WorkPlan(book, inHand, Habits.HOUSE, floor, make, problem, outcome);
  }

  private static byte[] pdf(WorkPlan plan, Paper paper) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PlanSheets.write(plan, paper, "Undercroft Lantern Works", NOW.atZone(ZONE), out);
    return out.toByteArray();
  }

  @Test
  void everyCastPourLotAndStepIsOnTheSheets() throws IOException {
    WorkPlan plan = plan();
    byte[] bytes = pdf(plan, Paper.A4);
    try (PDDocument document = Loader.loadPDF(bytes)) {
      String text = new PDFTextStripper().getText(document);
      assertThat(text).contains("What to make", "Mix sheets", "Pour sheets", "Picking list");
      plan.make()
          .casts()
          .forEach(c -> assertThat(text).contains(Figures.grams(c.waterG()), c.key()));
      plan.make().pours().forEach(p -> assertThat(text).contains(Figures.grams(p.totalG())));
      plan.make().picks().stream()
          .flatMap(p -> p.draws().stream())
          .forEach(d -> assertThat(text).contains("lot " + d.code()));
      assertThat(text).contains("3.00 : 1 by volume").contains("by mass").contains("measured here");
      assertThat(text).contains("Order of work").contains("Coat 1 inside and outside");
    }
  }

  /** Nothing on any sheet is written over its margin; the longest date is on the first one. */
  @Test
  void noTextRunsOverTheMargin() throws IOException {
    for (Paper paper : Paper.values()) {
      try (PDDocument document = Loader.loadPDF(pdf(plan(), paper))) {
        double right = (paper.widthMm() - Leaf.LEFT) * 72 / 25.4;
        List<String> over = new ArrayList<>();
        PDFTextStripper stripper =
            new PDFTextStripper() {
              @Override
              protected void writeString(
                  String text, List<org.apache.pdfbox.text.TextPosition> at) {
                var last = at.get(at.size() - 1);
                if (last.getXDirAdj() + last.getWidthDirAdj() > right + 0.5) {
                  over.add(text);
                }
              }
            };
        assertThat(stripper.getText(document)).isNotNull();
        assertThat(over).isEmpty();
      }
    }
  }

  /** A drawn figure keeps to its box: "Wed 30 Sep" at 16 points is wider than a fifth of A4. */
  @Test
  void aLongDateIsWrittenSmallerRatherThanOverItsBox() throws IOException {
    try (Ink ink = new Ink(Paper.A4)) {
      ink.page();
      String date = "Wednesday 30 September 2026";
      Ink.Pen pen = new Ink.Pen(16, true, Ink.SLATE);
      assertThat(ink.width(date, pen)).isGreaterThan(40);
      ink.fitting(20, 50, 40, date, pen);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ink.save(out);
      try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
        List<Double> ends = new ArrayList<>();
        PDFTextStripper stripper =
            new PDFTextStripper() {
              @Override
              protected void writeString(
                  String text, List<org.apache.pdfbox.text.TextPosition> at) {
                var last = at.get(at.size() - 1);
                ends.add((double) last.getXDirAdj() + last.getWidthDirAdj());
              }
            };
        assertThat(stripper.getText(document)).isNotNull();
        assertThat(ends).isNotEmpty().allMatch(x -> x <= 60.2 * 72 / 25.4);
      }
    }
  }

  @Test
  void facesAreEmbeddedAndPagesAreOfThePaper() throws IOException {
    for (Paper paper : Paper.values()) {
      try (PDDocument document = Loader.loadPDF(pdf(plan(), paper))) {
        for (PDPage page : document.getPages()) {
          assertThat(page.getMediaBox().getWidth() * 25.4 / 72)
              .isCloseTo(paper.widthMm(), org.assertj.core.api.Assertions.within(0.05));
          for (var name : page.getResources().getFontNames()) {
            PDFont font = page.getResources().getFont(name);
            assertThat(font.isEmbedded()).isTrue();
          }
        }
      }
    }
  }
}
