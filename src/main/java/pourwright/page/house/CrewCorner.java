package pourwright.page.house;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.card.Card;
import pourwright.card.Instrument;
import pourwright.card.Person;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.quantity.NumberText;
import pourwright.quantity.OutOfRange;
import pourwright.work.Act;
import pourwright.work.Books;
import pourwright.work.CardVersion;
import pourwright.work.Drawer;
import pourwright.work.Drawers;
import pourwright.work.SaveCard;

/** People who work here, scales and thermometers: written down, changed, put away. */
public final class CrewCorner implements Corner {
  private static final String PAGE = "/settings/crew";
  private static final String TEMPLATE = "house/crew.jte";
  private static final List<String> ROLES = List.of("maker", "learner");

  /** What an instrument may measure, with the unit it shows. */
  private static final Map<String, String> MEASURES = new LinkedHashMap<>();

  static {
    MEASURES.put("mass", "g");
    MEASURES.put("temperature", "°C");
    MEASURES.put("length", "mm");
  }

  private final Desk desk;

  /** People and instruments of this studio. */
  public CrewCorner(Desk desk) {
    this.desk = desk;
  }

  /**
   * The page.
   *
   * @param form what was typed
   * @param people who works here
   * @param instruments what is measured with
   * @param trash what was put away: the drawer's name before the code
   */
  public record CrewPage(Form form, List<Row> people, List<Row> instruments, List<Row> trash) {
    /** Roles to choose from. */
    public Map<String, String> roles() {
      Map<String, String> roles = new LinkedHashMap<>();
      roles.put("maker", "maker: everything");
      roles.put(
          "learner", "learner: records all, proves and prints nothing for sale, lifts no hold");
      return roles;
    }

    /** What may be measured. */
    public Map<String, String> measures() {
      Map<String, String> measures = new LinkedHashMap<>();
      MEASURES.forEach((what, unit) -> measures.put(what, what + ", in " + unit));
      return measures;
    }
  }

  /** One card: its code, what is on it, the version it is at. */
  public record Row(String code, String words, int version) {}

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(PAGE, http -> Show.page(http, TEMPLATE, page(Form.blank())));
    routes.post("/settings/person", this::person);
    routes.post("/settings/instrument", this::instrument);
    routes.post("/settings/away/person", http -> away(http, Drawers.PERSON));
    routes.post("/settings/away/instrument", http -> away(http, Drawers.INSTRUMENT));
    routes.post("/settings/back/person", http -> back(http, Drawers.PERSON));
    routes.post("/settings/back/instrument", http -> back(http, Drawers.INSTRUMENT));
  }

  private CrewPage page(Form form) {
    return desk.studio()
        .look(
            books ->
                new CrewPage(
                    form,
                    books.cards().all(Drawers.PERSON).stream()
                        .map(p -> new Row(p.body().code(), words(p.body()), p.version()))
                        .toList(),
                    books.cards().all(Drawers.INSTRUMENT).stream()
                        .map(i -> new Row(i.body().code(), words(i.body()), i.version()))
                        .toList(),
                    trash(books)));
  }

  private List<Row> trash(Books books) {
    List<Row> trash = new ArrayList<>();
    for (CardVersion<Person> p : books.cards().putAway(Drawers.PERSON)) {
      trash.add(new Row("person/" + p.code(), words(p.body()), p.version()));
    }
    for (CardVersion<Instrument> i : books.cards().putAway(Drawers.INSTRUMENT)) {
      trash.add(new Row("instrument/" + i.code(), words(i.body()), i.version()));
    }
    return trash;
  }

  /** Takes a card out of the trash as it was. */
  private <T extends Card> void back(Context http, Drawer<T> drawer) {
    Form form = Form.of(http);
    String code = form.value("code");
    Optional<Act> act = form.act(http, "");
    if (act.isEmpty()) {
      Show.who(http, form);
      return;
    }
    Optional<CardVersion<T>> card =
        desk.studio()
            .look(
                books ->
                    books.cards().putAway(drawer).stream()
                        .filter(v -> v.code().equals(code))
                        .findFirst());
    if (card.isEmpty()) {
      Show.done(http, Said.refused("There is no such card.", "Load the page again."), PAGE);
      return;
    }
    keep(http, form, act.get(), drawer, card.get().body());
  }

  private static String words(Person person) {
    return person.initials()
        + ", "
        + person.name()
        + ", "
        + person.role().name().toLowerCase(Locale.ROOT);
  }

  private String words(Instrument instrument) {
    LocalDate checked = instrument.checkedOn();
    return instrument.name()
        + ", "
        + instrument.measures()
        + " to "
        + NumberText.in(desk.locale()).write(java.math.BigDecimal.valueOf(instrument.resolution()))
        + " "
        + instrument.unit()
        + (checked == null ? ", never checked" : ", checked " + desk.day(checked));
  }

  private void person(Context http) {
    Form form = Form.of(http);
    String initials =
        form.text("initials", "initials, one to four letters").toUpperCase(Locale.ROOT);
    String name = form.text("person_name", "a name");
    Optional<String> role = form.choice("role", "what she may do", ROLES);
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty() || role.isEmpty()) {
      Show.again(http, TEMPLATE, page(form));
      return;
    }
    try {
      Person.Role may = Person.Role.valueOf(role.get().toUpperCase(Locale.ROOT));
      keep(http, form, act.get(), Drawers.PERSON, new Person(initials, name, may, null));
    } catch (OutOfRange e) {
      form.complain("initials", e.sentence() + ": " + e.hint() + ".");
      Show.again(http, TEMPLATE, page(form));
    }
  }

  private void instrument(Context http) {
    Form form = Form.of(http);
    String name = form.text("instrument_name", "a name, such as bench scale");
    Optional<String> what =
        form.choice("measures", "what it measures", List.copyOf(MEASURES.keySet()));
    Optional<Double> step =
        form.read(
            "resolution",
            "its smallest step",
            text -> NumberText.in(desk.locale()).decimal(text).doubleValue());
    Optional<LocalDate> checked = form.readIfThere("checked", "a day", LocalDate::parse);
    if (!form.ok() || what.isEmpty() || step.isEmpty()) {
      Show.again(http, TEMPLATE, page(form));
      return;
    }
    Optional<Act> act = form.act(http, "");
    if (act.isEmpty()) {
      Show.who(http, form);
      return;
    }
    try {
      String unit = MEASURES.getOrDefault(what.get(), "g");
      Instrument instrument =
          new Instrument(
              code(name), name, what.get(), step.get(), unit, checked.orElse(null), null);
      keep(http, form, act.get(), Drawers.INSTRUMENT, instrument);
    } catch (OutOfRange e) {
      String field = e.field().equals("resolution") ? "resolution" : "instrument_name";
      form.complain(field, e.sentence() + ": " + e.hint() + ".");
      Show.again(http, TEMPLATE, page(form));
    }
  }

  /** A code of a name: small letters, digits and dashes. */
  private static String code(String name) {
    String plain =
        java.text.Normalizer.normalize(name, java.text.Normalizer.Form.NFD)
            .replaceAll("\\p{M}", "")
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-|-$", "");
    return plain.isEmpty() ? "instrument" : plain;
  }

  private <T extends Card> void keep(Context http, Form form, Act act, Drawer<T> drawer, T card) {
    int basedOn =
        desk.studio()
            .look(books -> books.cards().current(drawer, card.code()))
            .map(CardVersion::version)
            .orElse(0);
    boolean away =
        desk.studio()
            .<Boolean>look(
                books ->
                    books.cards().putAway(drawer).stream()
                        .anyMatch(v -> v.code().equals(card.code())));
    SaveCard.Saving<T> saving =
        desk.studio().saveCard.run(act, SaveCard.Request.of(drawer, card.code(), basedOn, card));
    tell(
        http,
        form,
        saving,
        away ? "This one was put away before; it is back with its history." : "Written down.");
  }

  private <T extends Card> void away(Context http, Drawer<T> drawer) {
    Form form = Form.of(http);
    String code = form.value("code");
    Optional<Act> act = form.act(http, "");
    if (act.isEmpty()) {
      Show.who(http, form);
      return;
    }
    @Nullable CardVersion<T> card =
        desk.studio().look(books -> books.cards().current(drawer, code)).orElse(null);
    if (card == null) {
      Show.done(http, Said.refused("There is no such card.", "Load the page again."), PAGE);
      return;
    }
    tell(
        http,
        form,
        desk.studio()
            .saveCard
            .run(
                act.get(), new SaveCard.Request<>(drawer, code, card.version(), card.body(), true)),
        "Put away; undo brings it back.");
  }

  private <T> void tell(Context http, Form form, SaveCard.Saving<T> saving, String done) {
    if (saving instanceof SaveCard.Saving.Refused<T> refused) {
      Show.done(http, Said.refused(refused.sentence(), refused.hint()), PAGE);
    } else if (saving instanceof SaveCard.Saving.Conflict<T>) {
      form.complain("initials", "Somebody changed it meanwhile; look again and repeat.");
      Show.again(http, TEMPLATE, page(form));
    } else {
      Show.done(http, Said.done(done), PAGE);
    }
  }
}
