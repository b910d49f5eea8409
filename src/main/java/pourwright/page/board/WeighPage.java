package pourwright.page.board;

import pourwright.page.Form;

/**
 * Weighing with water: finished strings.
 *
 * @param name of the vessel
 * @param root its path
 * @param form what was entered
 * @param version of the card
 * @param cavityNow what the cavity holds by what is known, with its range
 * @param castNow mix of one piece by what is known, with its range
 */
public record WeighPage(
    String name, String root, Form form, int version, String cavityNow, String castNow) {}
