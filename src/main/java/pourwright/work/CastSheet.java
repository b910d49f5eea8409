package pourwright.work;

import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.batch.BatchPlan;
import pourwright.card.ResolvedMix;
import pourwright.cast.Mix;
import pourwright.cast.MixAmounts;
import pourwright.cast.MixSplit;
import pourwright.cast.OwnHands;
import pourwright.quantity.Sourced;

/**
 * What a cast takes, before it is begun.
 *
 * @param mix the mix card with its materials
 * @param mixVersion version of the card
 * @param ask what was asked for
 * @param hands what her own casts of the mix say
 * @param driest the mix as it is begun, with her own density where that is known
 * @param wettest the mix at the wetter end of the card's range; the same where there is one ratio
 * @param freshMl mix that the molds take, in ml, without waste
 * @param exact amounts with waste and residue, not rounded
 * @param amounts the same as a scale can weigh them
 * @param powderRange powder with the range that volume and densities leave, in g
 * @param waterRange water likewise, in g
 * @param waterMostG water at the wetter end of the card's range, in g; that of the amounts where
 *     there is one ratio
 * @param lines what is weighed, in the order of the bench
 * @param warnings what the trade would say
 * @param split how it is split so that it is poured in time; null where not even one mold is
 * @param potLifeMin pot life at the room's temperature, in min
 * @param demoldFromH earliest demold at the room's temperature, in h
 * @param plan the walk at the bench
 */
public record CastSheet(
    ResolvedMix mix,
    int mixVersion,
    Ask ask,
    OwnHands hands,
    Mix driest,
    Mix wettest,
    Sourced freshMl,
    MixAmounts exact,
    MixAmounts amounts,
    Sourced powderRange,
    Sourced waterRange,
    double waterMostG,
    List<Line> lines,
    List<String> warnings,
    @Nullable MixSplit split,
    double potLifeMin,
    double demoldFromH,
    BatchPlan plan) {

  /** Code under which mix water stands in a plan; it is no material of the stockroom. */
  public static final String WATER = "mix-water";

  /**
   * What is to be cast.
   *
   * @param mix code of the mix card
   * @param fills vessels and how many of each
   * @param waterC mix water, in °C
   * @param roomC room, in °C
   * @param stepG smallest step of the scale, in g
   */
  public record Ask(String mix, List<Fill> fills, double waterC, double roomC, double stepG) {
    /** Copies. */
    public Ask {
      fills = List.copyOf(fills);
    }

    /** Pieces in all. */
    public int pieces() {
      return fills.stream().mapToInt(Fill::count).sum();
    }
  }

  /**
   * Pieces of one vessel.
   *
   * @param vessel code of its card
   * @param count above zero
   */
  public record Fill(String vessel, int count) {}

  /**
   * Something to weigh.
   *
   * @param material code
   * @param name as it is read
   * @param grams as a scale can weigh it
   */
  public record Line(String material, String name, double grams) {}

  /** What bucket and tools keep of a mixing, in g. */
  public double lostG() {
    return hands.lostG(mix.card().losses().residueG());
  }

  /** Copies. */
  public CastSheet {
    lines = List.copyOf(lines);
    warnings = List.copyOf(warnings);
  }
}
