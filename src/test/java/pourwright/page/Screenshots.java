package pourwright.page;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Takes the pictures of the guide: each place and each page of the casting half at two widths, in
 * light and in dark, and a vessel's way through the casting bench on a phone.
 */
public final class Screenshots extends BrowserTest {
  private static final int SETTLE_MS = 300;
  private static final String SHEET =
      "/casting/sheet?mix=grey&vessel1=bollard&count1=4&water_c=18&room_c=20&step=1";

  /** The address of a running studio, the folder for the pictures, and more paths if wanted. */
  public static void main(String[] words) {
    Map<String, String> pages = new LinkedHashMap<>();
    for (String place :
        List.of("orders", "board", "casting", "pouring", "shelf", "stockroom", "slate", "press")) {
      pages.put(place, "/" + place);
    }
    pages.put("now", "/");
    // the casting half, page by page
    pages.put("vessel", "/board/vessel/bollard");
    pages.put("vessel-edit", "/board/vessel/bollard/edit");
    pages.put("vessel-beside", "/board/vessel/bollard/beside");
    pages.put("silicone", "/board/silicone");
    pages.put("sheet", SHEET);
    pages.put("molds", "/casting/molds");
    pages.put("defects", "/casting/defects");
    pages.put("dry", "/casting/pieces/Dry");
    pages.put("rest", "/casting/rest?mix=grey&left_g=420&which=all");
    pages.put("absorption", "/casting/absorption");
    for (int i = 2; i < words.length; i++) {
      pages.put(words[i].replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", ""), words[i]);
    }
    Screenshots camera = new Screenshots();
    for (Window window : List.of(Window.LAPTOP, Window.PHONE)) {
      for (Window look : List.of(window, window.dark())) {
        Page page = camera.visit(words[0], "/", look);
        pages.forEach((name, path) -> camera.shoot(page, words, look, name, path));
        camera.closeWindows();
      }
    }
    Page phone = camera.visit(words[0], "/", Window.PHONE);
    new WalkPictures(phone, words[0], Path.of(words[1]), Window.PHONE).take();
    System.exit(0);
  }

  private void shoot(Page page, String[] words, Window look, String name, String path) {
    page.navigate(words[0] + path);
    page.waitForTimeout(SETTLE_MS);
    String scheme = look.scheme().name().toLowerCase(java.util.Locale.ROOT);
    Path file = Path.of(words[1], name + "-" + look.width() + "-" + scheme + ".png");
    page.screenshot(new Page.ScreenshotOptions().setPath(file));
  }
}
