package pourwright.cli;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.Origin;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;

/**
 * A strict reader of one JSON object: every field is asked for by name, type and range, and a field
 * that nobody asked for is refused when the computation is done.
 */
public final class JsonIn {
  private static final String UNCERTAINTY = "_relative_uncertainty";
  private static final String ORIGIN = "_origin";

  private final JsonNode node;
  private final String path;
  private final Set<String> asked = new LinkedHashSet<>();
  private final List<JsonIn> children = new ArrayList<>();
  private final List<String> uncertain;

  private JsonIn(JsonNode node, String path, List<String> uncertain) {
    this.node = node;
    this.path = path;
    this.uncertain = uncertain;
  }

  /** A reader of a whole request document. */
  public static JsonIn of(JsonNode document) {
    if (!document.isObject()) {
      throw new RefusedInput("the request is not a JSON object", "", "write { … }");
    }
    return new JsonIn(document, "", new ArrayList<>());
  }

  /** JSON pointer of this object. */
  public String path() {
    return path;
  }

  /** True when the field is there and not null. */
  public boolean has(String name) {
    return node.hasNonNull(name);
  }

  /** True when the field is there and a text. */
  public boolean isText(String name) {
    return node.path(name).isTextual();
  }

  /** True when the field is there and true or false. */
  public boolean isFlag(String name) {
    return node.path(name).isBoolean();
  }

  /** A number that must be there. */
  public double number(String name, Range range) {
    JsonNode field = required(name);
    return checked(name, field, range);
  }

  /** A number, or the default when the field is absent. */
  public double numberOr(String name, double absent, Range range) {
    asked.add(name);
    JsonNode field = node.get(name);
    return field == null || field.isNull() ? absent : checked(name, field, range);
  }

  /** A number with its {@code _relative_uncertainty} and {@code _origin}, exact when unsaid. */
  public Sourced sourced(String name, Range range) {
    return new Sourced(number(name, range), uncertaintyOf(name), originOf(name));
  }

  /** A whole number that must be there. */
  public int whole(String name, int low, int high) {
    double value = number(name, Range.ANY);
    if (value != Math.rint(value) || value < low || value > high) {
      throw refuse(
          name, name + " must be a whole number from " + low + " to " + high, "it is " + value);
    }
    return (int) value;
  }

  /** A whole number, or the default when the field is absent. */
  public int wholeOr(String name, int absent, int low, int high) {
    return has(name) ? whole(name, low, high) : absentWhole(name, absent);
  }

  private int absentWhole(String name, int absent) {
    asked.add(name);
    return absent;
  }

  /** A text that must be there. */
  public String text(String name) {
    JsonNode field = required(name);
    if (!field.isTextual()) {
      throw refuse(name, name + " must be a text", "put it in quotes");
    }
    return field.textValue();
  }

  /** A whole number of any length, or a text, as the text that it is written with. */
  public String wholeText(String name) {
    JsonNode field = required(name);
    if (field.isIntegralNumber() && field.bigIntegerValue().signum() >= 0) {
      return field.bigIntegerValue().toString();
    }
    if (!field.isTextual()) {
      throw refuse(name, name + " must be a whole number, 0 or more, or a text", "give either");
    }
    return field.textValue();
  }

  /** A text, or the default when the field is absent. */
  public String textOr(String name, String absent) {
    asked.add(name);
    return has(name) ? text(name) : absent;
  }

  /** A text, or null when the field is absent. */
  public @Nullable String textOrNull(String name) {
    asked.add(name);
    return has(name) ? text(name) : null;
  }

  /** One of the given words. */
  public String choice(String name, String... words) {
    String value = text(name);
    for (String word : words) {
      if (word.equals(value)) {
        return value;
      }
    }
    throw refuse(name, name + " is '" + value + "'", "use one of: " + String.join(", ", words));
  }

  /** One of the given words, or the default when absent. */
  public String choiceOr(String name, String absent, String... words) {
    asked.add(name);
    return has(name) ? choice(name, words) : absent;
  }

  /** A true or false, or the default when absent. */
  public boolean flagOr(String name, boolean absent) {
    asked.add(name);
    JsonNode field = node.get(name);
    if (field == null || field.isNull()) {
      return absent;
    }
    if (!field.isBoolean()) {
      throw refuse(name, name + " must be true or false", "write true or false without quotes");
    }
    return field.booleanValue();
  }

  /** An object that must be there. */
  public JsonIn object(String name) {
    return child(name, required(name));
  }

  /** An object, or null when the field is absent. */
  public @Nullable JsonIn objectOrNull(String name) {
    asked.add(name);
    JsonNode field = node.get(name);
    return field == null || field.isNull() ? null : child(name, field);
  }

  /** A list of objects; empty when absent and not required. */
  public List<JsonIn> objects(String name, boolean required) {
    List<JsonIn> items = new ArrayList<>();
    for (Item item : items(name, required)) {
      items.add(child(item.name, item.node));
    }
    return items;
  }

  /** A list of numbers. */
  public double[] numbers(String name, Range range) {
    List<Item> items = items(name, true);
    double[] values = new double[items.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = checked(items.get(i).name, items.get(i).node, range);
    }
    return values;
  }

  /** A list of texts; empty when absent. */
  public List<String> texts(String name) {
    List<String> values = new ArrayList<>();
    for (Item item : items(name, false)) {
      if (!item.node.isTextual()) {
        throw refuse(item.name, item.name + " must be a text", "put it in quotes");
      }
      values.add(item.node.textValue());
    }
    return values;
  }

  /** A list of points, each a list of numbers of the given length. */
  public double[][] points(String name, int length) {
    List<Item> items = items(name, true);
    double[][] points = new double[items.size()][length];
    for (int i = 0; i < points.length; i++) {
      JsonNode point = items.get(i).node;
      String at = items.get(i).name;
      if (!point.isArray() || point.size() != length) {
        throw refuse(at, "a point needs " + length + " numbers", "write [x, y]");
      }
      for (int j = 0; j < length; j++) {
        points[i][j] = checked(at + "/" + j, point.get(j), Range.ANY);
      }
    }
    return points;
  }

  /** Names of the fields that are there, in their order; for maps with free keys. */
  public List<String> names() {
    List<String> names = new ArrayList<>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }

  /** A refusal that points at a field of this object. */
  public RefusedInput refuse(String name, String error, String hint) {
    return new RefusedInput(error, path + "/" + name, hint);
  }

  /** The craft's refusal of a value, pointed at this object's field of that name. */
  public RefusedInput refuse(OutOfRange outOfRange) {
    return refuse(outOfRange.field(), outOfRange.sentence(), outOfRange.hint());
  }

  /** JSON pointers of the numbers read so far that carry an uncertainty. */
  List<String> uncertain() {
    return List.copyOf(uncertain);
  }

  /** Refuses every field that was never asked for, here and below. */
  void finish() {
    for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
      String name = names.next();
      if (!asked.contains(name) && !isCompanion(name)) {
        throw refuse(name, "'" + name + "' is not a field of this request", "known here: " + asked);
      }
    }
    children.forEach(JsonIn::finish);
  }

  private boolean isCompanion(String name) {
    for (String suffix : List.of(UNCERTAINTY, ORIGIN)) {
      if (name.endsWith(suffix)
          && asked.contains(name.substring(0, name.length() - suffix.length()))) {
        return true;
      }
    }
    return false;
  }

  private JsonNode required(String name) {
    asked.add(name);
    JsonNode field = node.get(name);
    if (field == null || field.isNull()) {
      throw refuse(name, "'" + name + "' is missing", "add the field");
    }
    return field;
  }

  private double checked(String name, JsonNode field, Range range) {
    if (!field.isNumber()) {
      throw refuse(name, name + " must be a number", "write it without quotes or unit");
    }
    double value = field.doubleValue();
    if (!Double.isFinite(value)) {
      throw refuse(name, name + " is not a finite number", "give a plain number");
    }
    if (!range.allows(value)) {
      throw refuse(name, name + " is " + value + " and " + range.sentence(), "check the unit");
    }
    if (uncertaintyOf(name) > 0) {
      originOf(name);
      uncertain.add(path + "/" + name);
    }
    return value;
  }

  private double uncertaintyOf(String name) {
    JsonNode field = node.get(name + UNCERTAINTY);
    if (field == null || field.isNull()) {
      return 0;
    }
    if (!field.isNumber() || !(field.doubleValue() >= 0 && field.doubleValue() <= 2)) {
      throw refuse(
          name + UNCERTAINTY, "a relative uncertainty must be a number from 0 to 2", "5 % is 0.05");
    }
    return field.doubleValue();
  }

  private Origin originOf(String name) {
    JsonNode field = node.get(name + ORIGIN);
    if (field == null || field.isNull()) {
      return Origin.MEASURED_HERE;
    }
    try {
      return Origin.of(field.asText());
    } catch (OutOfRange e) {
      throw refuse(name + ORIGIN, e.sentence(), e.hint());
    }
  }

  private JsonIn child(String name, JsonNode field) {
    if (!field.isObject()) {
      throw refuse(name, name + " must be an object", "write { … }");
    }
    JsonIn child = new JsonIn(field, path + "/" + name, uncertain);
    children.add(child);
    return child;
  }

  private record Item(String name, JsonNode node) {}

  private List<Item> items(String name, boolean required) {
    asked.add(name);
    JsonNode field = required ? required(name) : node.get(name);
    List<Item> items = new ArrayList<>();
    if (field == null || field.isNull()) {
      return items;
    }
    if (!field.isArray()) {
      throw refuse(name, name + " must be a list", "write [ … ]");
    }
    for (int i = 0; i < field.size(); i++) {
      items.add(new Item(name + "/" + i, field.get(i)));
    }
    return items;
  }
}
