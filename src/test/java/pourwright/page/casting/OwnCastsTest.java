package pourwright.page.casting;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.page.OpenStudio;
import pourwright.page.Visitor;
import pourwright.work.Drawers;
import pourwright.work.OwnCasts;
import pourwright.work.SlateBook;
import pourwright.work.Subject;

/** What her own casts and molds say at the bench: fresh density, yield, water, molds one by one. */
class OwnCastsTest {
  private static final String SHEET =
      "/casting/sheet?mix=grey&vessel1=bollard&count1=1&water_c=20&room_c=20&step=1";
  private static final String MOLDS = "/casting/molds";

  private OpenStudio open;
  private Visitor visitor;

  @BeforeEach
  void openTheStudio(@TempDir Path folder) {
    open = new OpenStudio(folder).withDemoCards();
    visitor = open.visitor();
  }

  @AfterEach
  void closeTheStudio() {
    open.close();
  }

  /** Walks a cast to its end with one mold, and gives its path. */
  private String cast(int mold, Map<String, String> atTheEnd) {
    String cast =
        visitor
            .post(SHEET, "/casting/start", Map.of("by", "AB"))
            .headers()
            .firstValue("Location")
            .orElseThrow();
    for (int i = 0; i < 20; i++) {
      Document page = visitor.page(cast);
      if (page.selectFirst("form[action=" + cast + "/step]") == null) {
        break;
      }
      Map<String, String> fields = new LinkedHashMap<>(Map.of("by", "AB"));
      if (!page.select("input[name=mold]").isEmpty()) {
        fields.put("mold", "bollard-mold/" + mold);
      }
      if (!page.select("#cup_g").isEmpty()) {
        fields.putAll(atTheEnd);
      }
      HttpResponse<String> done = visitor.post(cast, cast + "/step", fields);
      assertThat(done.statusCode()).as(done.body()).isEqualTo(303);
    }
    assertThat(visitor.page(cast).text()).contains("Water in all:").contains("of the powder.");
    visitor.post(cast, cast + "/demold", Map.of("by", "AB", "judged", "right"));
    return cast;
  }

  @Test
  void afterThreeCastsTheSheetIsOfHerOwnHands() {
    assertThat(visitor.page(SHEET).text()).doesNotContain("Your fresh density");
    Map<String, String> cup = Map.of("cup_g", "205", "cup_ml", "100", "left_g", "20");
    String cast = "";
    for (int i = 1; i <= 3; i++) {
      cast = cast(i, cup);
    }
    String sheet = visitor.page(SHEET).text();
    assertThat(sheet).contains("Your fresh density 2.05 g/ml").contains("Your yield");
    long id = Long.parseLong(cast.substring(cast.lastIndexOf('/') + 1));
    Subject subject = Subject.of(Subject.Kind.BATCH, id);
    double parts =
        open.studio.look(b -> b.readings().of(subject)).stream()
            .filter(r -> r.quantity().equals("water_g"))
            .mapToDouble(r -> r.value())
            .sum();
    double sum =
        open.studio.look(b -> b.readings().newest(subject, OwnCasts.WATER)).orElseThrow().value();
    assertThat(sum).isEqualTo(parts).isGreaterThan(10);
  }

  @Test
  void aCupThatCannotBeIsRefusedAndWhatWasTypedIsKept() {
    String cast =
        visitor
            .post(SHEET, "/casting/start", Map.of("by", "AB"))
            .headers()
            .firstValue("Location")
            .orElseThrow();
    for (int i = 0; i < 20 && visitor.page(cast).select("#cup_g").isEmpty(); i++) {
      visitor.post(cast, cast + "/step", Map.of("by", "AB"));
    }
    HttpResponse<String> refused =
        visitor.post(cast, cast + "/step", Map.of("by", "AB", "cup_g", "2050", "cup_ml", "100"));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("No fresh mix weighs that").contains("2050");
  }

  @Test
  void moldsAreCountedOneByOneRetiredAndReplaced() {
    int before = molds();
    cast(2, Map.of());
    cast(2, Map.of());
    cast(1, Map.of());
    assertThat(visitor.page(MOLDS).text()).contains("#1: 1, #2: 2, #3: 0");
    String worn = "bollard-mold/2";
    HttpResponse<String> retired =
        visitor.post(MOLDS, MOLDS + "/retire", Map.of("mold", worn, "casts", "", "by", "AB"));
    assertThat(retired.statusCode()).as(retired.body()).isEqualTo(303);
    assertThat(molds()).isEqualTo(before - 1);
    assertThat(visitor.page(MOLDS).text()).contains("#1: 1, #3: 0");
    visitor.post(MOLDS, MOLDS + "/spare", Map.of("kind", "bollard-mold", "by", "AB"));
    assertThat(molds()).isEqualTo(before);
    assertThat(visitor.page(MOLDS).text()).contains("#" + (before + 1) + ": 0");
  }

  /** 48 casts by the card, one piece each: 24 spread over 48 is 0.50 a piece. */
  @Test
  void whatAMoldCostIsSpreadOverItsLifeAndStandsOnTheSlate() {
    int life =
        open.studio
            .look(b -> b.cards().current(Drawers.MOLD, "bollard-mold"))
            .orElseThrow()
            .body()
            .lifeCasts();
    Map<String, String> cost =
        Map.of("kind", "bollard-mold", "cost", String.valueOf(life / 2), "by", "AB");
    assertThat(visitor.post(MOLDS, MOLDS + "/cost", cost).statusCode()).isEqualTo(303);
    assertThat(visitor.page(MOLDS).text()).contains("0.50 a piece");
    double asked = open.studio.look(b -> new SlateBook(b).moldCost("bollard-mold"));
    assertThat(asked).isEqualTo(life / 2);
    HttpResponse<String> wrong =
        visitor.post(
            MOLDS, MOLDS + "/cost", Map.of("kind", "bollard-mold", "cost", "-1", "by", "AB"));
    assertThat(wrong.statusCode()).isEqualTo(422);
  }

  private int molds() {
    return open.studio
        .look(b -> b.cards().current(Drawers.MOLD, "bollard-mold"))
        .orElseThrow()
        .body()
        .count();
  }
}
