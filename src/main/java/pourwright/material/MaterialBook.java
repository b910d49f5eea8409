package pourwright.material;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pourwright.quantity.OutOfRange;

/** Materials by code. */
public final class MaterialBook {
  private final Map<String, Material> byCode;

  private MaterialBook(Map<String, Material> byCode) {
    this.byCode = Collections.unmodifiableMap(byCode);
  }

  /**
   * A book of the given materials.
   *
   * @throws OutOfRange when a code stands twice
   */
  public static MaterialBook of(Collection<Material> materials) {
    Map<String, Material> byCode = new TreeMap<>();
    for (Material material : materials) {
      if (byCode.put(material.code(), material) != null) {
        throw new OutOfRange(
            "material", "the code " + material.code() + " stands twice", "give one another code");
      }
    }
    return new MaterialBook(byCode);
  }

  /** The typical materials that come with the program: editable defaults, each with its source. */
  public static MaterialBook typical() {
    return of(MaterialFile.typical());
  }

  /** The material of that code, where there is one. */
  public Optional<Material> find(String code) {
    return Optional.ofNullable(byCode.get(code));
  }

  /**
   * The material of that code.
   *
   * @throws OutOfRange when there is none
   */
  public Material get(String code) {
    return find(code)
        .orElseThrow(
            () ->
                new OutOfRange(
                    "material",
                    "'" + code + "' is not among the materials",
                    "add it to the stockroom first"));
  }

  /** All materials in the order of their codes. */
  public List<Material> all() {
    return new ArrayList<>(byCode.values());
  }

  /** This book with the given materials added, or put in the place of those of the same code. */
  public MaterialBook with(Collection<Material> more) {
    Map<String, Material> all = new TreeMap<>(byCode);
    more.forEach(m -> all.put(m.code(), m));
    return new MaterialBook(all);
  }
}
