package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.work.RunBurnTest;
import pourwright.work.Studio;

/**
 * While something burns STOP and its four lines stand on every page, and six at once are enough.
 */
class WhileLitTest {
  private static final List<String> LINES =
      List.of("Heat off", "Lid or snuffer", "Never water", "Get out and call");
  private static final List<String> PAGES =
      List.of("/", "/shelf", "/orders", "/stockroom", "/slate", "/press", "/board", "/help");

  @Test
  void stopStandsOnEveryPageAndASeventhIsNotLit(@TempDir Path folder) {
    Workshop workshop = new Workshop(folder);
    Studio studio = workshop.desk.studio();
    List<RunBurnTest.NewSample> samples = new ArrayList<>();
    for (int i = 1; i <= 7; i++) {
      samples.add(new RunBurnTest.NewSample("S" + i, null));
    }
    long test =
        studio
            .burnTests
            .begin(
                workshop.act(),
                new RunBurnTest.Request("bollard-rain", 1, "house", "seven at once", samples))
            .made()
            .id();
    List<Long> ids = studio.look(b -> b.burns().samples(test).stream().map(s -> s.id()).toList());
    Server server = TestStudio.open(workshop.desk, folder);
    try {
      Visitor visitor = new Visitor(server.port());
      for (String page : PAGES) {
        assertThat(visitor.get(page).body()).as(page).doesNotContain("class=\"stop-lines\"");
      }
      List<Long> lit = new ArrayList<>();
      for (long sample : ids.subList(0, 6)) {
        lit.add(studio.burnTests.light(workshop.act(), test, sample).made().id());
      }
      for (String page : PAGES) {
        assertThat(visitor.get(page).body()).as(page).contains("href=\"/stop\"").contains(LINES);
      }
      String path = "/shelf/test/" + test;
      String action = path + "/light/" + ids.get(6);
      Map<String, String> form = new LinkedHashMap<>();
      for (String box : List.of("tray", "extinguisher", "alarm", "trimmed", "stays")) {
        form.put(box, "yes");
      }
      form.put("stays-" + ids.get(6), "Mo");
      form.put("mass-" + ids.get(6), "400");
      form.put("trim-" + ids.get(6), "6");
      form.put("by", "MB");
      assertThat(visitor.post(path, action, form).body())
          .contains("6 candles burn; at most 6 (house).");
      assertThat(studio.<Integer>look(b -> b.burns().burning().size())).isEqualTo(6);
      studio.burnTests.putOut(workshop.act(), lit.get(0), "end of its cycle").made();
      visitor.post(path, action, form);
      assertThat(studio.<Integer>look(b -> b.burns().burning().size())).isEqualTo(6);
      assertThat(studio.<Integer>look(b -> b.burns().cycles(ids.get(6)).size())).isEqualTo(1);
    } finally {
      server.close();
    }
  }
}
