package pourwright.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.PlannedAmount;
import pourwright.batch.RecordedStep;
import pourwright.card.Card;
import pourwright.cast.Defect;
import pourwright.cast.DefectCauses;
import pourwright.cast.DemoldWindow;

/** Her finished casts with what was recorded of them, for looking at what goes with what. */
public final class CastHistory {
  /** Newest finished casts that are looked at. */
  public static final int CASTS_MOST = 300;

  private static final int JUDGED_MOST = 60;

  /** House: what counts as a warm and as a cold room, in °C. */
  private static final double WARM_C = 25;

  private static final double COLD_C = 15;

  /** House: water off the sheet by more than this is a condition of its own. */
  private static final double WATER_OFF = 0.02;

  private final List<Cast> casts;

  private CastHistory(List<Cast> casts) {
    this.casts = casts;
  }

  /**
   * A finished cast.
   *
   * @param batch the cast
   * @param readings newest value of each quantity; water is the sum
   * @param conditions what held for it, in words
   */
  public record Cast(Batch batch, Map<String, Double> readings, Set<String> conditions) {
    /** Copies. */
    public Cast {
      readings = Map.copyOf(readings);
      conditions = Set.copyOf(conditions);
    }

    private double count(Defect defect) {
      return readings.getOrDefault(defect.reading(), 0.0);
    }
  }

  /** Reads the newest finished casts. */
  public static CastHistory of(Books books) {
    Map<Long, Map<String, Double>> readings = readings(books);
    Names names = new Names(books);
    List<Cast> casts = new ArrayList<>();
    for (Batch batch : books.batches().list(BatchKind.CAST, null, CASTS_MOST).items()) {
      if (!batch.isRunning()) {
        Map<String, Double> own = readings.getOrDefault(batch.id(), Map.of());
        List<RecordedStep> steps = books.batches().steps(batch.id());
        casts.add(new Cast(batch, own, conditions(batch, own, steps, names)));
      }
    }
    return new CastHistory(List.copyOf(casts));
  }

  /** What is looked at, quantity by quantity: a statement for each and not for each cast. */
  private static Map<Long, Map<String, Double>> readings(Books books) {
    List<String> quantities = new ArrayList<>(List.of("water_g", "demold_judged_count"));
    for (Defect defect : Defect.values()) {
      quantities.add(defect.reading());
    }
    Map<Long, Map<String, Double>> all = new HashMap<>();
    for (String quantity : quantities) {
      for (Reading r : books.readings().list(quantity, null, 4 * CASTS_MOST).items()) {
        if (r.subject().kind() == Subject.Kind.BATCH) {
          Map<String, Double> own = all.computeIfAbsent(r.subject().number(), k -> new HashMap<>());
          if (quantity.equals("water_g")) {
            own.merge(quantity, r.value(), Double::sum);
          } else {
            own.putIfAbsent(quantity, r.value());
          }
        }
      }
    }
    return all;
  }

  private static Set<String> conditions(
      Batch batch, Map<String, Double> readings, List<RecordedStep> steps, Names names) {
    Set<String> held = new HashSet<>();
    held.add("mix " + names.of(Drawers.MIX, batch.plan().card()));
    for (BatchPlan.Makes makes : batch.plan().makes()) {
      String mold = makes.mold();
      held.add(
          mold == null
              ? "vessel " + names.of(Drawers.VESSEL, makes.design())
              : names.of(Drawers.MOLD, mold));
    }
    for (RecordedStep step : steps) {
      Double celsius = step.temperatureC();
      if (celsius != null && celsius >= WARM_C) {
        held.add("25 °C or warmer");
      }
      if (celsius != null && celsius <= COLD_C) {
        held.add("15 °C or colder");
      }
      step.used().stream().filter(u -> u.lot() != null).forEach(u -> held.add(names.lot(u)));
    }
    water(batch, readings.get("water_g")).ifPresent(held::add);
    Double judged = readings.get("demold_judged_count");
    if (judged != null && judged != 0) {
      held.add(judged < 0 ? "demolded too early" : "demolded too late");
    }
    return held;
  }

  /** Names as they are read, each looked up once. */
  private static final class Names {
    private final Books books;
    private final Map<String, String> known = new HashMap<>();

    Names(Books books) {
      this.books = books;
    }

    String of(Drawer<? extends Card> drawer, String code) {
      return known.computeIfAbsent(
          drawer.name() + "/" + code,
          k -> books.cards().current(drawer, code).map(c -> c.body().name()).orElse(code));
    }

    String lot(RecordedStep.Used used) {
      return known.computeIfAbsent(
          "lot/" + used.lot(),
          k -> {
            String material =
                books
                    .cards()
                    .current(Drawers.MATERIAL, used.material())
                    .map(c -> c.body().name())
                    .orElse(used.material());
            Long lot = used.lot();
            String code =
                lot == null
                    ? ""
                    : books.lots().shelf(lot).map(s -> s.lot().code()).orElse(lot.toString());
            return material + " of lot no. " + code;
          });
    }
  }

  private static Optional<String> water(Batch batch, @Nullable Double used) {
    double planned =
        batch.plan().steps().stream()
            .flatMap(s -> s.amounts().stream())
            .filter(a -> a.material().equals(CastSheet.WATER))
            .map(PlannedAmount::amount)
            .mapToDouble(a -> a.inUsualUnit())
            .sum();
    if (used == null || planned <= 0) {
      return Optional.empty();
    }
    Optional<Double> range =
        batch.plan().steps().stream()
            .filter(s -> s.key().equals(CastWalk.RANGE_WATER))
            .map(s -> s.amounts().get(0).amount().inUsualUnit())
            .findFirst();
    if (range.isPresent()) {
      boolean wet = used > planned - range.get() / 2;
      return Optional.of(wet ? "wetter half of the water range" : "drier half of the water range");
    }
    double off = used / planned - 1;
    return off > WATER_OFF
        ? Optional.of("more water than the sheet")
        : off < -WATER_OFF ? Optional.of("less water than the sheet") : Optional.empty();
  }

  /** How many casts were looked at. */
  public int size() {
    return casts.size();
  }

  /** Casts in which a defect was recorded. */
  public long with(Defect defect) {
    return casts.stream().filter(c -> c.count(defect) > 0).count();
  }

  /** What the counts say of each condition, the likeliest first. */
  public List<DefectCauses.Finding> look(Defect defect) {
    return DefectCauses.look(
        casts.stream()
            .map(c -> new DefectCauses.Seen(c.count(defect) > 0, c.conditions()))
            .toList());
  }

  /** When casts of a mix were judged early, right or late, by their age at 20 °C. */
  static DemoldWindow demolding(Books books, String mix) {
    List<DemoldWindow.Demolded> judged = new ArrayList<>();
    for (Reading age : books.readings().list("demold_age_h", null, JUDGED_MOST).items()) {
      boolean ofMix =
          books
              .batches()
              .batch(age.subject().number())
              .filter(b -> b.plan().card().equals(mix))
              .isPresent();
      if (ofMix) {
        books
            .readings()
            .newest(age.subject(), "demold_judged_count")
            .map(verdict -> DemoldWindow.Judged.values()[(int) Math.signum(verdict.value()) + 1])
            .ifPresent(j -> judged.add(new DemoldWindow.Demolded(age.value(), j)));
      }
    }
    return DemoldWindow.of(judged);
  }
}
