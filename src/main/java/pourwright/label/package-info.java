/**
 * Label elements, net contents, layout rules, candle marks. Knows {@code quantity} and {@code
 * hazard}. Rules and sources: docs/models/label.md.
 */
@NullMarked
package pourwright.label;

import org.jspecify.annotations.NullMarked;
