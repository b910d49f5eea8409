package pourwright.page;

import java.util.List;
import java.util.Map;

/**
 * Help: what is done in each place and what to beware of there. Cautions are the usual ones of the
 * workshop, common practice; the supplier's sheet and the local rules come first, and say so.
 *
 * @param sections one for each place, in the order of the navigation
 */
public record HelpPage(List<Section> sections) {
  /**
   * One place.
   *
   * @param anchor what an address of this section ends in
   * @param name the place
   * @param path its first page
   * @param purpose what is done there
   * @param cautions what to beware of
   */
  public record Section(
      String anchor, String name, String path, String purpose, List<String> cautions) {}

  private static final String FIRST = "The supplier's sheet and your local rules come first.";

  private static final Map<String, List<String>> CAUTIONS =
      Map.of(
          "now",
          List.of(
              "STOP at the head of the page says what to do when something burns, smokes or spills.",
              "A plan says when, never that something may be left alone: stay with hot wax and flames."),
          "orders",
          List.of(
              "Promise nothing that is not proved for sale: a candle is tested before it leaves."),
          "board",
          List.of(
              "A drawing and a prediction never replace a burn test.",
              "A vessel that is thin, cracked or porous can break or leak hot wax: harden it, dry it,"
                  + " test it for tightness."),
          "casting",
          List.of(
              "Dust of cement, sand and stone harms the lungs: a fitted dust mask when you open bags,"
                  + " weigh, mix dry or sand. Sand wet, wipe wet, never sweep dry.",
              "Wet mix is alkaline and burns skin and eyes: gloves and goggles. Splashes: rinse at once"
                  + " with much water; eyes for long, then to a doctor.",
              "Powder into water, slowly. Nothing of it down the drain.",
              FIRST),
          "pouring",
          List.of(
              "Never leave melting wax. Thermometer in the wax, heat off at the scent's flash point or"
                  + " when it smokes.",
              "Burning wax: heat off, lid on. Never water. A lid and an extinguisher for burning fat or"
                  + " liquid within reach.",
              "Hot wax sticks and burns: sleeves, apron, children and animals out. Burnt skin: cool"
                  + " running water, 20 minutes.",
              "Pour only into vessels that are dry: water under hot wax turns to steam and spits.",
              FIRST),
          "shelf",
          List.of(
              "Never leave a test burning alone, and none while you sleep. On stone or metal, nothing"
                  + " that burns within reach, no draught.",
              "Put it out with a lid, not with water. Wait until it is cold before you move it.",
              "End a test at once when the flame is high, soots much, the vessel is too hot to touch,"
                  + " leaks or cracks.",
              FIRST),
          "stockroom",
          List.of(
              "Scent and solvent: closed, cool, away from flames and heat; aired room.",
              "Opening bags of powder raises dust: mask on. Keep powder dry and off the floor.",
              "Read the supplier's sheet when a lot comes in; keep it with the lot."),
          "slate",
          List.of(
              "Figures are worked out from what was written down; taxes and fees by your own rules."),
          "press",
          List.of(
              "The press works out what a label must say from the sheets you typed in; you answer for"
                  + " it. Where you sell, the rules of that place count.",
              "A label never makes a candle proved: that is the test shelf's word."));

  static HelpPage of(List<Place> places) {
    return new HelpPage(
        places.stream()
            .map(
                place ->
                    new Section(
                        anchor(place.path()),
                        place.name(),
                        place.path(),
                        place.purpose(),
                        CAUTIONS.getOrDefault(anchor(place.path()), List.of())))
            .toList());
  }

  /** What the help address of a place ends in. */
  static String anchor(String path) {
    return path.equals("/") ? "now" : path.substring(1);
  }
}
