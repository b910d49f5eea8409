/**
 * Numerical kernels on primitive arrays: conduction and melting. Nothing of candles. SI units.
 * Knows {@code quantity} only. Maths and sources: docs/models/heat.md.
 */
@NullMarked
package pourwright.heat;

import org.jspecify.annotations.NullMarked;
