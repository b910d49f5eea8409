package pourwright.page.casting;

import java.util.Map;
import pourwright.page.Form;

/**
 * What is to be cast: finished strings.
 *
 * @param form what was entered
 * @param mixes mix cards by code
 * @param vessels vessels by code, with an empty choice
 * @param losses how many to cast so that a dozen is good
 */
public record NewCastPage(
    Form form, Map<String, String> mixes, Map<String, String> vessels, String losses) {}
