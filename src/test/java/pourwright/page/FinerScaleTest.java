package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Batch;
import pourwright.card.Instrument;
import pourwright.work.BeginPour;
import pourwright.work.Drawers;
import pourwright.work.RecordStep;
import pourwright.work.SaveCard;
import pourwright.work.Studio;

/**
 * An amount finer than a scale can weigh says so and names the finer scale: sheet, bench, paper.
 */
class FinerScaleTest {
  private Workshop workshop;
  private Studio studio;
  private Server server;
  private Visitor visitor;

  @BeforeEach
  void openTheStudio(@TempDir Path folder) {
    workshop = new Workshop(folder);
    studio = workshop.desk.studio();
    scale("bench", "Bench scale", 1);
    scale("fine", "Jewel scale", 0.01);
    server = TestStudio.open(workshop.desk, folder);
    visitor = new Visitor(server.port());
    visitor.post("/", "/hand", Map.of("hand", "MB"));
  }

  @AfterEach
  void closeTheStudio() {
    server.close();
  }

  private void scale(String code, String name, double step) {
    Instrument scale = new Instrument(code, name, "mass", step, "g", null, null);
    studio.saveCard.run(workshop.act(), SaveCard.Request.of(Drawers.INSTRUMENT, code, 0, scale));
  }

  private Batch running() {
    return studio.look(b -> b.batches().running()).get(0);
  }

  /** Records steps until the one that weighs this. */
  private void walkTo(String material) {
    Batch batch = running();
    for (var step : batch.plan().steps()) {
      if (step.amounts().stream().anyMatch(a -> a.material().equals(material))) {
        return;
      }
      studio.recordStep.run(
          workshop.act(), new RecordStep.Request(batch.id(), step.key(), List.of(), null, null));
    }
  }

  private String paper() throws IOException {
    URI sheet = URI.create(visitor.base() + "/sheet/" + running().id() + "/print");
    byte[] file;
    try (InputStream in = sheet.toURL().openStream()) {
      file = in.readAllBytes();
    }
    try (PDDocument paper = Loader.loadPDF(file)) {
      return new PDFTextStripper().getText(paper).replaceAll("\\s+", " ");
    }
  }

  @Test
  void aPinchOfColourIsForTheFinerScale() throws IOException {
    String sheet = "/casting/sheet?mix=grey&vessel1=bollard&count1=1&water_c=20&room_c=20&step=1";
    String said = "g on a scale with steps of 1 g is ±";
    String better = "weigh it on Jewel scale, steps of 0.01 g.";
    assertThat(visitor.page(sheet).select(".said-warning").text()).contains(said).contains(better);
    String fine = sheet.replace("step=1", "step=0.01");
    assertThat(visitor.page(fine).select(".said-warning").text()).doesNotContain(better);
    Map<String, String> cast =
        Map.of(
            "mix", "grey", "vessel1", "bollard", "count1", "1", "water_c", "20", "room_c", "20",
            "step", "1");
    assertThat(visitor.post(sheet, "/casting/start", cast).statusCode()).isEqualTo(303);
    assertThat(paper()).contains(said).contains(better);
    walkTo("black-oxide");
    String step = visitor.page("/casting/" + running().id()).select("section:has(#step)").text();
    assertThat(step).contains(said).contains(better);
  }

  @Test
  void aLittleScentIsForTheFinerScale() throws IOException {
    scale("kitchen", "Kitchen scale", 2);
    studio.beginPour.run(workshop.act(), new BeginPour.Request("bollard-rain", 1, 0)).made();
    assertThat(paper()).contains("weigh it on Bench scale");
    walkTo("scent-rain");
    assertThat(visitor.page("/pouring/" + running().id()).select("main").text())
        .contains("g on a scale with steps of 2 g is ±3.8 %")
        .contains("weigh it on Bench scale, steps of 1 g.");
  }
}
