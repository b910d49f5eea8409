package pourwright.page;

import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;

/**
 * A thumb at human pace on a phone that slept: 400 ms a tap, 120 ms a digit. It counts, it does not
 * wait: what the machine of the test needs on top says nothing about the maker's evening.
 */
public final class Thumb {
  private static final int TAP_MS = 400;
  private static final int DIGIT_MS = 120;

  private final Page page;
  private int taps;
  private int digits;

  private Thumb(Page page) {
    this.page = page;
  }

  /** A page that the browser froze and that is taken up again. */
  public static Thumb on(Page page) {
    CDPSession browser = page.context().newCDPSession(page);
    for (String state : new String[] {"frozen", "active"}) {
      com.google.gson.JsonObject how = new com.google.gson.JsonObject();
      how.addProperty("state", state);
      browser.send("Page.setWebLifecycleState", how);
    }
    return new Thumb(page);
  }

  /** One tap on something that can be seen. */
  public Thumb tap(String selector) {
    return tap(page.locator(selector).first());
  }

  /** One tap on something that can be seen. */
  public Thumb tap(Locator what) {
    taps++;
    what.click();
    return this;
  }

  /** Digits on our own pad, which the tap on the field has opened. */
  public Thumb digits(String number) {
    for (char key : number.toCharArray()) {
      digits++;
      page.locator(".pad button:text-is('" + key + "')").click();
    }
    return this;
  }

  /** Characters on the phone's own keys. */
  public Thumb type(String text) {
    digits += text.length();
    page.keyboard().type(text);
    return this;
  }

  /** Writes into a field in place of what stands there: one tap and its characters. */
  public Thumb write(String selector, String text) {
    taps++;
    digits += text.length();
    page.locator(selector).first().fill(text);
    return this;
  }

  /** Chooses from a list of the phone: one tap opens it, one chooses. */
  public Thumb choose(String selector, String value) {
    taps += 2;
    page.selectOption(selector, value);
    return this;
  }

  public int taps() {
    return taps;
  }

  public int milliseconds() {
    return taps * TAP_MS + digits * DIGIT_MS;
  }
}
