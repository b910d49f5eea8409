package pourwright.page.board;

import static java.util.Objects.requireNonNull;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.card.MixCard;
import pourwright.card.Vessel;
import pourwright.page.OpenStudio;
import pourwright.page.Visitor;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;

class DrawingBoardTest {
  private OpenStudio open;
  private Visitor visitor;

  @BeforeEach
  void openTheStudio(@TempDir Path folder) {
    open = new OpenStudio(folder);
    visitor = open.visitor();
  }

  @AfterEach
  void closeTheStudio() {
    open.close();
  }

  private static Map<String, String> cup() {
    Map<String, String> cup = new LinkedHashMap<>();
    cup.put("name", "Harbour cup");
    cup.put("outer_length", "90 mm");
    cup.put("outer_height", "100");
    cup.put("cavity_length", "74");
    cup.put("cavity_height", "90");
    cup.put("by", "AB");
    return cup;
  }

  private CardVersion<Vessel> current() {
    return open.studio.look(b -> b.cards().current(Drawers.VESSEL, "harbour-cup")).orElseThrow();
  }

  @Test
  void aVesselIsDrawnFromTwoMeasuresAndAHeight() {
    HttpResponse<String> saved = visitor.post("/board/vessel/new", "/board/vessel/new", cup());
    assertThat(saved.statusCode()).as(saved.body()).isEqualTo(303);
    Document page = visitor.page("/board/vessel/harbour-cup");
    assertThat(page.select("svg")).hasSize(2);
    assertThat(page.text()).contains("249.1 ml").contains("387.1 ml").contains("Thinnest wall");
    assertThat(page.text()).contains("worked out").contains("becomes ±0.5 %");
    assertThat(visitor.page("/board").text()).contains("Harbour cup");
  }

  @Test
  void weighingItWithWaterBeatsTheDrawing() {
    visitor.post("/board/vessel/new", "/board/vessel/new", cup());
    String path = "/board/vessel/harbour-cup/weigh";
    HttpResponse<String> saved =
        visitor.post(
            path, path, Map.of("empty_g", "520", "full_g", "905", "water_c", "20", "by", "AB"));
    assertThat(saved.statusCode()).as(saved.body()).isEqualTo(303);
    assertThat(current().body().holdsMl().value()).isBetween(386.0, 386.2);
    assertThat(visitor.page("/board/vessel/harbour-cup").text()).contains("measured here");
  }

  @Test
  void waterAndDrawingThatDisagreeAreShownWithTheLikeliestCause() {
    visitor.post("/board/vessel/new", "/board/vessel/new", cup());
    String path = "/board/vessel/harbour-cup/weigh";
    visitor.post(
        path, path, Map.of("empty_g", "520", "full_g", "720", "water_c", "20", "by", "AB"));
    assertThat(visitor.page("/board/vessel/harbour-cup").text())
        .contains("The drawing says")
        .contains("Likeliest");
  }

  @Test
  void whatCannotBeDrawnIsRefusedBesideItsField() {
    Map<String, String> deep = cup();
    deep.put("cavity_height", "120");
    HttpResponse<String> refused = visitor.post("/board/vessel/new", "/board/vessel/new", deep);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("leaves no base");
    Map<String, String> vague = cup();
    vague.put("outer_length", "3,000");
    HttpResponse<String> unclear = visitor.post("/board/vessel/new", "/board/vessel/new", vague);
    assertThat(unclear.body()).contains("may mean 3.000 or 3000");
  }

  @Test
  void aDrawnPathIsRefusedWithThePlaceAndKeptWhenItIsRight() {
    Map<String, String> drawn = cup();
    drawn.put("outer_form", "svg_path");
    drawn.put("outer_path", "M20 100A80 80 0 0 1 180 100B80 80 0 0 1 20 100Z");
    drawn.put("outer_mm_per_unit", "0.5625");
    HttpResponse<String> refused = visitor.post("/board/vessel/new", "/board/vessel/new", drawn);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("at character 28: 'B' is no path command");
    drawn.put("outer_path", "M20 100A80 80 0 0 1 180 100A80 80 0 0 1 20 100Z");
    HttpResponse<String> saved = visitor.post("/board/vessel/new", "/board/vessel/new", drawn);
    assertThat(saved.statusCode()).as(saved.body()).isEqualTo(303);
    assertThat(visitor.page("/board/vessel/harbour-cup").text()).contains("249.1 ml");
    Document edit = visitor.page("/board/vessel/harbour-cup/edit");
    assertThat(edit.select("#outer_path").text()).startsWith("M20 100A80");
    assertThat(edit.select("#outer_mm_per_unit").val()).isEqualTo("0.5625");
  }

  @Test
  void ribsTwistAndProfileAreDrawnAndComeBackInTheForm() {
    Map<String, String> fluted = cup();
    fluted.put("outer_ribs", "24");
    fluted.put("outer_rib_depth", "3");
    fluted.put("outer_twist", "45");
    fluted.put("cavity_profile", "0 0.9\n30 1\n90 1.05");
    HttpResponse<String> saved = visitor.post("/board/vessel/new", "/board/vessel/new", fluted);
    assertThat(saved.statusCode()).as(saved.body()).isEqualTo(303);
    assertThat(current().body().cavity().solid().kneesMm()).containsExactly(0.0, 30.0, 90.0);
    assertThat(current().body().outer().solid().twistRadians())
        .isCloseTo(Math.PI / 4, org.assertj.core.api.Assertions.within(1e-12));
    Document edit = visitor.page("/board/vessel/harbour-cup/edit");
    assertThat(edit.select("#outer_ribs").val()).isEqualTo("24");
    assertThat(edit.select("#cavity_profile").text().split("\\R")).contains("30 1");
    fluted.put("cavity_profile", "0 0.9\n30 1\n80 1.05");
    HttpResponse<String> wrong = visitor.post("/board/vessel/new", "/board/vessel/new", fluted);
    assertThat(wrong.body()).contains("the profile ends at 80.0 mm and the height is 90.0 mm");
    fluted.put("cavity_profile", "0 0.9\n30 1\n90 1.05");
    fluted.put("outer_ribs", "2");
    assertThat(visitor.post("/board/vessel/new", "/board/vessel/new", fluted).statusCode())
        .isEqualTo(422);
  }

  /** A stack of a cylinder and a frustum: πr²h and πh/3(R²+Rr+r²), elementary geometry. */
  @Test
  void aStackOfUnlikeShapesIsDrawnAndComesBackInTheForm() {
    Map<String, String> stacked = cup();
    stacked.put("outer_stack", "40 round 90\n70 polygon 8 92\n100 round 100");
    stacked.put("cavity_stack", "30 round 74\n90 round 80");
    HttpResponse<String> saved = visitor.post("/board/vessel/new", "/board/vessel/new", stacked);
    assertThat(saved.statusCode()).as(saved.body()).isEqualTo(303);
    assertThat(current().body().outer().solid().kneesMm()).containsExactly(0.0, 40.0, 70.0, 100.0);
    double cavity = Math.PI * 37 * 37 * 30 + Math.PI * 60 / 3 * (40 * 40 + 40 * 37 + 37 * 37);
    assertThat(current().body().cavity().solid().volumeMl())
        .isCloseTo(cavity / 1000, org.assertj.core.api.Assertions.within(1e-6));
    Document edit = visitor.page("/board/vessel/harbour-cup/edit");
    assertThat(edit.select("#outer_stack").text().split("\\R")).contains("70 polygon 8 92 0");
    stacked.put("outer_stack", "40 round 90\n70 blob 92\n100 round 100");
    HttpResponse<String> wrong = visitor.post("/board/vessel/new", "/board/vessel/new", stacked);
    assertThat(wrong.statusCode()).isEqualTo(422);
    assertThat(wrong.body()).contains("line 2 of the stack cannot be read").contains("70 blob 92");
    stacked.put("outer_stack", "40 round 90\n80 round 100");
    assertThat(visitor.post("/board/vessel/new", "/board/vessel/new", stacked).body())
        .contains("the stack ends at 80.0 mm and the height is 100.0 mm");
  }

  @Test
  void twoWhoEditTheSameVesselSeeBothAndNothingIsOverwritten() {
    visitor.post("/board/vessel/new", "/board/vessel/new", cup());
    String path = "/board/vessel/harbour-cup/edit";
    Map<String, String> hers = cup();
    hers.put("outer_length", "92");
    hers.put("based_on", "1");
    assertThat(visitor.post(path, path, hers).statusCode()).isEqualTo(303);
    Map<String, String> his = cup();
    his.put("outer_length", "96");
    his.put("based_on", "1");
    HttpResponse<String> conflict = visitor.post(path, path, his);
    assertThat(conflict.statusCode()).isEqualTo(422);
    assertThat(conflict.body()).contains("newer version").contains("92 mm").contains("96");
    assertThat(current().body().outer().bottom().sizes().get("diameter_mm")).isEqualTo(92.0);
  }

  @Test
  void theInventedStudiosDesignsAreAllDrawn() {
    open.withDemoCards();
    Document board = visitor.page("/board");
    assertThat(board.select(".card svg").size()).isGreaterThanOrEqualTo(8);
    for (String link : board.select(".card h3 a").eachAttr("href")) {
      HttpResponse<String> page = visitor.get(link);
      assertThat(page.statusCode()).as(link).isEqualTo(200);
      assertThat(page.body()).as(link).doesNotContain("NaN");
    }
    for (String link : board.select(".card li a").eachAttr("href")) {
      assertThat(visitor.get(link).statusCode()).as(link).isEqualTo(200);
    }
  }

  /** How a mix is measured is not who wrote it down: two fields of one name would be mixed up. */
  @Test
  void aMixByMassIsWrittenDownByWhoeverGaveHerInitials() {
    open.withDemoCards();
    String path = "/board/mix/grey/edit";
    Document page = visitor.page(path);
    assertThat(page.select("[name=by]")).hasSize(1);
    Map<String, String> fields = new LinkedHashMap<>();
    ((FormElement) requireNonNull(page.selectFirst("main form[action=" + path + "]")))
        .formData()
        .forEach(field -> fields.put(field.key(), field.value()));
    fields.put("ratio_by", "VOLUME");
    fields.put("by", "AB");
    HttpResponse<String> saved = visitor.post(path, path, fields);
    assertThat(saved.statusCode()).as(saved.body()).isEqualTo(303);
    CardVersion<MixCard> mix =
        open.studio.look(b -> b.cards().current(Drawers.MIX, "grey")).orElseThrow();
    assertThat(mix.by()).isEqualTo("AB");
    assertThat(mix.body().ratio().by()).isEqualTo(MixCard.By.VOLUME);
  }

  @ParameterizedTest
  @ValueSource(strings = {"vessel", "mold", "mix", "finish", "pour", "candle"})
  void noFieldOfACardHasTheNameOfAnother(String kind) {
    open.withDemoCards();
    assertThat(visitor.page("/board/" + kind + "/new").select("[id]").eachAttr("id"))
        .hasSizeGreaterThan(5)
        .doesNotHaveDuplicates();
  }
}
