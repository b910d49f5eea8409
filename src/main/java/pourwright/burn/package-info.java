/**
 * Burn logs, criteria, verdicts, and the candle simulation on {@code heat}. A prediction never
 * replaces a burn test. Knows {@code quantity}, {@code shape}, {@code material}, {@code heat}.
 * Maths and sources: docs/models/burn.md.
 */
@NullMarked
package pourwright.burn;

import org.jspecify.annotations.NullMarked;
