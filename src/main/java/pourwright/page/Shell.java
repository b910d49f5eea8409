package pourwright.page;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.page.guard.Door;
import pourwright.page.guard.OriginRule;
import pourwright.page.words.Interpreter;
import pourwright.page.words.Language;

/** Puts the frame around pages: navigation, token, timers, what was said last. */
final class Shell {
  private static final String ATTRIBUTE = "pourwright.shell";
  private static final int SAID_MAX = 200;
  private static final int COOKIE_AGE_S = 400 * 24 * 3600;

  private final List<Place> places;
  private final Desk desk;
  private final Surroundings surroundings;
  private final ServerSettings settings;
  private final Door door;
  private final boolean sample;
  private final Templates templates = new Templates();
  private final StaticFiles files = new StaticFiles();
  private final Map<String, Told> saidToVisit =
      new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Told> eldest) {
          return size() > SAID_MAX;
        }
      };

  Shell(Site site, ServerSettings settings, Door door) {
    this.places = site.places();
    this.desk = site.desk();
    this.surroundings = site.surroundings();
    this.sample = site.startOwn() != null;
    this.settings = settings;
    this.door = door;
  }

  static Shell of(Context http) {
    Shell shell = http.attribute(ATTRIBUTE);
    if (shell == null) {
      throw new IllegalStateException("the request did not come through the door");
    }
    return shell;
  }

  void attachTo(Context http) {
    http.attribute(ATTRIBUTE, this);
  }

  StaticFiles files() {
    return files;
  }

  Desk desk() {
    return desk;
  }

  Surroundings surroundings() {
    return surroundings;
  }

  /** A whole page; what was said last is said on it. */
  String render(Context http, String template, Object page) {
    return render(http, frame(http, http.path(), takeSaid(http)), template, page);
  }

  /** A part of the page that asked for it, whose path it gives as {@code back}. */
  String renderPart(Context http, String template, Object page) {
    String back = http.queryParam("back");
    boolean own = back != null && back.startsWith("/") && !back.startsWith("//");
    String path = back != null && own ? back : http.path();
    return render(http, frame(http, path, Optional.empty()), template, page);
  }

  private String render(Context http, Frame frame, String template, Object page) {
    Map<String, Object> parameters = new LinkedHashMap<>();
    parameters.put("frame", frame);
    parameters.put("page", page);
    String shown = Interpreter.page(language(http), templates.render(template, parameters));
    return frame.units().beside(shown);
  }

  /** What was said of a request, and its key. */
  private record Told(Said said, String requestKey) {}

  void say(Context http, Said said) {
    String key = http.formParam("request_key");
    synchronized (saidToVisit) {
      saidToVisit.put(Door.visit(http), new Told(said, key == null ? "" : key));
    }
  }

  private Optional<Told> takeSaid(Context http) {
    synchronized (saidToVisit) {
      return Optional.ofNullable(saidToVisit.remove(Door.visit(http)));
    }
  }

  private Frame frame(Context http, String path, Optional<Told> told) {
    boolean entered = Door.entered(http);
    Surroundings.Around around =
        (entered ? surroundings : Surroundings.quiet())
            .around(desk.clock().instant(), told.map(Told::requestKey).orElse(""));
    List<Frame.Nav> nav = new ArrayList<>();
    for (Place place : places) {
      nav.add(new Frame.Nav(place.name(), place.path(), belongs(path, place.path())));
    }
    return new Frame(
        settings.studio(),
        path,
        nav,
        door.token(http),
        look(http),
        remembered(http, "hand"),
        Initials.read(remembered(http, "hands")).stream()
            .filter(hand -> !hand.equals(remembered(http, "hand")))
            .toList(),
        desk.units(),
        around.bells(),
        around.hot(),
        around.last().words(),
        around.last().deeds(),
        told.map(Told::said),
        around.done().deeds(),
        files.version(),
        !settings.loopbackOnly(),
        sample,
        decimalMark(),
        !OriginRule.looksOnly(http.method().name()),
        entered);
  }

  private String decimalMark() {
    return String.valueOf(DecimalFormatSymbols.getInstance(desk.locale()).getDecimalSeparator());
  }

  private static boolean belongs(String path, String place) {
    return place.equals("/")
        ? path.equals("/")
        : path.equals(place) || path.startsWith(place + "/");
  }

  private Look look(Context http) {
    return Look.of(remembered(http, "look"));
  }

  /** The language of this device; that of the studio's numbers and dates when it did not choose. */
  Language language(Context http) {
    return Language.tagged(remembered(http, "language"))
        .orElseGet(() -> Language.of(desk.locale()));
  }

  /** What this device was asked to remember, or an empty string. */
  String remembered(Context http, String what) {
    String value = http.cookie(what + "-" + door.instance());
    return value == null ? "" : value;
  }

  /** Lets this device remember something of a few plain characters. */
  void remember(Context http, String what, String value) {
    Cookie cookie = new Cookie(what + "-" + door.instance(), value);
    cookie.setPath("/");
    cookie.setHttpOnly(true);
    cookie.setSameSite(SameSite.STRICT);
    cookie.setMaxAge(COOKIE_AGE_S);
    http.cookie(cookie);
  }
}
