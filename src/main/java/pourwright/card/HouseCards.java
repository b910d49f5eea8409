package pourwright.card;

import java.util.List;

/**
 * Cards to begin with where there are none: house habits, typical and editable, never law. What a
 * supplier's sheet decides (a wax's windows, a scent's load) is not among them.
 */
public final class HouseCards {
  /** Rapid cement, 2.5 to 1 by weight: within the powder's usual water, no pigment. From memory. */
  public static final MixCard MIX =
      new MixCard(
          "house-mix",
          "House mix, rapid cement 2.5 : 1",
          "rapid-cement",
          new MixCard.Ratio(MixCard.By.MASS, 2.5, 1),
          List.of(),
          MixCard.Losses.HOUSE,
          MixCard.Times.RAPID,
          "grey",
          "House: typical, not measured here. The powder's sheet decides.");

  /** Sanded, two coats inside, proved tight. Minutes and grits: house. */
  public static final Finish FINISH =
      new Finish(
          "house-finish",
          "House finish, two coats inside",
          List.of(120, 220),
          4,
          List.of(
              new Finish.Coat("film-sealer", Finish.Where.BOTH, 2, 24.0),
              new Finish.Coat("film-sealer", Finish.Where.INSIDE, 2, 24.0)),
          168,
          true,
          "House: typical. The sealer's sheet decides coats and waits.");

  private HouseCards() {}
}
