package pourwright.page.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pourwright.page.Server;
import pourwright.page.TestStudio;
import pourwright.page.Visitor;

/** Measured figures against their published limits, on the page. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LimitsPageTest {
  private Server server;
  private Visitor visitor;

  @BeforeAll
  void openTheStudio(@TempDir Path folder) {
    server = TestStudio.open(folder);
    visitor = new Visitor(server.port());
  }

  @AfterAll
  void closeTheStudio() {
    server.close();
  }

  private String said(String query) {
    return visitor.page("/press/limits" + query).select(".said").text();
  }

  /** 29 CFR 1910.1053, handbook compliance check value 45. */
  @Test
  void dustIsAveragedOverTheDay() {
    assertThat(said("?dust0=80&hours0=3&dust1=20&hours1=2&dust2=&hours2="))
        .contains("35.0 µg/m³ over eight hours", "action level");
    assertThat(said("?dust0=120&hours0=4&dust1=&hours1=&dust2=&hours2="))
        .contains("60.0 µg/m³", "Over the limit");
    assertThat(visitor.get("/press/limits?dust0=80&hours0=").body())
        .contains("How long was that? Type the hours.");
    assertThat(visitor.get("/press/limits?dust0=8&hours0=20&dust1=8&hours1=20").body())
        .contains("more than a day");
  }

  /** Check values 46 and 33: REACH Annex XVII entry 47, 16 CFR 1500.12. */
  @Test
  void cementAndCoresAreHeldAgainstTheirLimits() {
    assertThat(said("?chromium=2.0")).contains("At or under 2 ppm");
    assertThat(said("?chromium=2.1")).contains("More than 2 ppm");
    assertThat(said("?lead=0.06")).contains("At or under 0.06 %");
    assertThat(said("?lead=0.061")).contains("More than 0.06 %");
    assertThat(visitor.get("/press/limits?lead=much").body()).contains("wrong");
  }

  /** Check value 51: EN 15426:2018, from memory. */
  @Test
  void sootIsJudgedForOneWickOnly() {
    String three = "?soot0=1.0&soot1=1.0&soot2=1.0";
    assertThat(said(three + "&wicks=1&across=80")).contains("at or under 1.0 an hour");
    assertThat(said("?soot0=1.1&soot1=1.1&soot2=1.1&wicks=1&across=80"))
        .contains("over 1.0 an hour");
    assertThat(said(three + "&wicks=3&across=80")).contains("one wick up to 100 mm");
    assertThat(visitor.get("/press/limits?soot0=1&soot1=&soot2=1&wicks=1&across=80").body())
        .contains("mean of three candles");
  }
}
