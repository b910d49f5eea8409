package pourwright.page.casting;

import java.util.List;

/**
 * The casting bench's first page: finished strings.
 *
 * @param purpose what is done here
 * @param running casts that are being worked on
 * @param states how many vessels stand where
 * @param ready whether there is a mix card and a vessel to begin with
 */
public record CastingPage(
    String purpose, List<Running> running, List<Standing> states, boolean ready) {

  /**
   * A running cast.
   *
   * @param mark on its tray card
   * @param path of its page
   * @param what is cast
   * @param next the next step
   */
  public record Running(String mark, String path, String what, String next) {}

  /**
   * Vessels in one state.
   *
   * @param words for the state
   * @param path of their list
   * @param count how many
   * @param next what comes next
   */
  public record Standing(String words, String path, long count, String next) {}
}
