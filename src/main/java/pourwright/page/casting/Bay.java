package pourwright.page.casting;

import java.util.List;
import pourwright.batch.PieceStep;
import pourwright.page.casting.PiecesPage.Act;

/** Where empty vessels stand in the workshop, by their state, and what may happen there. */
enum Bay {
  GREEN(
      "Green",
      "green, hardening",
      "keep damp until hard",
      List.of(
          new Act(PieceStep.HARDENED.name(), "Hardened", "kept damp for its time", false),
          new Act(PieceStep.WETTED.name(), "Wet-sanded", "sanded wet and rinsed", false))),
  HARDENED(
      "Hardened",
      "hardened, drying",
      "dry to constant mass",
      List.of(
          new Act(
              PieceStep.DRIED.name(),
              "Dry",
              "two weighings at least 12 h apart, less than 0.1 % lost in 24 h",
              true),
          new Act(PieceStep.WETTED.name(), "Wetted", "wet-sanded, rinsed or rained on", false))),
  DRY(
      "Dry",
      "dry",
      "seal, test, or pour",
      List.of(
          new Act(PieceStep.SEALED.name(), "Coat on", "a seal coat went on; it dries again", false),
          new Act(
              PieceStep.HELD_WATER.name(),
              "Held water 24 h",
              "filled with water for a day, paper dry; damp from it now",
              false),
          new Act(
              PieceStep.SEEP_TEST.name(),
              "Begin seep test",
              "filled with scented wax at the highest load, on paper",
              false),
          new Act(PieceStep.LEAKED.name(), "Leaked", "paper wet, or it lost water", false),
          new Act(PieceStep.WETTED.name(), "Wetted", "got wet; it has to dry again", false))),
  DAMP(
      "Damp",
      "damp again",
      "dry to constant mass again",
      List.of(
          new Act(
              PieceStep.DRIED.name(),
              "Dry again",
              "two weighings at least 12 h apart, less than 0.1 % lost in 24 h",
              true),
          new Act(
              PieceStep.HELD_WATER.name(), "Held water 24 h", "still damp from the test", false),
          new Act(PieceStep.LEAKED.name(), "Leaked", "paper wet, or it lost water", false))),
  SEEP_TESTING(
      "SeepTesting",
      "on a seep test",
      "look at the paper after 1, 7 and 30 days",
      List.of(
          new Act(PieceStep.HELD_WAX.name(), "Held wax", "paper clean to the last look", false),
          new Act(PieceStep.LEAKED.name(), "Seeped", "oil or wax on the paper", false)));

  private final String state;
  private final String words;
  private final String next;
  private final List<Act> acts;

  Bay(String state, String words, String next, List<Act> acts) {
    this.state = state;
    this.words = words;
    this.next = next;
    this.acts = acts;
  }

  String state() {
    return state;
  }

  String words() {
    return words;
  }

  String next() {
    return next;
  }

  List<Act> acts() {
    return acts;
  }
}
