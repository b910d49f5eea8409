package pourwright.page.board;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.FormElement;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.card.Vessel;
import pourwright.page.OpenStudio;
import pourwright.page.Visitor;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;

/** Goal G11: laptop and phone on one record, in random turns; nothing is overwritten in silence. */
@DisplayName("G11 conflicts")
class TwoHandsTest {
  private static final String EDIT = "/board/vessel/bollard/edit";

  /** One device: the form it has open, and the version that form began from. */
  private static final class Device {
    final Visitor visitor;
    final String name;
    Map<String, String> form = Map.of();

    Device(OpenStudio open, String name) {
      this.visitor = open.visitor();
      this.name = name;
      visitor.post("/", "/hand", Map.of("hand", name));
    }

    void open() {
      form = fields(visitor.page(EDIT));
    }

    private static Map<String, String> fields(Document page) {
      Map<String, String> fields = new LinkedHashMap<>();
      ((FormElement) requireNonNull(page.selectFirst("main form[action=" + EDIT + "]")))
          .formData()
          .forEach(kv -> fields.put(kv.key(), kv.value()));
      return fields;
    }
  }

  private static CardVersion<Vessel> now(OpenStudio open) {
    return open.studio.look(b -> b.cards().current(Drawers.VESSEL, "bollard")).orElseThrow();
  }

  private static int play(Path folder, int turns, long seed) {
    Random random = new Random(seed);
    int conflicts = 0;
    try (OpenStudio open = new OpenStudio(folder).withDemoCards()) {
      Device[] devices = {new Device(open, "LA"), new Device(open, "PH")};
      for (Device device : devices) {
        device.open();
      }
      for (int i = 0; i < turns; i++) {
        Device device = devices[random.nextInt(2)];
        if (random.nextInt(3) == 0) {
          device.open();
          continue;
        }
        CardVersion<Vessel> before = now(open);
        int basedOn = Integer.parseInt(device.form.get("based_on"));
        String mine = "Bollard " + device.name + " " + i;
        Map<String, String> sent = new LinkedHashMap<>(device.form);
        sent.put("name", mine);
        sent.put("request_key", "two-hands-" + seed + "-" + i);
        var answer = device.visitor.post(EDIT, sent);
        CardVersion<Vessel> after = now(open);
        if (basedOn == before.version()) {
          assertThat(answer.statusCode()).isEqualTo(303);
          assertThat(after.version()).isEqualTo(before.version() + 1);
          assertThat(after.body().name()).isEqualTo(mine);
          device.open();
        } else {
          conflicts++;
          assertThat(answer.statusCode()).isEqualTo(422);
          assertThat(after.version()).as("silently overwritten").isEqualTo(before.version());
          assertThat(after.body().name()).isEqualTo(before.body().name());
          Document page = Jsoup.parse(answer.body());
          assertThat(page.select("table").text()).contains(mine, before.body().name());
          device.form = Device.fields(page);
          assertThat(device.form.get("name")).isEqualTo(mine);
        }
      }
      List<CardVersion<Vessel>> all =
          open.studio.look(b -> b.cards().history(Drawers.VESSEL, "bollard"));
      assertThat(all).hasSize(now(open).version());
    }
    return conflicts;
  }

  @Test
  @DisplayName("G11 80 random turns of laptop and phone, none overwritten in silence, both shown")
  void laptopAndPhoneInTurns(@TempDir Path folder) {
    assertThat(play(folder, 80, 11)).isGreaterThan(10);
  }

  @Test
  @Tag("long")
  @DisplayName("G11 500 random turns of laptop and phone, none overwritten in silence, both shown")
  void fiveHundredTurns(@TempDir Path folder) {
    assertThat(play(folder, 700, 12)).isGreaterThan(100);
  }
}
