package pourwright.page.shelf;

import java.util.List;

/**
 * A simulation that runs or has run: finished strings.
 *
 * @param id the run's number
 * @param title what is simulated
 * @param state in words
 * @param percent how far it is
 * @param running whether it still runs
 * @param figures name and value
 * @param doubts what to doubt
 * @param scene the frame that is shown, last when nothing else was asked for
 * @param frames how many frames there are
 * @param at which frame is shown, from 0
 * @param rows the pool over time
 */
public record RunPage(
    long id,
    String title,
    String state,
    int percent,
    boolean running,
    List<List<String>> figures,
    List<String> doubts,
    Scene scene,
    int frames,
    int at,
    List<List<String>> rows) {}
