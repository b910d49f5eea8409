package pourwright.heat;

import pourwright.pour.Dose;

/** A breach on purpose: a calculator that knows another calculator. */
public final class SeededBreachKnowsThePour {
  private final Dose dose;

  SeededBreachKnowsThePour(Dose dose) {
    this.dose = dose;
  }

  double waxG() {
    return dose.waxG();
  }
}
