package pourwright.page.shelf;

import pourwright.page.Form;

/**
 * What to test next.
 *
 * @param form the candidates as typed
 * @param advice which one and why, or an empty string
 * @param outlook how many tests to expect, or an empty string
 */
public record NextPage(Form form, String advice, String outlook) {}
