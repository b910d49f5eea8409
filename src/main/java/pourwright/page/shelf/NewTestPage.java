package pourwright.page.shelf;

import java.util.Map;
import pourwright.page.Form;

/** Beginning a test: the designs and the sets of rules to choose from. */
public record NewTestPage(Form form, Map<String, String> candles, Map<String, String> rules) {}
