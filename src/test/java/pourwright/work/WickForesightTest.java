package pourwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pourwright.burn.Burn;
import pourwright.burn.BurningWick;
import pourwright.burn.Flame;
import pourwright.burn.Room;
import pourwright.burn.Vessel;
import pourwright.heat.Melting;
import pourwright.shape.Circle;
import pourwright.shape.Solid;
import pourwright.wick.WickMemory;

/** What memory and simulation foresee of a wick that was not burnt here yet. */
class WickForesightTest {
  private static Burn candle(double diameterMm, double rate) {
    return new Burn(
        new Vessel(
            Solid.straight(new Circle(diameterMm), 90),
            70,
            7,
            9,
            new Vessel.Stuff(1.0, 1900, 950, .92)),
        new Melting(45, 52, 140e3, 2100, 2200, .20, .17, 910),
        30,
        1.2,
        List.of(new BurningWick(0, 0, rate)),
        new Flame(37.3e6, .2, .95, 25, 4, 7.5),
        new Room(21, .95, Room.Convection.usual()),
        Burn.Fineness.of(4, 5, 900, Burn.Solver.AXISYMMETRIC).withSharp(true));
  }

  private static WickForesight of(double diameterMm, WickMemory.Proposal memory) {
    return WickForesight.of(memory, rate -> candle(diameterMm, rate), true);
  }

  /** Monotonic law of the handbook of burning, row 38: a wider vessel is harder to fill. */
  @Test
  void aWickThatFillsANarrowVesselDoesNotFillAWideOne() {
    WickMemory.Proposal known = new WickMemory.Proposal(5, 4.5, 5.5, 3, 3);
    WickForesight narrow = of(60, known);
    WickForesight wide = of(120, known);
    assertThat(narrow.share()).isEqualTo(1);
    assertThat(wide.share()).isZero();
    assertThat(narrow.rate()).isEqualTo("5.0 g/h (4.5 to 5.5), from 3 tests");
    assertThat(narrow.simulated()).startsWith("full after ").endsWith(" mm deep");
    assertThat(wide.simulated()).startsWith("not full in 4 h, ");
  }

  @Test
  void whatMemoryDoesNotKnowIsForeseenLessSurely() {
    WickMemory.Proposal unknown =
        new WickMemory(5, List.of()).propose(new WickMemory.Burnt("flat", "wax", "", 0, "bollard"));
    assertThat(unknown.high() / unknown.low()).isGreaterThan(3);
    assertThat(of(75, unknown).share()).isBetween(0.25, 0.75);
  }
}
