package pourwright.hazard;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The rule tables, read once from the files beside the program; a bad line stops the start. */
final class Tables {
  /** One ingredient class that gives a result at a limit by itself. */
  record SingleLimit(HazardClass ingredient, HazardClass result, double limit, Finding.Rule rule) {}

  /** How M-factors enter a term of a sum. */
  enum Multiplier {
    NONE,
    ACUTE,
    CHRONIC,
    CUTOFF_ONLY
  }

  /** One term of a sum: substances of a class count their share over the limit. */
  record Term(HazardClass ingredient, double limit, Multiplier times, double cutoff) {}

  /** A sum that gives a class when its terms reach one. */
  record Sum(String name, HazardClass result, List<Term> terms, Finding.Rule rule) {
    /** The limit of the heaviest term's plainest member: what a weighted sum is held against. */
    double base() {
      return terms.stream().mapToDouble(Term::limit).max().orElse(1);
    }
  }

  /** One category of acute toxicity for a way of exposure. */
  record AcuteBand(String exposure, String category, double bound, double pointEstimate) {}

  /** From which share a sensitiser is named although the mixture is not classified. */
  record Elicitation(HazardClass hazardClass, double limit, Finding.Rule rule) {}

  /** A precaution and how much it matters to each audience. */
  record Precaution(String code, String kind, int publicWeight, int tradeWeight) {}

  private static final Tables SHARED = new Tables();

  private final Map<Regime, List<SingleLimit>> singleLimits = new HashMap<>();
  private final Map<Regime, Map<String, Sum>> sums = new HashMap<>();
  private final List<AcuteBand> acuteBands = new ArrayList<>();
  private final Map<HazardClass, ClassFacts> facts = new LinkedHashMap<>();
  private final Map<HazardClass, Elicitation> elicitations = new HashMap<>();
  private final Map<String, Precaution> precautions = new LinkedHashMap<>();

  private Tables() {
    for (Regime regime : Regime.values()) {
      singleLimits.put(regime, new ArrayList<>());
      sums.put(regime, new LinkedHashMap<>());
    }
    rows("classes").forEach(this::addFacts);
    rows("single_limits").forEach(this::addSingleLimit);
    rows("sums").forEach(this::addTerm);
    rows("acute_toxicity").forEach(this::addAcuteBand);
    rows("elicitation").forEach(this::addElicitation);
    rows("precautions").forEach(this::addPrecaution);
  }

  static Tables shared() {
    return SHARED;
  }

  List<SingleLimit> singleLimits(Regime regime) {
    return singleLimits.getOrDefault(regime, List.of());
  }

  /** The sum of that name, or null where the rules have none. */
  @Nullable Sum sum(Regime regime, String name) {
    return sums.getOrDefault(regime, Map.of()).get(name);
  }

  List<AcuteBand> acuteBands(Exposure exposure) {
    return acuteBands.stream().filter(b -> b.exposure().equals(exposure.code())).toList();
  }

  List<ClassFacts> facts() {
    return List.copyOf(facts.values());
  }

  @Nullable ClassFacts facts(HazardClass hazardClass) {
    return facts.get(hazardClass);
  }

  @Nullable Elicitation elicitation(HazardClass hazardClass) {
    return elicitations.get(hazardClass);
  }

  @Nullable Precaution precaution(String code) {
    return precautions.get(code);
  }

  private void addFacts(Map<String, String> row) {
    HazardClass hazardClass = HazardClass.parse(row.getOrDefault("class", ""));
    facts.put(
        hazardClass,
        new ClassFacts(
            hazardClass,
            row.getOrDefault("statement", ""),
            row.getOrDefault("signal", ""),
            row.getOrDefault("pictogram", ""),
            row.getOrDefault("side", ""),
            "yes".equals(row.get("named")),
            List.of(row.getOrDefault("precautions", "").split(" ", -1))));
  }

  private void addSingleLimit(Map<String, String> row) {
    SingleLimit limit =
        new SingleLimit(
            HazardClass.parse(row.getOrDefault("ingredient", "")),
            HazardClass.parse(row.getOrDefault("result", "")),
            number(row, "limit_fraction"),
            rule(row));
    for (Regime regime : regimes(row)) {
      singleLimits.getOrDefault(regime, new ArrayList<>()).add(limit);
    }
  }

  private void addTerm(Map<String, String> row) {
    Term term =
        new Term(
            HazardClass.parse(row.getOrDefault("ingredient", "")),
            number(row, "limit_fraction"),
            Multiplier.valueOf(
                row.getOrDefault("times_m", "")
                    .toUpperCase(java.util.Locale.ROOT)
                    .replace('-', '_')),
            number(row, "cutoff_fraction"));
    String name = row.getOrDefault("sum", "");
    HazardClass result = HazardClass.parse(row.getOrDefault("result", ""));
    for (Regime regime : regimes(row)) {
      sums.getOrDefault(regime, new HashMap<>())
          .computeIfAbsent(name, n -> new Sum(n, result, new ArrayList<>(), rule(row)))
          .terms()
          .add(term);
    }
  }

  private void addAcuteBand(Map<String, String> row) {
    acuteBands.add(
        new AcuteBand(
            row.getOrDefault("route", ""),
            row.getOrDefault("category", ""),
            number(row, "bound"),
            number(row, "point_estimate")));
  }

  private void addElicitation(Map<String, String> row) {
    HazardClass hazardClass = HazardClass.parse(row.getOrDefault("class", ""));
    elicitations.put(
        hazardClass, new Elicitation(hazardClass, number(row, "limit_fraction"), rule(row)));
  }

  private void addPrecaution(Map<String, String> row) {
    String code = row.getOrDefault("code", "");
    precautions.put(
        code,
        new Precaution(
            code,
            row.getOrDefault("kind", ""),
            (int) number(row, "public_weight"),
            (int) number(row, "trade_weight")));
  }

  private static List<Regime> regimes(Map<String, String> row) {
    String written = row.getOrDefault("regimes", "");
    if (written.equals("all")) {
      return List.of(Regime.values());
    }
    List<Regime> regimes = new ArrayList<>();
    for (String code : written.split("\\|", -1)) {
      regimes.add(Regime.of(code));
    }
    return regimes;
  }

  private static Finding.Rule rule(Map<String, String> row) {
    return new Finding.Rule(
        row.getOrDefault("clause", ""),
        row.getOrDefault("source", ""),
        row.getOrDefault("confidence", ""));
  }

  private static double number(Map<String, String> row, String column) {
    return Double.parseDouble(row.getOrDefault(column, ""));
  }

  private static List<Map<String, String>> rows(String file) {
    String path = "/data/hazard/" + file + ".csv";
    try (InputStream in = Tables.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("the rule table " + path + " is missing");
      }
      BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
      return rows(path, reader.lines().toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Map<String, String>> rows(String path, List<String> lines) {
    String[] header = lines.get(0).split(",", -1);
    List<Map<String, String>> rows = new ArrayList<>();
    for (int i = 1; i < lines.size(); i++) {
      String[] cells = lines.get(i).split(",", -1);
      if (cells.length != header.length) {
        throw new IllegalStateException(
            path + " line " + (i + 1) + " has " + cells.length + " cells, not " + header.length);
      }
      Map<String, String> row = new LinkedHashMap<>();
      for (int c = 0; c < header.length; c++) {
        row.put(header[c], cells[c]);
      }
      rows.add(row);
    }
    return rows;
  }
}
