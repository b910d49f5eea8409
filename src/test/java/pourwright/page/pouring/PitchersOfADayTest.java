package pourwright.page.pouring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import pourwright.batch.Batch;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.work.PourWalk;

/** A day's candles in melts and pitchers, and a pitcher begun as one pour. */
class PitchersOfADayTest extends PouringBench {
  @Test
  void aDaysCandlesAreGroupedIntoMeltsAndPitchersAndThePitchersAreKept() {
    Map<String, String> day = new LinkedHashMap<>();
    day.put("n-bollard-rain", "3");
    day.put("n-cog-hearth", "2");
    day.put("n-ferry-fig", "1");
    day.put("pitchers", "jug; 1200; 8");
    day.put("melter", "4000");
    day.put("by", "MB");
    String page = visitor.post("/pouring/day", "/pouring/day", day).body();
    assertThat(page)
        .contains("3 pitchers (the fewest), 2 melts (the fewest), 3 times washing up (the fewest)")
        .contains("3 × Bollard, Rain on slate")
        .contains("or to waste");
    assertThat(visitor.page("/pouring/day").select("#pitchers").text()).contains("jug; 1200; 8");
    day.put("pitchers", "cup; 100; 5");
    var refused = visitor.post("/pouring/day", "/pouring/day", day);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("no pitcher holds that");
    day.put("pitchers", "cup");
    assertThat(visitor.post("/pouring/day", "/pouring/day", day).body())
        .contains("grams that stay in it");
  }

  /** By hand: the pitcher's wax and fragrance are the page's, whatever the two vessels hold. */
  @Test
  void aProposedPitcherBeginsAsOnePourOfAllItsCandles() throws IOException {
    Map<String, String> day = new LinkedHashMap<>();
    day.put("n-bollard-rain", "2");
    day.put("n-ferry-rain", "1");
    day.put("pitchers", "jug; 2000; 8");
    day.put("melter", "4000");
    day.put("by", "MB");
    var grouped = Jsoup.parse(visitor.post("/pouring/day", "/pouring/day", day).body());
    var form = grouped.select("form[action=/pouring/day/begin]");
    String of = form.select("input[name=of]").attr("value");
    assertThat(of).contains("bollard-rain:2").contains("ferry-rain:1");
    String pour = beginPitcher(of).headers().firstValue("Location").orElseThrow();
    assertThat(visitor.page(pour).select("h1").text())
        .contains("2 × Bollard")
        .contains("1 × Ferry");
    assertThat(visitor.page("/pouring/day").select("input[name=n-bollard-rain]").attr("value"))
        .isEmpty();
    long id = Long.parseLong(pour.replaceAll(".*/", ""));
    Batch batch = open.studio.look(b -> b.batches().batch(id)).orElseThrow();
    double planned =
        batch.plan().steps().stream()
            .filter(s -> s.key().equals(PourWalk.MELT) || s.key().equals(PourWalk.SCENT))
            .flatMap(s -> s.amounts().stream())
            .filter(a -> !a.material().contains("dye"))
            .mapToDouble(a -> a.amount().inUsualUnit())
            .sum();
    String title = grouped.select("li strong").text();
    Matcher grams = Pattern.compile("(\\d+) g wax, (\\d+) g fragrance").matcher(title);
    assertThat(grams.find()).isTrue();
    double shown = Double.parseDouble(grams.group(1)) + Double.parseDouble(grams.group(2));
    assertThat(planned).isCloseTo(shown, within(1.1));
    assertThat(paper(id)).contains("g into each of 1 × Ferry").contains("beside the wick");
    waxTight("bollard");
    waxTight("ferry");
    for (int i = 0; i < 9; i++) {
      step(pour, Map.of());
    }
    var finish = visitor.page(pour);
    assertThat(finish.select("#pieces legend").text()).contains("Bollard");
    assertThat(finish.select("#piece1s legend").text()).contains("Ferry");
    Map<String, String> ticks = new LinkedHashMap<>();
    ticks.put("piece", finish.select("input[name=piece]").attr("value"));
    ticks.put("piece1", finish.select("input[name=piece1]").attr("value"));
    ticks.put("by", "MB");
    assertThat(visitor.post(pour, pour + "/finish", ticks).statusCode()).isEqualTo(303);
    assertThat(open.studio.<List<Piece>>look(b -> b.pieces().ofBatch(id)))
        .extracting(p -> PieceState.candleOf(p.state()).orElse(""))
        .containsExactlyInAnyOrder("bollard-rain", "ferry-rain");
  }

  @Test
  void candlesOfDifferentMeltsAreNotBegunFromOnePitcher() {
    beginPitcher("bollard-rain:1,cog-hearth:1");
    assertThat(visitor.page("/pouring/day").text()).contains("do not share a wax, a scent");
    assertThat(open.studio.<List<Batch>>look(b -> b.batches().running())).isEmpty();
  }

  /** The words of a pour's sheet on paper, in one line. */
  private String paper(long pour) throws IOException {
    URI sheet = URI.create(open.base() + "/sheet/" + pour + "/print");
    try (InputStream in = sheet.toURL().openStream();
        PDDocument pdf = Loader.loadPDF(in.readAllBytes())) {
      return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
    }
  }

  private java.net.http.HttpResponse<String> beginPitcher(String of) {
    Map<String, String> begin = new LinkedHashMap<>();
    visitor
        .page("/pouring/day")
        .select("form[action=/pouring/day] input[type=hidden]")
        .forEach(i -> begin.put(i.attr("name"), i.attr("value")));
    begin.putAll(Map.of("of", of, "residue", "8", "top_up", "0", "by", "MB"));
    return visitor.post("/pouring/day/begin", begin);
  }
}
