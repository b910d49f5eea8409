package pourwright.page.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.page.Desk;
import pourwright.page.Server;
import pourwright.page.ServerSettings;
import pourwright.page.TestStudio;
import pourwright.page.Visitor;
import pourwright.plan.ForwardRule;
import pourwright.work.PlanSettings;

/** The post's days and the shed are written down on a page and used from then on. */
class HabitsDeskTest {
  private static final String PATH = "/plan/habits";

  @Test
  void whatIsTypedIsKeptAndWhatCannotBeIsNamedWithNothingLost(@TempDir Path folder) {
    Desk desk = TestStudio.desk(folder);
    PlanCorner corner = new PlanCorner(desk, new ForwardRule(), Duration.ofSeconds(1));
    Server server =
        TestStudio.open(
            TestStudio.site(desk).and(corner), ServerSettings.onAnyPort("Test studio"), folder);
    try {
      Visitor visitor = new Visitor(server.port());
      String wrong =
          visitor
              .post(
                  PATH,
                  PATH,
                  Map.of(
                      "week", "mon", "hot", "soon", "last", "", "shed", "-5", "spare", "many",
                      "tests", "lots", "by", "AB"))
              .body();
      assertThat(wrong)
          .contains(
              "is no day: such as 2026-07-14",
              "between 2 and 35",
              "between 0 and 100",
              "whole number between 0 and 12",
              "value=\"soon\"");
      assertThat(desk.studio().look(PlanSettings::of).week()).isEmpty();
      visitor.post(
          PATH,
          PATH,
          Map.of(
              "week",
              "mon fri",
              "hot",
              "2026-07-14",
              "last",
              "",
              "shed",
              "8,5",
              "spare",
              "12,5",
              "tests",
              "3",
              "by",
              "AB"));
      assertThat(desk.studio().look(PlanSettings::of))
          .isEqualTo(new PlanSettings("mon fri", "2026-07-14", "", "8.5", "12.5", "3"));
      assertThat(visitor.get(PATH).body()).contains("value=\"mon fri\"", "value=\"8.5\"");
    } finally {
      server.close();
    }
  }
}
