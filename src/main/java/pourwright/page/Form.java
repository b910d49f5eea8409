package pourwright.page;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import pourwright.page.guard.Token;
import pourwright.quantity.OutOfRange;
import pourwright.work.Act;

/**
 * What a person typed, kept as she typed it, with a sentence beside each field that could not be
 * read. Read every field first, then ask {@link #ok()}: all complaints are shown at once.
 */
public final class Form {
  private static final int FIELD_CHARACTERS_MAX = 20_000;

  private final Map<String, List<String>> entered;
  private final Map<String, String> errors = new LinkedHashMap<>();
  private final @Nullable HerFields hers;

  private Form(Map<String, List<String>> entered, @Nullable HerFields hers) {
    this.entered = entered;
    this.hers = hers;
  }

  /** The fields of a posted form. */
  public static Form of(Context http) {
    return sent(http, http.formParamMap());
  }

  /** The fields of an address, as a form that is sent with GET leaves them. */
  public static Form asked(Context http) {
    return sent(http, http.queryParamMap());
  }

  private static Form sent(Context http, Map<String, List<String>> fields) {
    boolean plain = fields.keySet().stream().noneMatch(f -> f.startsWith(HerFields.SHOWN_AS));
    return new Form(
        new LinkedHashMap<>(fields), plain ? null : new HerFields(Shell.of(http).desk().units()));
  }

  /** A form nobody has filled in yet. */
  public static Form blank() {
    return startingWith(Map.of());
  }

  /** A form that starts from known values, as text. */
  public static Form startingFrom(Map<String, String> values) {
    Map<String, List<String>> entered = new LinkedHashMap<>();
    values.forEach((field, value) -> entered.put(field, List.of(value)));
    return startingWith(entered);
  }

  /** A form that starts from known values of which some fields have several. */
  public static Form startingWith(Map<String, List<String>> values) {
    return new Form(new LinkedHashMap<>(values), null);
  }

  /** The same form with one field more. */
  public Form with(String field, String value) {
    Form more = new Form(new LinkedHashMap<>(entered), hers);
    more.entered.put(field, List.of(value));
    more.errors.putAll(errors);
    return more;
  }

  /**
   * The text of a field, or an empty string: as it was entered, or as the metric figure where the
   * page asks for a metric one and showed the field in her unit.
   */
  public String value(String field) {
    String shownAs = shownAs(field);
    return hers == null || shownAs == null ? typed(field) : hers.metric(typed(field), shownAs);
  }

  /** The text of a field to the letter as it was entered, or an empty string. */
  public String typed(String field) {
    List<String> values = entered.getOrDefault(field, List.of());
    return values.isEmpty() ? "" : values.get(0);
  }

  /** How a field that was sent had been shown in her unit; null where it was not. */
  public @Nullable String shownAs(String field) {
    String shownAs = hers == null ? "" : typed(HerFields.SHOWN_AS + field);
    return shownAs.isEmpty() ? null : shownAs;
  }

  /** All entries of a field that may occur several times, in their order. */
  public List<String> values(String field) {
    return List.copyOf(entered.getOrDefault(field, List.of()));
  }

  /** The names of all fields that were sent. */
  public List<String> fields() {
    return List.copyOf(entered.keySet());
  }

  /** Whether a box was ticked. */
  public boolean ticked(String field) {
    return !value(field).isEmpty();
  }

  /** The sentence that stands beside a field, or an empty string. */
  public String error(String field) {
    return errors.getOrDefault(field, "");
  }

  /** All complaints by field, in the order in which they were found. */
  public Map<String, String> errors() {
    return Map.copyOf(errors);
  }

  /** The fields complained about, in the order in which they were found. */
  public List<String> wrongFields() {
    return List.copyOf(errors.keySet());
  }

  /** Whether nothing is to be complained about so far. */
  public boolean ok() {
    return errors.isEmpty();
  }

  /** Puts a sentence beside a field; the first one stays. */
  public Form complain(String field, String sentence) {
    String shownAs = shownAs(field);
    errors.putIfAbsent(
        field, hers != null && shownAs != null ? hers.complaint(sentence, shownAs) : sentence);
    return this;
  }

  /** A text that must be there; {@code what} names it as in "the name of the mold". */
  public String text(String field, String what) {
    String text = optionalText(field);
    if (text.isEmpty()) {
      complain(field, "Please give " + what + ".");
    }
    return text;
  }

  /** A text that may be left out; an empty string then. */
  public String optionalText(String field) {
    String text = value(field).strip();
    if (text.length() > FIELD_CHARACTERS_MAX) {
      complain(field, "This is longer than " + FIELD_CHARACTERS_MAX + " characters.");
      return "";
    }
    return text;
  }

  /**
   * A value read from text by {@code reader}, which says in an {@link OutOfRange} or {@link
   * IllegalArgumentException} what it did not like. Nothing when the field is empty or wrong; then
   * a sentence stands beside it.
   */
  public <T> Optional<T> read(String field, String what, Function<String, T> reader) {
    String text = text(field, what);
    return text.isEmpty() ? Optional.empty() : parsed(field, what, text, reader);
  }

  /** As {@link #read}, for a field that may be left empty without a complaint. */
  public <T> Optional<T> readIfThere(String field, String what, Function<String, T> reader) {
    String text = optionalText(field);
    return text.isEmpty() ? Optional.empty() : parsed(field, what, text, reader);
  }

  private <T> Optional<T> parsed(
      String field, String what, String text, Function<String, T> reader) {
    try {
      return Optional.of(reader.apply(text));
    } catch (OutOfRange e) {
      String sentence = e.sentence() + (e.hint().isEmpty() ? "." : ": " + e.hint() + ".");
      complain(field, sentence.replace("..", "."));
    } catch (IllegalArgumentException e) {
      complain(field, "'" + typed(field).strip() + "' cannot be read as " + what + ".");
    }
    return Optional.empty();
  }

  /** A whole number between two bounds, both included. */
  public Optional<Integer> count(String field, String what, int least, int most) {
    Optional<Integer> count = read(field, what, Integer::valueOf);
    if (count.isPresent() && (count.get() < least || count.get() > most)) {
      complain(field, "Please give a whole number between " + least + " and " + most + ".");
      return Optional.empty();
    }
    return count;
  }

  /** One of a list of codes, as a choice offers them. */
  public Optional<String> choice(String field, String what, List<String> codes) {
    String code = text(field, what);
    if (code.isEmpty()) {
      return Optional.empty();
    }
    if (!codes.contains(code)) {
      complain(field, "'" + code + "' is not one of the choices.");
      return Optional.empty();
    }
    return Optional.of(code);
  }

  /** The request key that makes a double tap count once; an empty string if the form had none. */
  public String requestKey() {
    return value("request_key");
  }

  /**
   * Who asks, and by which request, for a use case: the initials field {@code by} of the form if it
   * has one, else those remembered for this device; a complaint at {@code by} when there are none.
   * Initials typed on a device that knew none are remembered there.
   */
  public Optional<Act> act(Context http, String note) {
    String typed = value("by").strip();
    String by = typed.isEmpty() ? Show.initials(http) : typed;
    if (by.isEmpty()) {
      complain("by", "Please say who did it: your initials.");
      return Optional.empty();
    }
    if (!typed.isEmpty() && Show.initials(http).isEmpty() && Initials.fit(typed)) {
      Show.rememberInitials(http, Initials.of(typed));
    }
    String key = requestKey();
    return Optional.of(new Act(by, key.isEmpty() ? Token.random() : key, note));
  }

  /** The complaints as finished lines for the box above the form. */
  public List<String> complaints() {
    return new ArrayList<>(errors.values());
  }
}
