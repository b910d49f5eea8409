package pourwright.hazard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;

/**
 * What a material's safety data sheet says of its composition, written down. No lines means: looked
 * at, and section 3 lists nothing.
 *
 * @param material code of the material
 * @param revision date or number of the sheet, as printed on it; results hold for this one only
 * @param lines the substances
 * @param restIsHarmless true when what the lines leave open is not classified by the sheet; false
 *     when it is unknown
 */
public record HazardSheet(
    String material, String revision, List<Line> lines, boolean restIsHarmless) {

  /**
   * One substance.
   *
   * @param name as on the sheet
   * @param cas its registry number, or null
   * @param low lower end of its share, fraction
   * @param high upper end of its share, fraction
   * @param classes hazard classes as {@link HazardClass#fullCode()} writes them
   * @param limits specific limits by class, fractions
   * @param acuteM M-factor, or null
   * @param chronicM M-factor, or null
   * @param oralMgPerKg acute toxicity estimate, or null
   * @param dermalMgPerKg acute toxicity estimate, or null
   */
  public record Line(
      String name,
      @Nullable String cas,
      double low,
      double high,
      List<String> classes,
      Map<String, Double> limits,
      @Nullable Integer acuteM,
      @Nullable Integer chronicM,
      @Nullable Double oralMgPerKg,
      @Nullable Double dermalMgPerKg) {
    /** Copies the collections and checks the share. */
    public Line {
      Check.fraction("fraction_low", low);
      Check.fraction("fraction_high", high);
      classes = List.copyOf(classes);
      limits = Map.copyOf(limits);
    }

    /** The line of an ingredient. */
    static Line of(Ingredient from) {
      Map<String, Double> limits = new LinkedHashMap<>();
      from.specificLimits().forEach((c, limit) -> limits.put(c.fullCode(), limit));
      CasNumber cas = from.cas();
      AcuteEstimates acute = from.acute().estimates();
      return new Line(
          from.name(),
          cas == null ? null : cas.text(),
          from.share().low(),
          from.share().high(),
          from.classes().stream().sorted().map(HazardClass::fullCode).toList(),
          limits,
          from.acuteM(),
          from.chronicM(),
          acute.oralMgPerKg(),
          acute.dermalMgPerKg());
    }

    Ingredient resolve() {
      Set<HazardClass> read = new LinkedHashSet<>();
      classes.forEach(c -> read.add(HazardClass.parse(c)));
      Map<HazardClass, Double> specific = new LinkedHashMap<>();
      limits.forEach((c, limit) -> specific.put(HazardClass.parse(c), limit));
      return new Ingredient(
          name,
          cas == null ? null : new CasNumber(cas),
          new Share(low, high),
          read,
          specific,
          acuteM,
          chronicM,
          new Ingredient.AcuteFacts(
              new AcuteEstimates(oralMgPerKg, dermalMgPerKg, null, null), Set.of(), true));
    }

    /** The line as {@link SheetReader} reads it again. */
    String text() {
      StringBuilder text = new StringBuilder(name);
      text.append(' ').append(cas == null ? "no CAS" : cas).append(' ');
      text.append(low < high ? Percent.plain(low * 100) + " - " : "");
      text.append(Percent.text(high)).append(' ').append(String.join(", ", classes));
      limits.forEach(
          (c, limit) -> text.append(", ").append(c).append(": C ≥ ").append(Percent.text(limit)));
      text.append(acuteM == null ? "" : ", M (acute) = " + acuteM);
      text.append(chronicM == null ? "" : ", M (chronic) = " + chronicM);
      text.append(oralMgPerKg == null ? "" : ", ATE oral " + Percent.plain(oralMgPerKg) + " mg/kg");
      text.append(
          dermalMgPerKg == null ? "" : ", ATE dermal " + Percent.plain(dermalMgPerKg) + " mg/kg");
      return text.toString();
    }
  }

  /** Copies the list. */
  public HazardSheet {
    lines = List.copyOf(lines);
  }

  /** The sheet of lines that were read and confirmed. */
  public static HazardSheet of(
      String material, String revision, List<SheetLine> read, boolean restIsHarmless) {
    return new HazardSheet(
        material,
        revision,
        read.stream().map(SheetLine::ingredient).map(Line::of).toList(),
        restIsHarmless);
  }

  /** The substances, with the rest as one more where it is harmless. */
  public List<Ingredient> composition(String materialName) {
    List<Ingredient> all = new ArrayList<>(lines.stream().map(Line::resolve).toList());
    double least = lines.stream().mapToDouble(Line::low).sum();
    double most = lines.stream().mapToDouble(Line::high).sum();
    if (restIsHarmless && least < 1) {
      Share rest = new Share(Math.max(0, 1 - most), Math.max(0, 1 - least));
      all.add(Ingredient.plain("rest of " + materialName, 0).at(rest));
    }
    return all;
  }

  /** The lines as text, one substance a line, to be edited and read again. */
  public String text() {
    return String.join("\n", lines.stream().map(Line::text).toList());
  }
}
