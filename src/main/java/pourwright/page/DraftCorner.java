package pourwright.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import pourwright.page.guard.Door;
import pourwright.page.guard.Token;
import pourwright.page.guard.TurnedAway;
import pourwright.work.BooksUnavailable;
import pourwright.work.Draft;
import pourwright.work.KeepDrafts;

/**
 * What is typed into a long form and not kept yet. The page sends it about a second after a key was
 * pressed; the answer, and with it the word 'saved', comes after the commit and never before.
 */
final class DraftCorner implements Corner {
  /** A form names here the draft that goes with it when it is kept, if that is another form's. */
  static final String DRAFT_OF = "draft_of";

  private static final Logger LOG = LoggerFactory.getLogger(DraftCorner.class);
  private static final String DEVICE = "drafts";
  private static final int DEVICE_CHARACTERS = 43;
  private static final int TOO_LARGE = 413;
  private static final int UNREADABLE = 422;
  private static final int KEY_MAX = 200;

  private final Desk desk;

  DraftCorner(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/draft", this::find);
    routes.post("/draft", this::save);
    routes.after(DraftCorner::dropKept);
  }

  /** The draft of a form as it was sent, its clock time beside it; 204 where there is none. */
  private void find(Context http) {
    String form = http.queryParam("form");
    Optional<Draft> draft =
        form == null || !fits(form)
            ? Optional.empty()
            : device(http).flatMap(device -> desk.studio().drafts.find(device, form));
    if (draft.isEmpty()) {
      http.status(HttpStatus.NO_CONTENT);
      return;
    }
    http.header("X-Typed-At", desk.clockTime(draft.get().at()));
    http.contentType("application/json").result(draft.get().typed());
  }

  private void save(Context http) {
    Form sent = Form.of(http);
    String form = sent.typed("draft_form");
    String typed = sent.typed("draft_typed");
    String key = sent.typed("draft_key");
    boolean drop = sent.ticked("draft_drop");
    boolean whole = !typed.isEmpty() && !key.isEmpty() && key.length() <= KEY_MAX;
    if (!fits(form) || !(drop || whole)) {
      throw new TurnedAway(UNREADABLE, "The request could not be read", "Nothing was recorded.");
    }
    if (typed.length() > KeepDrafts.TYPED_MAX) {
      throw new TurnedAway(TOO_LARGE, "That is too large", "Nothing was recorded.");
    }
    if (drop) {
      device(http).ifPresent(device -> desk.studio().drafts.drop(device, form));
      http.status(HttpStatus.NO_CONTENT);
      return;
    }
    String device = device(http).orElseGet(() -> newDevice(http));
    Optional<Instant> saved = desk.studio().drafts.save(device, form, key, typed);
    if (saved.isEmpty()) {
      http.status(HttpStatus.NO_CONTENT);
    } else {
      http.contentType("text/plain; charset=utf-8").result(desk.clockTime(saved.get()));
    }
  }

  /** Addresses of the studio's own forms; where a passphrase is asked nothing is ever kept. */
  private static boolean fits(String form) {
    return form.matches("/[A-Za-z0-9/_.~%+-]{1,199}")
        && !form.startsWith("/sign-in")
        && !form.startsWith("/pair");
  }

  /** The books know a device by what cannot be turned back into its cookie. */
  private static Optional<String> device(Context http) {
    String cookie = Shell.of(http).remembered(http, DEVICE);
    return cookie.length() == DEVICE_CHARACTERS
        ? Optional.of(Token.digest(cookie))
        : Optional.empty();
  }

  private static String newDevice(Context http) {
    String cookie = Token.random();
    Shell.of(http).remember(http, DEVICE, cookie);
    return Token.digest(cookie);
  }

  /** After a form was kept, which is answered by sending the visitor on, its draft goes. */
  private static void dropKept(Context http) {
    boolean kept =
        http.method().name().equals("POST") && http.statusCode() == HttpStatus.SEE_OTHER.getCode();
    if (!kept || !Door.entered(http)) {
      return;
    }
    Optional<String> device = device(http);
    if (device.isEmpty()) {
      return;
    }
    KeepDrafts drafts = Shell.of(http).desk().studio().drafts;
    String other = http.formParam(DRAFT_OF);
    try {
      drafts.drop(device.get(), http.path());
      if (other != null && fits(other)) {
        drafts.drop(device.get(), other);
      }
    } catch (BooksUnavailable e) {
      // the form is kept and says so; a draft of a request that was done is never shown again
      LOG.warn("a draft stays: {}", e.sentence());
    }
  }
}
