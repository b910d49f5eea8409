package pourwright.page;

import java.util.List;
import java.util.Optional;
import pourwright.page.guard.Token;

/**
 * All that the layout shows around a page.
 *
 * @param studio the studio's name
 * @param path the path of this page
 * @param nav the nine places
 * @param token the form token of this visit
 * @param look light or dark, contrast
 * @param initials who works at this device, or an empty string
 * @param units the units she chose
 * @param hands others who worked at this device, the latest first
 * @param bells the timers
 * @param hot whether STOP stands on the page
 * @param lastDeed what Undo would take back, or an empty string
 * @param lastDeeds numbers of what it would take back, or an empty string
 * @param said what the last act came to
 * @param doneDeeds numbers of the deeds that act was, where an Undo of its own stands beside it
 * @param assets a word that changes when style or script change
 * @param shared whether other devices can reach this studio
 * @param sample whether this is the sample studio
 * @param decimalMark the mark between a number's whole and its parts here, such as {@code .}
 * @param answers whether this page answers a form that was sent, and shows what was typed
 * @param entered false for a stranger, who is shown the way in and nothing of the studio
 */
public record Frame(
    String studio,
    String path,
    List<Nav> nav,
    String token,
    Look look,
    String initials,
    List<String> hands,
    Units units,
    List<Bell> bells,
    boolean hot,
    String lastDeed,
    String lastDeeds,
    Optional<Said> said,
    String doneDeeds,
    String assets,
    boolean shared,
    boolean sample,
    String decimalMark,
    boolean answers,
    boolean entered) {

  /**
   * One entry of the navigation.
   *
   * @param name the place
   * @param path its first page
   * @param here whether this page belongs to it
   */
  public record Nav(String name, String path, boolean here) {}

  /** A fresh request key; every form carries its own, so that a double tap counts once. */
  public String newKey() {
    return Token.random();
  }

  /** The name of the place this page belongs to, or an empty string. */
  public String place() {
    return nav.stream().filter(Nav::here).map(Nav::name).findFirst().orElse("");
  }

  /** Where help for this page is. */
  public String help() {
    return nav.stream()
        .filter(Nav::here)
        .map(here -> "/help#" + HelpPage.anchor(here.path()))
        .findFirst()
        .orElse("/help");
  }

  /** Whether a timer rings now. */
  public boolean rings() {
    return bells.stream().anyMatch(Bell::rings);
  }
}
