package pourwright.page.shelf;

import java.util.List;
import pourwright.page.Form;

/**
 * Reading one burning candle, on a phone.
 *
 * @param form what was typed
 * @param id the cycle's number
 * @param test the test's number
 * @param title sample and cycle
 * @param minutes minutes since lighting
 * @param lit when it was lit
 * @param burns whether it still burns
 * @param tone calm, watch or stop
 * @param call what the last reading asks for, or an empty string
 * @param rows the readings so far, newest first: minute, mass, flame, pool, depth, wall, base, seen
 */
public record CyclePage(
    Form form,
    long id,
    long test,
    String title,
    String minutes,
    String lit,
    boolean burns,
    String tone,
    String call,
    List<List<String>> rows) {}
