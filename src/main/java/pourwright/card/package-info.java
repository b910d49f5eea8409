/**
 * What she has written down: molds, vessels, mix cards, pour cards and candle designs. A written
 * form holds codes; its resolved form holds values and is what the calculators take.
 */
@NullMarked
package pourwright.card;

import org.jspecify.annotations.NullMarked;
