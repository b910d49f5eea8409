package pourwright.page.shelf;

import java.util.List;

/**
 * What stands behind every candle that is sold.
 *
 * @param rule her rule in words
 * @param designs each with what is missing or what changed since it was burnt
 * @param freshLots lots of wax, oil and wick that no passed test has burnt, in words
 */
public record ProofPage(String rule, List<ShelfPage.Line> designs, List<String> freshLots) {}
