package pourwright.page.house;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.work.Act;
import pourwright.work.Drawers;
import pourwright.work.Outcome;

/** Settings of the studio, and who works at this device. */
public final class SettingsCorner implements Corner {
  /** Names of the settings kept in the books. */
  private static final List<String> KEYS =
      List.of(
          "studio.name", "units.mass", "units.length", "units.temperature", "locale", "currency");

  private static final int INITIALS_MAX = 4;
  private final Desk desk;
  private final Supplier<List<String>> backups;

  /** The settings of this studio, of whose backups nothing is known. */
  public SettingsCorner(Desk desk) {
    this(desk, List::of);
  }

  /** The settings of this studio, with sentences about its backups. */
  public SettingsCorner(Desk desk, Supplier<List<String>> backups) {
    this.desk = desk;
    this.backups = backups;
  }

  /**
   * The page.
   *
   * @param form values as they stand or as they were typed
   * @param people who works here, one a line
   * @param instruments scales and thermometers, one a line
   * @param backups how it stands with the backups, in sentences
   */
  public record SettingsPage(
      Form form, List<String> people, List<String> instruments, List<String> backups) {
    /** What a mass may be shown in. */
    public Map<String, String> masses() {
      return inOrder("g", "grams", "oz", "ounces");
    }

    /** What a length may be shown in. */
    public Map<String, String> lengths() {
      return inOrder("mm", "millimetres", "in", "inches");
    }

    /** What a temperature may be shown in. */
    public Map<String, String> temperatures() {
      return inOrder("c", "°C", "f", "°F");
    }

    /** How numbers and dates may be written. */
    public Map<String, String> locales() {
      Map<String, String> locales = new LinkedHashMap<>();
      for (String tag : List.of("en-GB", "en-US", "de-DE", "fr-FR", "es-ES")) {
        locales.put(tag, Locale.forLanguageTag(tag).getDisplayName(Locale.ENGLISH));
      }
      return locales;
    }

    private static Map<String, String> inOrder(String... pairs) {
      Map<String, String> map = new LinkedHashMap<>();
      for (int i = 0; i < pairs.length; i += 2) {
        map.put(pairs[i], pairs[i + 1]);
      }
      return map;
    }
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/settings", this::show);
    routes.post("/settings", this::save);
    routes.post("/settings/hand", this::hand);
    routes.post("/hand", this::hand);
  }

  private void show(Context http) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("locale", "en-GB");
    values.put("units.mass", "g");
    values.put("units.length", "mm");
    values.put("units.temperature", "c");
    values.put("currency", "EUR");
    values.putAll(desk.studio().look(books -> books.settings().all()));
    values.put("hand", Show.initials(http));
    Show.page(http, "house/settings.jte", page(Form.startingFrom(values)));
  }

  private SettingsPage page(Form form) {
    return desk.studio()
        .look(
            books ->
                new SettingsPage(
                    form,
                    books.cards().all(Drawers.PERSON).stream()
                        .map(
                            p ->
                                p.body().initials()
                                    + ", "
                                    + p.body().name()
                                    + ", "
                                    + p.body().role().name().toLowerCase(Locale.ROOT))
                        .toList(),
                    books.cards().all(Drawers.INSTRUMENT).stream()
                        .map(
                            i ->
                                i.body().name()
                                    + ", to "
                                    + i.body().resolution()
                                    + " "
                                    + i.body().unit())
                        .toList(),
                    backups.get()));
  }

  private void save(Context http) {
    Form form = Form.of(http);
    Optional<Act> act = form.act(http, "");
    form.text("studio.name", "a name for the studio");
    form.read("currency", "a currency", text -> java.util.Currency.getInstance(text).toString());
    if (!form.ok() || act.isEmpty()) {
      Show.again(http, "house/settings.jte", page(form));
      return;
    }
    Map<String, String> before = desk.studio().look(books -> books.settings().all());
    for (String key : KEYS) {
      String value = form.value(key).strip();
      if (value.isEmpty() || value.equals(before.getOrDefault(key, ""))) {
        continue;
      }
      Act each = Act.of(act.get().by(), act.get().requestKey() + "-" + key);
      if (desk.studio().saveSetting.run(each, key, value) instanceof Outcome.Refused<String> no) {
        Show.done(http, Said.refused(no), "/settings");
        return;
      }
    }
    Show.done(
        http,
        new Said(Said.Tone.DONE, "Saved.", "Name and language show after the next start."),
        "/settings");
  }

  /** Remembers who works at this device, by initials. */
  private void hand(Context http) {
    Form form = Form.of(http);
    String initials = form.value("hand").strip().toUpperCase(desk.locale());
    boolean letters = initials.codePoints().allMatch(Character::isLetter);
    if (!letters || initials.length() > INITIALS_MAX) {
      form.complain("hand", "Please give one to four letters.");
      Show.again(http, "house/settings.jte", page(form));
      return;
    }
    Show.rememberInitials(http, initials);
    String back = form.value("back");
    Show.done(
        http,
        Said.done(
            initials.isEmpty() ? "Nobody is remembered." : initials + " works at this device."),
        back.isEmpty() ? "/settings" : Numbers.ownPath(back));
  }
}
