/**
 * Classification of mixtures by the published criteria. Fractions are of mass, 0 to 1. Knows {@code
 * quantity} only. Rules and sources: docs/models/hazard.md.
 */
@NullMarked
package pourwright.hazard;

import org.jspecify.annotations.NullMarked;
