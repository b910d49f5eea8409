package pourwright.page.pouring;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.card.PourCard;
import pourwright.card.ResolvedPour;
import pourwright.material.Property;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Show;
import pourwright.pour.Blend;
import pourwright.pour.Dose;
import pourwright.pour.PitcherPlan;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;
import pourwright.quantity.Unit;
import pourwright.work.Books;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;

/** A pour card's limits and what to weigh, at any size, and one melt over several scents. */
final class BlendDesk {
  private static final int SCENTS = 4;
  private static final double USUAL_TOTAL_G = 1000;
  private static final double SCALE_G = 0.1;

  private final Desk desk;

  BlendDesk(Desk desk) {
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/pouring/blend", this::show);
    new LegalDesk(desk).addTo(routes);
  }

  private void show(Context http) {
    Form form = Form.asked(http);
    Show.page(http, "pouring/blend.jte", desk.studio().look(books -> page(books, form)));
  }

  private static Map<String, String> pours(Books books) {
    Map<String, String> pours = new LinkedHashMap<>();
    books.cards().all(Drawers.POUR).forEach(p -> pours.put(p.code(), p.body().name()));
    return pours;
  }

  private static Optional<ResolvedPour> pour(Books books, String code) {
    return books
        .cards()
        .current(Drawers.POUR, code)
        .map(CardVersion::body)
        .map((PourCard card) -> card.resolve(Drawers.book(books).materials()));
  }

  private BlendPage page(Books books, Form form) {
    Map<String, String> pours = pours(books);
    BlendPage none =
        new BlendPage(
            form, pours, "", "", List.of(), List.of(), List.of(), List.of(), "", List.of());
    String code = form.value("pour");
    double totalG = grams(form, "total", USUAL_TOTAL_G);
    double scaleG = grams(form, "scale", SCALE_G);
    Double legal = form.readIfThere("legal", "a share in per cent", LegalDesk::share).orElse(null);
    try {
      Optional<ResolvedPour> pour = pour(books, code);
      if (pour.isEmpty() || !form.ok()) {
        if (pour.isEmpty() && !code.isEmpty()) {
          form.complain("pour", "There is no pour card '" + code + "'.");
        }
        return none;
      }
      return page(form, pours, pour.get(), totalG, scaleG, legal, split(books, form, code));
    } catch (OutOfRange e) {
      form.complain("pour", e.sentence() + ": " + e.hint() + ".");
      return none;
    }
  }

  private double grams(Form form, String field, double absent) {
    return form.readIfThere(
            field,
            "a mass",
            t -> {
              double g = desk.quantities().mass(t, Unit.GRAM).grams();
              if (!(g > 0)) {
                throw new OutOfRange(field, "that is not above zero", "give a mass above 0 g");
              }
              return g;
            })
        .orElse(absent);
  }

  private static BlendPage page(
      Form form,
      Map<String, String> pours,
      ResolvedPour pour,
      double totalG,
      double scaleG,
      @Nullable Double legal,
      List<BlendPage.Pitcher> split) {
    Blend blend = pour.blend(legal);
    double onTotal = Dose.loadOfTotal(pour.card().load(), pour.card().loadOf());
    List<String> warnings = new ArrayList<>(blend.warnings());
    if (!pour.untold().isEmpty()) {
      warnings.add("No sheet tells a limit for " + String.join(", ", pour.untold()) + ".");
    }
    return new BlendPage(
        form,
        pours,
        pour.card().name(),
        String.format(
            Locale.ROOT,
            "%.2f %% on the total, %.2f %% on the wax; %.2f %% of everything poured.",
            100 * onTotal,
            100 * onTotal / (1 - onTotal),
            100 * blend.loadOfAll()),
        limits(blend),
        LegalDesk.of(pour),
        warnings,
        lines(pour, blend.weigh(totalG)),
        rounding(Dose.ofTotal(totalG, onTotal, Dose.LoadOf.TOTAL), scaleG),
        split);
  }

  private static List<BlendPage.Limit> limits(Blend blend) {
    List<BlendPage.Limit> limits = new ArrayList<>();
    for (Blend.Limit limit : blend.limits()) {
      String says = limit.exceeded() ? "exceeded" : "kept";
      limits.add(
          new BlendPage.Limit(
              limit.whose(),
              String.format(Locale.ROOT, "%.2f %%", 100 * limit.maxLoadOfTotal()),
              limits.isEmpty() ? "binds; " + says : says));
    }
    return limits;
  }

  private static List<BlendPage.Line> lines(ResolvedPour pour, List<Blend.Line> weighed) {
    List<BlendPage.Line> lines = new ArrayList<>();
    for (Blend.Line line : weighed) {
      String liquid =
          pour.fragrances().stream()
              .filter(f -> f.material().name().equals(line.name()))
              .flatMap(f -> f.material().property(Property.DENSITY_G_PER_ML).stream())
              .findFirst()
              .map(density -> liquid(line.grams(), density))
              .orElse("");
      lines.add(
          new BlendPage.Line(
              line.name(), String.format(Locale.ROOT, "%.1f g", line.grams()), liquid));
    }
    return lines;
  }

  private static String liquid(double grams, Sourced density) {
    Sourced ml = PitcherPlan.millilitres(grams, density);
    Sourced drops = PitcherPlan.drops(grams, density, PitcherPlan.DROP_ML);
    return String.format(
        Locale.ROOT,
        "%.1f ml (%.1f to %.1f), %.0f drops (%.0f to %.0f)",
        ml.value(),
        ml.low(),
        ml.high(),
        drops.value(),
        drops.low(),
        drops.high());
  }

  static String plain(double grams) {
    return java.math.BigDecimal.valueOf(grams).stripTrailingZeros().toPlainString();
  }

  private static String rounding(Dose dose, double scaleG) {
    PitcherPlan.Rounded rounded = PitcherPlan.toScale(dose, scaleG, StepView.LOAD_TOLERANCE);
    double off = 100 * rounded.loadError();
    return rounded.withinTolerance()
        ? String.format(
            Locale.ROOT,
            "On a scale of %s g: the load stays within %.1f %% of itself (house: 2 %%).",
            plain(scaleG),
            off)
        : String.format(
            Locale.ROOT,
            "On a scale of %s g the load is off by %.1f %% of itself, more than 2 %% (house)."
                + " From %.0f g in all it is not.",
            plain(scaleG),
            off,
            rounded.leastTotalG());
  }

  /** One melt of this card's wax over several scents. */
  private List<BlendPage.Pitcher> split(Books books, Form form, String code) {
    List<String> names = new ArrayList<>();
    List<Double> grams = new ArrayList<>();
    List<Double> loads = new ArrayList<>();
    Optional<ResolvedPour> base = pour(books, code);
    for (int i = 1; i <= SCENTS; i++) {
      String other = form.value("scent_" + i);
      double g = grams(form, "grams_" + i, 0);
      Optional<ResolvedPour> pour = other.isEmpty() ? Optional.empty() : pour(books, other);
      if (pour.isEmpty() || base.isEmpty() || g == 0) {
        continue;
      }
      PourCard card = pour.get().card();
      if (!card.waxes().equals(base.get().card().waxes())) {
        form.complain("scent_" + i, card.name() + " is poured in another wax.");
        continue;
      }
      names.add(card.name());
      grams.add(g);
      loads.add(Dose.loadOfTotal(card.load(), card.loadOf()));
    }
    if (names.isEmpty() || !form.ok()) {
      return List.of();
    }
    List<BlendPage.Pitcher> pitchers = new ArrayList<>();
    double wax = 0;
    for (PitcherPlan.Share share : PitcherPlan.split(names, grams, loads)) {
      wax += share.dose().waxG();
      pitchers.add(
          new BlendPage.Pitcher(
              share.scent(),
              oneDecimal(share.dose().waxG()),
              oneDecimal(share.dose().fragranceG())));
    }
    pitchers.add(new BlendPage.Pitcher("in one melt", oneDecimal(wax), ""));
    return pitchers;
  }

  private static String oneDecimal(double grams) {
    return String.format(Locale.ROOT, "%.1f g", grams);
  }
}
