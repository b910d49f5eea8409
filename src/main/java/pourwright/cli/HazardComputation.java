package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.hazard.AcuteEstimates;
import pourwright.hazard.Audience;
import pourwright.hazard.CasNumber;
import pourwright.hazard.Classification;
import pourwright.hazard.Classifier;
import pourwright.hazard.Finding;
import pourwright.hazard.Form;
import pourwright.hazard.HazardClass;
import pourwright.hazard.HazardKind;
import pourwright.hazard.Ingredient;
import pourwright.hazard.Mixture;
import pourwright.hazard.Regime;
import pourwright.hazard.Share;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;

/** {@code hazard}: classification of a mixture and its label elements. */
final class HazardComputation implements Computation {
  private static final List<String> ROUTES = List.of("oral", "dermal", "inhalation");

  @Override
  public void compute(JsonIn in, ObjectNode out) {
    Regime regime = Regime.of(in.choice("regime", "clp", "ghs", "hazcom"));
    Form form = in.choice("form", "solid", "liquid").equals("solid") ? Form.SOLID : Form.LIQUID;
    Audience audience =
        in.choice("audience", "public", "trade").equals("public")
            ? Audience.PUBLIC
            : Audience.TRADE;
    List<Ingredient> ingredients = new ArrayList<>();
    for (JsonIn line : in.objects("ingredients", true)) {
      ingredients.add(ingredient(line));
    }
    Mixture.Tested tested =
        new Mixture.Tested(
            maybe(in, "flash_point_c", Range.CELSIUS),
            maybe(in, "initial_boiling_point_c", Range.CELSIUS),
            maybe(in, "kinematic_viscosity_mm2_per_s", Range.POSITIVE),
            maybe(in, "ph", Range.ANY));
    write(Classifier.classify(new Mixture(regime, form, audience, ingredients, tested)), out);
  }

  private static @Nullable Double maybe(JsonIn in, String name, Range range) {
    double value = in.numberOr(name, Double.NaN, range);
    return Double.isNaN(value) ? null : Double.valueOf(value);
  }

  private static Ingredient ingredient(JsonIn line) {
    String name = line.text("name");
    String cas = line.textOrNull("cas");
    Share share = share(line);
    Set<HazardClass> classes = classes(line);
    Map<HazardClass, Double> limits = limits(line);
    Ingredient.AcuteFacts acute = acute(line, classes);
    Integer acuteM = multiplier(line, "m_acute");
    Integer chronicM = multiplier(line, "m_chronic");
    try {
      return new Ingredient(
          name,
          cas == null || cas.isBlank() ? null : new CasNumber(cas.strip()),
          share,
          classes,
          limits,
          acuteM,
          chronicM,
          acute);
    } catch (OutOfRange e) {
      throw line.refuse(e);
    }
  }

  private static Share share(JsonIn line) {
    if (line.has("fraction") && (line.has("fraction_low") || line.has("fraction_high"))) {
      throw line.refuse(
          "fraction",
          "both fraction and a range are given",
          "give fraction, or fraction_low and fraction_high");
    }
    try {
      if (line.has("fraction_high") || line.has("fraction_low")) {
        return new Share(
            line.numberOr("fraction_low", 0, Range.FRACTION),
            line.number("fraction_high", Range.FRACTION));
      }
      Sourced fraction = line.sourced("fraction", Range.FRACTION);
      return new Share(Math.max(0, fraction.low()), Math.min(1, fraction.high()));
    } catch (OutOfRange e) {
      throw line.refuse(e);
    }
  }

  private static Set<HazardClass> classes(JsonIn line) {
    Set<HazardClass> classes = new LinkedHashSet<>();
    if (!line.has("classes")) {
      throw line.refuse("classes", "'classes' is missing", "an empty list says: none found");
    }
    List<String> written = line.texts("classes");
    for (int i = 0; i < written.size(); i++) {
      try {
        classes.add(HazardClass.parse(written.get(i)));
      } catch (OutOfRange e) {
        throw line.refuse("classes/" + i, e.sentence(), e.hint());
      }
    }
    return classes;
  }

  private static Map<HazardClass, Double> limits(JsonIn line) {
    Map<HazardClass, Double> limits = new LinkedHashMap<>();
    JsonIn given = line.objectOrNull("specific_limits");
    if (given == null) {
      return limits;
    }
    for (String name : given.names()) {
      if (name.endsWith("_relative_uncertainty") || name.endsWith("_origin")) {
        continue;
      }
      double limit = given.number(name, Range.FRACTION);
      if (limit == 0) {
        throw given.refuse(name, "a limit of 0 would classify everything", "0.1 % is 0.001");
      }
      try {
        limits.merge(HazardClass.parse(name), limit, Math::min);
      } catch (OutOfRange e) {
        throw given.refuse(name, e.sentence(), e.hint());
      }
    }
    return limits;
  }

  private static @Nullable Integer multiplier(JsonIn line, String name) {
    int value = line.wholeOr(name, 0, 1, 1_000_000_000);
    return value == 0 ? null : Integer.valueOf(value);
  }

  /** Routes of an ate object that are left out, and for which no class is listed, are unknown. */
  private static Ingredient.AcuteFacts acute(JsonIn line, Set<HazardClass> classes) {
    boolean additive = line.flagOr("additive", true);
    Set<String> unknown = new LinkedHashSet<>(line.texts("unknown_acute"));
    for (String route : unknown) {
      if (!ROUTES.contains(route)) {
        throw line.refuse("unknown_acute", "'" + route + "' is not a route", "use " + ROUTES);
      }
    }
    JsonIn ate = line.objectOrNull("ate");
    if (ate == null) {
      return new Ingredient.AcuteFacts(AcuteEstimates.NONE, unknown, additive);
    }
    AcuteEstimates estimates =
        new AcuteEstimates(
            maybe(ate, "oral_mg_per_kg", Range.POSITIVE),
            maybe(ate, "dermal_mg_per_kg", Range.POSITIVE),
            maybe(ate, "inhalation_vapour_mg_per_l", Range.POSITIVE),
            maybe(ate, "inhalation_dust_mist_mg_per_l", Range.POSITIVE));
    boolean classed = classes.stream().anyMatch(c -> c.kind() == HazardKind.ACUTE_TOX);
    if (!classed && !line.has("unknown_acute")) {
      unknown.addAll(estimates.missingRoutes());
    }
    return new Ingredient.AcuteFacts(estimates, unknown, additive);
  }

  private static void write(Classification found, ObjectNode out) {
    texts(out, "classes", found.classes());
    texts(out, "statements", found.statements());
    texts(out, "supplemental", found.supplemental());
    texts(out, "named_substances", found.namedSubstances());
    texts(out, "pictograms", found.pictograms());
    out.put("signal_word", found.signalWord());
    texts(out, "precautionary", found.precautionary());
    texts(out, "stops", found.stops());
    ArrayNode hazards = out.putArray("hazards");
    found.hazards().forEach(h -> hazards.add(h.fullCode()));
    ArrayNode reasons = out.putArray("reasons");
    found.reasons().forEach(r -> reason(reasons.addObject(), r));
    out.put("unknown_fraction", found.unknown());
    found.warnings().forEach(w -> out.withArray("warnings").add(w));
    out.put("note", NOTE);
  }

  /** Said with every classification. */
  static final String NOTE =
      "Worked out by the published criteria; the maker checks it against the supplier's sheet and"
          + " her local authority.";

  private static void reason(ObjectNode node, Finding finding) {
    HazardClass result = finding.result();
    node.put("endpoint", finding.endpoint());
    node.put("class", result == null ? null : result.fullCode());
    node.put("text", finding.sentence());
    ArrayNode substances = node.putArray("substances");
    for (Finding.Part part : finding.parts()) {
      ObjectNode each = substances.addObject();
      each.put("name", part.name());
      each.put("fraction", part.fraction());
      each.put("limit", part.limit());
    }
    node.put("sum", finding.sum());
    if (Double.isFinite(finding.limit())) {
      node.put("limit", finding.limit());
    }
    node.put("next", finding.distance());
    node.put("clause", finding.rule().clause());
    node.put("source", finding.rule().source());
    node.put("confidence", finding.rule().confidence());
  }

  private static void texts(ObjectNode out, String name, List<String> values) {
    ArrayNode array = out.putArray(name);
    values.forEach(array::add);
  }
}
