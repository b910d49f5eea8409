package pourwright.page.guard;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Stands before every request, static files and health included: host, then who it is, then for
 * acts the origin, the form token and the request key.
 */
public final class Door {
  /** The name of the form field that carries the token. */
  public static final String TOKEN_FIELD = "token";

  /** The name of the form field that carries the request key. */
  public static final String KEY_FIELD = "request_key";

  /** Largest body with files, bytes. */
  public static final long UPLOAD_MAX = 50L * 1024 * 1024;

  /** Largest form without files, bytes. */
  public static final long FORM_MAX = 2L * 1024 * 1024;

  /** What is said when either is exceeded. */
  public static final String TOO_LARGE =
      "At most 50 MB of files or 2 MB of writing go in at once. Nothing of it was kept; what was"
          + " recorded before is safe. Go back, make it smaller and do it again.";

  private static final String TOKEN_HEADER = "X-Pourwright-Token";
  private static final String VISIT = "pourwright.visit";
  private static final String ENTERED = "pourwright.entered";
  private static final String REQUEST_ID = "pourwright.request";
  private static final String CLAIMED = "pourwright.claimed";
  private static final int REQUEST_ID_CHARACTERS = 8;
  private static final int COOKIE_AGE_S = 30 * 24 * 3600;
  private static final Set<String> OPEN = Set.of("/sign-in", "/healthz");

  /**
   * How the door is kept.
   *
   * @param hosts the names answered to
   * @param locked whether everybody must give the passphrase
   * @param secrets the studio's key and instance
   */
  public record Rules(HostRule hosts, boolean locked, Secrets secrets) {}

  private final Rules rules;
  private final Sessions sessions;
  private final Clock clock;
  private final RequestKeys keys = new RequestKeys();

  /** A door under these rules. */
  public Door(Rules rules, Sessions sessions, Clock clock) {
    this.rules = rules;
    this.sessions = sessions;
    this.clock = clock;
  }

  /** Lets a request in, answers it at once, or throws {@link TurnedAway}. */
  public void before(Context http) throws InterruptedException {
    http.attribute(REQUEST_ID, newRequestId());
    String host = http.req().getHeader("Host");
    Headers.all(trusted(http.scheme(), host)).forEach(http::header);
    int count = java.util.Collections.list(http.req().getHeaders("Host")).size();
    rules.hosts().check(host, count, http.req().getLocalPort());
    boolean entered = enter(http);
    http.attribute(ENTERED, entered);
    if (rules.locked() && !entered && !open(http.path())) {
      askForPassphrase(http);
      return;
    }
    if (!OriginRule.looksOnly(http.method().name())) {
      checkAct(http, String.valueOf(host));
    }
  }

  /** Whether browsers count the address as trustworthy: encrypted, or this machine itself. */
  private static boolean trusted(String scheme, @Nullable String host) {
    boolean loopback =
        host != null
            && host.toLowerCase(Locale.ROOT).matches("(localhost|127\\.0\\.0\\.1|\\[::1]).*");
    return scheme.equals("https") || loopback;
  }

  private static boolean open(String path) {
    return OPEN.contains(path) || path.startsWith("/static/") || path.startsWith("/pair/");
  }

  private static void askForPassphrase(Context http) {
    if (!OriginRule.looksOnly(http.method().name())) {
      throw new TurnedAway(
          401, "This device is signed out", "Nothing was recorded. Sign in and repeat.");
    }
    http.redirect("/sign-in", HttpStatus.SEE_OTHER);
    http.skipRemainingHandlers();
  }

  /** Recognises the visit, or begins one; says whether it is a signed-in device. */
  private boolean enter(Context http) {
    String cookie = http.cookie(cookieName());
    if (cookie != null && cookie.length() == 43) {
      http.attribute(VISIT, cookie);
      return !rules.locked() || sessions.find(cookie, clock.instant()).isPresent();
    }
    String fresh = Token.random();
    http.attribute(VISIT, fresh);
    if (!http.path().startsWith("/static/") && !http.path().equals("/healthz")) {
      giveCookie(http, fresh);
    }
    return !rules.locked();
  }

  private void checkAct(Context http, String host) throws InterruptedException {
    long most = http.isMultipart() ? UPLOAD_MAX : FORM_MAX;
    if (http.req().getContentLengthLong() > most) {
      throw new TurnedAway(413, "That is too large", TOO_LARGE);
    }
    OriginRule.check(http.header("Origin"), host, http.scheme(), http.header("Sec-Fetch-Site"));
    String inHeader = http.header(TOKEN_HEADER);
    String given = inHeader != null ? inHeader : http.formParam(TOKEN_FIELD);
    if (!Token.same(given, token(http))) {
      throw new TurnedAway(
          403,
          "The page was open for too long or came from elsewhere",
          "Nothing was recorded. Load the page again and repeat; what you typed is still in the"
              + " form if you go back.");
    }
    String key = http.formParam(KEY_FIELD);
    if (key == null || key.isEmpty()) {
      return;
    }
    String claim = visit(http) + " " + http.path() + " " + key;
    Optional<RequestKeys.Answer> earlier = keys.claim(claim);
    if (earlier.isPresent()) {
      repeat(http, earlier.get());
    } else {
      http.attribute(CLAIMED, claim);
    }
  }

  private static void repeat(Context http, RequestKeys.Answer answer) {
    http.status(answer.status());
    if (!answer.location().isEmpty()) {
      http.header("Location", answer.location());
    }
    http.contentType(answer.contentType()).result(answer.body());
    http.skipRemainingHandlers();
  }

  /** After a request: remembers what an act was answered with. */
  public void after(Context http) {
    String claimed = http.attribute(CLAIMED);
    if (claimed == null) {
      return;
    }
    if (http.statusCode() >= 400) {
      keys.failed(claimed);
      return;
    }
    String location = http.res().getHeader("Location");
    String type = http.res().getContentType();
    String body = http.result();
    keys.answered(
        claimed,
        new RequestKeys.Answer(
            http.statusCode(),
            location == null ? "" : location,
            body == null ? "" : body,
            type == null ? "text/plain" : type));
  }

  /** Signs this device in under a new name, so that a name known before is worth nothing. */
  public void signIn(Context http) {
    String agent = http.userAgent();
    String device = agent == null ? "unknown" : agent.substring(0, Math.min(120, agent.length()));
    giveCookie(http, sessions.open(device, clock.instant()));
  }

  /** Signs this device out. */
  public void signOut(Context http) {
    sessions.end(Token.digest(visit(http)));
    giveCookie(http, Token.random());
  }

  private void giveCookie(Context http, String value) {
    Cookie cookie = new Cookie(cookieName(), value);
    cookie.setPath("/");
    cookie.setHttpOnly(true);
    cookie.setSecure(http.scheme().equals("https"));
    cookie.setSameSite(SameSite.STRICT);
    cookie.setMaxAge(COOKIE_AGE_S);
    http.cookie(cookie);
  }

  private String cookieName() {
    return "pourwright-" + rules.secrets().instance();
  }

  /** Five characters that tell this studio's cookies from another's. */
  public String instance() {
    return rules.secrets().instance();
  }

  /** The form token of this visit. */
  public String token(Context http) {
    return Token.of(visit(http), rules.secrets().key());
  }

  /** The name of this visit. */
  public static String visit(Context http) {
    String visit = http.attribute(VISIT);
    return visit == null ? "" : visit;
  }

  /** Whether whoever asks may see anything of the studio, or is still a stranger. */
  public static boolean entered(Context http) {
    return Boolean.TRUE.equals(http.<Boolean>attribute(ENTERED));
  }

  /** What the log and the error page call this request. */
  public static String requestId(Context http) {
    String id = http.attribute(REQUEST_ID);
    return id == null ? "none" : id;
  }

  private static String newRequestId() {
    return Token.random()
        .replaceAll("[^A-Za-z0-9]", "0")
        .substring(0, REQUEST_ID_CHARACTERS)
        .toUpperCase(Locale.ROOT);
  }
}
