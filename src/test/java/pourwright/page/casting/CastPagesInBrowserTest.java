package pourwright.page.casting;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.batch.Batch;
import pourwright.page.BrowserTest;
import pourwright.page.OpenStudio;
import pourwright.work.CastSheet;
import pourwright.work.CastWalk;
import pourwright.work.RecordStep;

/** The pages beside the walk, at 390 pixels: they fit, and a screen reader finds its way. */
class CastPagesInBrowserTest extends BrowserTest {
  @Test
  void theyFitAPhoneAndAreAccessible(@TempDir Path folder) {
    try (OpenStudio open = new OpenStudio(folder).withDemoCards()) {
      CastSheet.Ask ask =
          new CastSheet.Ask("grey", List.of(new CastSheet.Fill("bollard", 1)), 20, 20, 1);
      CastSheet sheet = open.studio.look(b -> CastWalk.sheet(b, ask));
      Batch cast = open.studio.startCast.run(open.act(), sheet.plan()).made();
      open.studio.recordStep.run(
          open.act(), new RecordStep.Request(cast.id(), CastWalk.COVER, List.of(), 21.0));
      Page page = visit(open.base(), "/casting", Window.PHONE);
      for (String path :
          List.of(
              "/casting/" + cast.id(),
              "/casting/defects?defect=CRACK",
              "/casting/molds",
              "/casting/absorption?dry_g=1000&soaked_g=1090&boiled_g=1100&hung_g=500",
              "/board/silicone?box_length=120&box_width=120&box_height=110&vessel=bollard",
              "/board/vessel/bollard/beside?lid=limpet&feet=3&out=40",
              "/casting/rest?mix=grey&left_g=300&which=small",
              "/board/vessel/new",
              "/casting/sheet?mix=grey&vessel1=bollard&count1=9&water_c=20&room_c=28&step=1")) {
        page.navigate(open.base() + path);
        assertThat(axe(page)).as(path).isEmpty();
        Object wide = page.evaluate("document.documentElement.scrollWidth");
        assertThat(((Number) wide).intValue()).as(path).isLessThanOrEqualTo(390);
      }
      assertThat(complaints).isEmpty();
      assertThat(outside).isEmpty();
    }
  }
}
