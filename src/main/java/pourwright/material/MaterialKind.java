package pourwright.material;

import java.util.Locale;
import pourwright.quantity.OutOfRange;

/** What a material is, in the words of the workshop. */
public enum MaterialKind {
  /** A binder or a premix that sets with water. */
  POWDER(UnitKind.MASS),
  /** Sand, marble flour, filler. */
  SAND(UnitKind.MASS),
  /** Dry colour for a mix. */
  PIGMENT(UnitKind.MASS),
  /** Colour that brings its own water. */
  LIQUID_COLOUR(UnitKind.MASS),
  /** Short fibre for a mix. */
  FIBRE(UnitKind.MASS),
  /** Plasticiser, retarder, latex. */
  ADMIXTURE(UnitKind.MASS),
  /** What is brushed on a vessel to close it. */
  SEALER(UnitKind.VOLUME),
  /** Wax of a candle. */
  WAX(UnitKind.MASS),
  /** Fragrance oil. */
  FRAGRANCE(UnitKind.MASS),
  /** Colour of a wax. */
  DYE(UnitKind.MASS),
  /** What else goes into a wax. */
  ADDITIVE(UnitKind.MASS),
  /** A wick, by its make and measured burn rate. */
  WICK(UnitKind.COUNT),
  /** The metal foot of a wick. */
  TAB(UnitKind.COUNT),
  /** What holds a tab to the base. */
  STICKER(UnitKind.COUNT),
  /** Mold rubber. */
  SILICONE(UnitKind.MASS),
  /** Boxes, wrap, care cards. */
  PACKAGING(UnitKind.COUNT),
  /** Labels. */
  LABEL(UnitKind.COUNT),
  /** Vessels that are bought and not cast; the code is that of the vessel's card. */
  VESSEL(UnitKind.COUNT),
  /** Sandpaper, cups, gloves. */
  CONSUMABLE(UnitKind.COUNT);

  private final UnitKind usualUnit;

  MaterialKind(UnitKind usualUnit) {
    this.usualUnit = usualUnit;
  }

  /** How things of this kind are usually counted. */
  public UnitKind usualUnit() {
    return usualUnit;
  }

  /** The kind as it is shown. */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * Reads a kind from its words or its constant's name.
   *
   * @throws OutOfRange when the text names no kind
   */
  public static MaterialKind of(String text) {
    for (MaterialKind kind : values()) {
      if (kind.words().equalsIgnoreCase(text.strip())
          || kind.name().equalsIgnoreCase(text.strip())) {
        return kind;
      }
    }
    throw new OutOfRange("kind", "'" + text + "' is not a kind of material", "powder, sand, wax …");
  }
}
