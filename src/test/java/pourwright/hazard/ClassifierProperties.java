package pourwright.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What must hold for every mixture, whatever the tables say. */
class ClassifierProperties {
  private static final List<String> CLASSES =
      List.of(
          "Skin Sens. 1",
          "Skin Sens. 1A",
          "Skin Sens. 1B",
          "Skin Irrit. 2",
          "Skin Corr. 1",
          "Skin Corr. 1A",
          "Skin Corr. 1B",
          "Skin Corr. 1C",
          "Eye Dam. 1",
          "Eye Irrit. 2",
          "Aquatic Acute 1",
          "Aquatic Chronic 1",
          "Aquatic Chronic 2",
          "Aquatic Chronic 3",
          "Aquatic Chronic 4",
          "Acute Tox. 1 (oral)",
          "Acute Tox. 3 (oral)",
          "Acute Tox. 4 (oral)",
          "Acute Tox. 4 (inhalation)",
          "Acute Tox. 2 (dermal)",
          "Carc. 2",
          "Repr. 1B",
          "Repr. 2",
          "Muta. 2",
          "STOT SE 1",
          "STOT SE 2",
          "STOT RE 1",
          "STOT SE 3 (H336)",
          "STOT SE 3 (H335)",
          "Asp. Tox. 1",
          "Resp. Sens. 1",
          "Resp. Sens. 1B");

  @Provide
  Arbitrary<List<Ingredient>> mixtures() {
    return line().list().ofMinSize(1).ofMaxSize(7).map(ClassifierProperties::fitted);
  }

  private static Arbitrary<Ingredient> line() {
    Arbitrary<Set<HazardClass>> classes =
        Arbitraries.of(CLASSES).map(HazardClass::parse).set().ofMaxSize(5);
    Arbitrary<Double> low = Arbitraries.doubles().between(0, 1).ofScale(4);
    Arbitrary<Double> width = Arbitraries.doubles().between(0, 1).ofScale(4);
    Arbitrary<Boolean> unknown = Arbitraries.of(true, false, false);
    Arbitrary<Integer> m = Arbitraries.of(1, 10, 100);
    Arbitrary<Integer> scl = Arbitraries.of(0, 0, 1, 2);
    return Combinators.combine(classes, low, width, unknown, m, scl)
        .as(
            (c, from, more, open, factor, limit) ->
                new Ingredient(
                    "s",
                    null,
                    new Share(
                        from * from * 0.5, Math.min(1, from * from * 0.5 + more * more * 0.3)),
                    c,
                    limits(c, limit),
                    factor,
                    factor,
                    new Ingredient.AcuteFacts(
                        AcuteEstimates.NONE,
                        open && c.isEmpty() ? Set.of("oral", "inhalation") : Set.of(),
                        limit != 2)));
  }

  private static Map<HazardClass, Double> limits(Set<HazardClass> classes, int kind) {
    Map<HazardClass, Double> limits = new java.util.HashMap<>();
    for (HazardClass c : classes) {
      if (kind == 1 && Set.of(HazardKind.SKIN_SENS, HazardKind.SKIN_CORR).contains(c.kind())) {
        limits.put(c, 0.004);
      }
    }
    return limits;
  }

  /** Names the lines and shrinks them until the lower ends fit into a whole. */
  private static List<Ingredient> fitted(List<Ingredient> lines) {
    double least = lines.stream().mapToDouble(i -> i.share().low()).sum();
    double part = least > 0.9 ? 0.9 / least : 1;
    List<Ingredient> fitted = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      fitted.add(named(lines.get(i).at(lines.get(i).share().times(part)), "s" + i));
    }
    return fitted;
  }

  private static Ingredient named(Ingredient line, String name) {
    return new Ingredient(
        name,
        line.cas(),
        line.share(),
        line.classes(),
        line.specificLimits(),
        line.acuteM(),
        line.chronicM(),
        line.acute());
  }

  private static Classification classify(Regime regime, List<Ingredient> lines) {
    return Classifier.classify(
        new Mixture(regime, Form.LIQUID, Audience.PUBLIC, lines, Mixture.Tested.NOTHING));
  }

  /** The worst category of each effect; an effect that is absent is the mildest. */
  private static boolean neverMilder(
      Classification strict, Classification mild, List<Ingredient> lines) {
    for (HazardClass m : mild.hazards()) {
      boolean covered = false;
      for (HazardClass s : strict.hazards()) {
        covered |= s.detail().equals(m.detail()) && group(s).equals(group(m)) && rank(s) <= rank(m);
      }
      if (!covered) {
        return false;
      }
    }
    return strict.stops().size() >= mild.stops().size()
        && strict.namedSubstances().containsAll(sensitisers(mild, strict, lines));
  }

  /**
   * The sensitisers a milder mixture names. Of the others four names suffice (CLP Article
   * 18(3)(b)), so that one more sensitiser may push one of them out.
   */
  private static List<String> sensitisers(
      Classification mild, Classification strict, List<Ingredient> lines) {
    if (!mild.supplemental().contains("EUH208") && !strict.hazards().isEmpty()) {
      return List.of();
    }
    List<String> sensitising =
        lines.stream()
            .filter(
                line ->
                    line.classes().stream()
                        .anyMatch(
                            c ->
                                c.kind() == HazardKind.SKIN_SENS
                                    || c.kind() == HazardKind.RESP_SENS))
            .map(Ingredient::name)
            .toList();
    return mild.namedSubstances().stream().filter(sensitising::contains).toList();
  }

  private static String group(HazardClass c) {
    return switch (c.kind()) {
      case SKIN_CORR, SKIN_IRRIT -> "skin";
      case EYE_DAM, EYE_IRRIT -> "eyes";
      default -> c.kind().label();
    };
  }

  private static int rank(HazardClass c) {
    return c.kind().ordinal() * 10
        + List.of("1A", "1", "1B", "1C", "2", "3", "4", "").indexOf(c.category());
  }

  @Property
  void anInertDiluentNeverWorsensAClass(
      @ForAll("mixtures") List<Ingredient> lines, @ForAll Regime regime, @ForAll byte much) {
    double wax = (much & 0xff) / 256.0;
    List<Ingredient> diluted = new ArrayList<>();
    lines.forEach(i -> diluted.add(i.at(i.share().times(1 - wax))));
    diluted.add(
        new Ingredient(
            "wax",
            null,
            Share.of(wax),
            Set.of(),
            Map.of(),
            null,
            null,
            Ingredient.AcuteFacts.PLAIN));
    assertThat(neverMilder(classify(regime, lines), classify(regime, diluted), lines)).isTrue();
  }

  @Property
  void aSubstanceWrittenInTwoLinesIsTheSame(
      @ForAll("mixtures") List<Ingredient> lines, @ForAll Regime regime, @ForAll byte where) {
    int which = Math.floorMod(where, lines.size());
    Ingredient whole = lines.get(which);
    double part = (where & 0xff) / 255.0;
    List<Ingredient> split = new ArrayList<>(lines);
    split.set(which, whole.at(whole.share().times(part)));
    split.add(whole.at(whole.share().times(1 - part)));
    assertThat(classify(regime, split).print()).isEqualTo(classify(regime, lines).print());
  }

  @Property
  void theOrderOfTheLinesDoesNotMatter(
      @ForAll("mixtures") List<Ingredient> lines, @ForAll Regime regime, @ForAll long seed) {
    List<Ingredient> shuffled = new ArrayList<>(lines);
    Collections.shuffle(shuffled, new Random(seed));
    assertThat(classify(regime, shuffled).print()).isEqualTo(classify(regime, lines).print());
  }

  @Property
  void aRangeIsNeverMilderThanAPointWithinIt(
      @ForAll("mixtures") List<Ingredient> lines, @ForAll Regime regime, @ForAll long seed) {
    Random random = new Random(seed);
    List<Ingredient> point = new ArrayList<>();
    double left = 1 - lines.stream().mapToDouble(i -> i.share().low()).sum();
    for (Ingredient line : lines) {
      Share share = line.share();
      double more = random.nextInt(3) * 0.5 * (share.high() - share.low());
      more = Math.min(more, Math.max(0, left));
      left -= more;
      point.add(line.at(Share.of(Math.min(1, share.low() + more))));
    }
    assertThat(neverMilder(classify(regime, lines), classify(regime, point), lines)).isTrue();
  }

  @Property
  void theLabelNeverHasMoreThanSixPrecautionsAndDisposalIsAmongThemWhenAsked(
      @ForAll("mixtures") List<Ingredient> lines) {
    Classification found = classify(Regime.CLP, lines);
    assertThat(found.precautionary()).hasSizeLessThanOrEqualTo(6).doesNotHaveDuplicates();
    boolean asked =
        found.hazards().stream()
            .map(Tables.shared()::facts)
            .anyMatch(f -> f != null && f.precautions().contains("P501"));
    assertThat(found.precautionary().contains("P501")).isEqualTo(asked);
    assertThat(new LinkedHashSet<>(found.namedSubstances()))
        .hasSize(found.namedSubstances().size());
  }
}
