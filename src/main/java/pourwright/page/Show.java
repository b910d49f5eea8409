package pourwright.page;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import pourwright.page.words.Language;

/** The last line of a handler: show a page, a part of one, a file, or what came of an act. */
public final class Show {
  private static final int REFUSED = 422;

  private Show() {}

  /**
   * Shows a page. The template has the parameters {@code frame} and {@code page} and puts its
   * content into the layout; {@code page} is a record of finished strings.
   */
  public static void page(Context http, String template, Object page) {
    http.html(Shell.of(http).render(http, template, page));
  }

  /** Shows a part that takes its place within the page that asked for it. */
  public static void part(Context http, String template, Object page) {
    http.html(Shell.of(http).renderPart(http, template, page));
  }

  /** Shows a form again with what was entered and what is wrong with it: status 422. */
  public static void again(Context http, String template, Object page) {
    http.status(REFUSED);
    page(http, template, page);
  }

  /** After an act that was done: goes to a page (303) that says so at its head. */
  public static void done(Context http, Said said, String path) {
    Shell.of(http).say(http, said);
    http.redirect(path, HttpStatus.SEE_OTHER);
  }

  /** Sends a file to keep, such as an export. */
  public static void file(Context http, byte[] content, String type, String name) {
    http.header("Content-Disposition", disposition("attachment", name));
    http.contentType(type).result(content);
  }

  /** Sends a file to look at, such as a PDF. */
  public static void inline(Context http, byte[] content, String type, String name) {
    http.header("Content-Disposition", disposition("inline", name));
    http.contentType(type).result(content);
  }

  private static String disposition(String kind, String name) {
    String plain = name.replaceAll("[^A-Za-z0-9._-]", "_");
    StringBuilder coded = new StringBuilder();
    for (byte b : name.getBytes(StandardCharsets.UTF_8)) {
      char c = (char) (b & 0xff);
      boolean asIs = c < 128 && (Character.isLetterOrDigit(c) || "._-".indexOf(c) >= 0);
      coded.append(asIs ? String.valueOf(c) : String.format(Locale.ROOT, "%%%02X", (int) c));
    }
    return kind + "; filename=\"" + plain + "\"; filename*=UTF-8''" + coded;
  }

  /** Asks who works at this device, and then does what was asked for: status 422, nothing done. */
  public static void who(Context http, Form form) {
    again(http, "desk/who.jte", WhoPage.of(form, http.path(), http.formParamMap()));
  }

  /** Who works at this device, by initials, or an empty string when nobody said. */
  public static String initials(Context http) {
    return Shell.of(http).remembered(http, "hand");
  }

  /** Remembers who works at this device; an empty string forgets. */
  public static void rememberInitials(Context http, String initials) {
    Shell shell = Shell.of(http);
    shell.remember(http, "hand", initials);
    if (Initials.fit(initials)) {
      List<String> before = Initials.read(shell.remembered(http, "hands"));
      shell.remember(http, "hands", Initials.with(initials, before));
    }
  }

  /** The language in which this device reads the pages. */
  public static Language language(Context http) {
    return Shell.of(http).language(http);
  }

  /** Remembers in which language this device reads the pages. */
  public static void rememberLanguage(Context http, Language language) {
    Shell.of(http).remember(http, "language", language.tag());
  }
}
