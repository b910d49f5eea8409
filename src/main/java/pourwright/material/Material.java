package pourwright.material;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;

/**
 * One material: what it is, how it is counted, and what is known of it.
 *
 * @param code short and unique, lower case with hyphens, e.g. {@code soft-plant-wax-a}
 * @param name what the maker calls it
 * @param kind what it is
 * @param unit how it is counted
 * @param properties values by written name, see {@link Property}
 * @param shelfLife how long it keeps
 * @param note where the values are from, or anything else worth reading
 */
public record Material(
    String code,
    String name,
    MaterialKind kind,
    UnitKind unit,
    Map<String, Sourced> properties,
    ShelfLife shelfLife,
    @Nullable String note) {

  /** Checks the code, the name and the range of every property. */
  public Material {
    checkCode("material", code);
    if (name.isBlank()) {
      throw new OutOfRange("name", "the material " + code + " has no name", "give it a name");
    }
    properties.forEach((written, value) -> Property.check(written, value.value()));
    properties = java.util.Collections.unmodifiableMap(new TreeMap<>(properties));
  }

  /** A material without a stated shelf life or note, counted as its kind usually is. */
  public static Material of(
      String code, String name, MaterialKind kind, Map<String, Sourced> properties) {
    return new Material(code, name, kind, kind.usualUnit(), properties, ShelfLife.KEEPS, null);
  }

  /**
   * Checks a code: lower-case letters, digits and hyphens, at most 60.
   *
   * @throws OutOfRange naming the field
   */
  public static String checkCode(String field, String code) {
    if (!code.matches("[a-z0-9][a-z0-9-]{0,59}")) {
      throw new OutOfRange(
          field,
          "'" + code + "' is not a code",
          "use lower-case letters, digits and hyphens, e.g. marble-flour");
    }
    return code;
  }

  /** What is known of a property. */
  public Optional<Sourced> property(Property property) {
    return Optional.ofNullable(properties.get(property.written()));
  }

  /**
   * A property that a calculation cannot do without.
   *
   * @throws OutOfRange naming the material and the property
   */
  public Sourced required(Property property) {
    return property(property)
        .orElseThrow(
            () ->
                new OutOfRange(
                    property.written(),
                    name + " has no " + property.written() + " written down",
                    "read it on the supplier's sheet or measure it, and add it to the material"));
  }

  /** The same material with one property set. */
  public Material with(Property property, Sourced value) {
    Map<String, Sourced> more = new TreeMap<>(properties);
    more.put(property.written(), value);
    return new Material(code, name, kind, unit, more, shelfLife, note);
  }
}
