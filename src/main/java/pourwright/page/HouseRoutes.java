package pourwright.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import pourwright.page.guard.Attempts;
import pourwright.page.guard.Door;
import pourwright.page.guard.OriginRule;
import pourwright.page.guard.Passphrase;
import pourwright.page.guard.Sessions;
import pourwright.page.guard.TurnedAway;
import pourwright.page.words.Language;
import pourwright.work.BooksUnavailable;

/** What belongs to the house and to no place: door, files, health, sign-in, look, errors. */
public final class HouseRoutes {
  private static final Logger LOG = LoggerFactory.getLogger(HouseRoutes.class);

  private static final long OPENING_MS = 300;

  /** 507 Insufficient Storage (RFC 4918) and 503 Service Unavailable (RFC 9110). */
  private static final int DISK_FULL = 507;

  private static final int UNAVAILABLE = 503;

  private final Site site;
  private final Shell shell;
  private final Door door;
  private final Sessions sessions;
  private final Passphrase passphrase;
  private final Attempts attempts = new Attempts();

  HouseRoutes(Site site, Shell shell, Door door, Sessions sessions, Passphrase passphrase) {
    this.site = site;
    this.shell = shell;
    this.door = door;
    this.sessions = sessions;
    this.passphrase = passphrase;
  }

  void addTo(RoutesConfig routes) {
    routes.before(shell::attachTo);
    routes.before(door::before);
    routes.after(door::after);
    routes.get("/static/{name}", shell.files()::serve);
    routes.get("/healthz", http -> http.contentType("text/plain").result("ok"));
    routes.get("/readyz", this::ready);
    routes.get("/sign-in", http -> Show.page(http, "desk/sign-in.jte", Form.blank()));
    routes.post("/sign-in", this::signIn);
    routes.post("/sign-out", this::signOut);
    routes.get("/devices", this::devices);
    routes.post("/devices/end", this::endDevice);
    routes.post("/look", this::look);
    routes.post("/language", this::language);
    routes.post("/own-studio", this::ownStudio);
    routes.get("/help", http -> Show.page(http, "desk/help.jte", HelpPage.of(site.places())));
    routes.exception(TurnedAway.class, this::turnedAway);
    routes.exception(HttpResponseException.class, this::refusedByServer);
    routes.exception(Exception.class, this::broken);
    routes.error(404, this::notFound);
  }

  private void ready(Context http) {
    String trouble = site.ready().get();
    http.status(trouble.isEmpty() ? 200 : 503).contentType("text/plain");
    http.result(trouble.isEmpty() ? "ready" : trouble);
  }

  private void signIn(Context http) throws InterruptedException {
    Form form = Form.of(http);
    String address = http.ip();
    Duration wait = attempts.waitFor(address, site.desk().clock().instant());
    if (!wait.isZero()) {
      http.header("Retry-After", String.valueOf(wait.toSeconds() + 1));
      form.complain("passphrase", "Please wait " + (wait.toSeconds() + 1) + " s and try again.");
      http.status(HttpStatus.TOO_MANY_REQUESTS);
      Show.page(http, "desk/sign-in.jte", form);
    } else if (passphrase.matches(form.value("passphrase"))) {
      attempts.right(address);
      door.signIn(http);
      http.redirect("/", HttpStatus.SEE_OTHER);
    } else {
      attempts.wrong(address, site.desk().clock().instant());
      Show.again(
          http, "desk/sign-in.jte", form.complain("passphrase", "That is not the passphrase."));
    }
  }

  private void signOut(Context http) {
    door.signOut(http);
    http.redirect("/sign-in", HttpStatus.SEE_OTHER);
  }

  private void devices(Context http) {
    Show.page(http, "desk/devices.jte", DevicesPage.of(sessions.all(), site.desk()));
  }

  private void endDevice(Context http) {
    sessions.end(Form.of(http).value("device"));
    Show.done(http, Said.done("That device is signed out."), "/devices");
  }

  /** Begins a studio of her own: this one closes, hers opens at the same address. */
  private void ownStudio(Context http) {
    Runnable start = site.startOwn();
    if (start == null) {
      http.redirect("/", HttpStatus.SEE_OTHER);
      return;
    }
    Show.page(http, "desk/opening.jte", "");
    CompletableFuture.delayedExecutor(OPENING_MS, TimeUnit.MILLISECONDS).execute(start);
  }

  private void look(Context http) {
    Form form = Form.of(http);
    shell.remember(http, "look", new Look(form.value("scheme"), form.value("contrast")).cookie());
    back(http, form);
  }

  private void language(Context http) {
    Form form = Form.of(http);
    Language.tagged(form.value("language")).ifPresent(l -> Show.rememberLanguage(http, l));
    back(http, form);
  }

  private static void back(Context http, Form form) {
    String back = form.value("back");
    boolean own = back.startsWith("/") && !back.startsWith("//") && !back.contains("\\");
    http.redirect(own ? back : "/", HttpStatus.SEE_OTHER);
  }

  /**
   * What the error page shows.
   *
   * @param typed what was sent and can be sent again, as it was typed; empty when nothing can
   */
  public record Trouble(
      int status,
      String headline,
      String detail,
      String requestId,
      String path,
      Map<String, List<String>> typed) {}

  private void turnedAway(TurnedAway away, Context http) {
    show(http, away.status(), away.headline(), away.detail());
  }

  private void refusedByServer(HttpResponseException refused, Context http) {
    int status = refused.getStatus();
    if (status == 413) {
      show(http, status, "That is too large", Door.TOO_LARGE);
    } else if (status == 404) {
      notFound(http);
    } else {
      show(http, status, "The request could not be read", "Nothing was recorded.");
    }
  }

  private void broken(Exception e, Context http) {
    Optional<BooksUnavailable> away = BooksUnavailable.in(e);
    if (away.isPresent()) {
      booksUnavailable(away.get(), http);
      return;
    }
    LOG.error("request {} {} {} failed", Door.requestId(http), http.method(), http.path(), e);
    show(
        http,
        500,
        "Something in the program went wrong",
        "What was recorded before is safe. Load the page again to see whether this last act is"
            + " there; if it happens again, tell whoever looks after the program the number below.");
  }

  /** The disk is full, the database busy or gone: says so and keeps what was typed. */
  private void booksUnavailable(BooksUnavailable away, Context http) {
    LOG.warn("request {}: {}", Door.requestId(http), away.sentence());
    LOG.debug("request {}", Door.requestId(http), away);
    Said said = Said.told(away.sentence(), away.hint());
    Map<String, List<String>> typed = new LinkedHashMap<>();
    if (!OriginRule.looksOnly(http.method().name()) && !http.isMultipart()) {
      typed.putAll(http.formParamMap());
      typed.remove(Door.TOKEN_FIELD);
      typed.remove(Door.KEY_FIELD);
    }
    String detail = said.detail() + safe(said.headline() + said.detail());
    show(http, away.disk() ? DISK_FULL : UNAVAILABLE, said.headline(), detail, typed);
  }

  /** What is safe, where what was told does not say it yet. */
  private static String safe(String told) {
    if (told.contains("is safe") || told.contains("is saved")) {
      return "";
    }
    return told.contains("damaged")
        ? " The backups are safe: nothing was written to them."
        : " Nothing of this was saved; everything saved before is safe.";
  }

  private void notFound(Context http) {
    if (http.attribute("pourwright.trouble") == null) {
      show(http, 404, "There is no such page", "It may have been renamed. Try the places.");
    }
  }

  private void show(Context http, int status, String headline, String detail) {
    show(http, status, headline, detail, Map.of());
  }

  private void show(
      Context http, int status, String headline, String detail, Map<String, List<String>> typed) {
    http.attribute("pourwright.trouble", Boolean.TRUE);
    http.status(status);
    Trouble trouble =
        new Trouble(status, headline, detail, Door.requestId(http), http.path(), typed);
    boolean framed = !Door.visit(http).isEmpty();
    if (framed) {
      Show.page(http, "desk/trouble.jte", trouble);
    } else {
      http.contentType("text/plain; charset=utf-8");
      http.result(String.format(Locale.ROOT, "%s. %s%n", headline, detail));
    }
  }
}
