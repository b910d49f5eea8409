/**
 * Wax and fragrance: blend, dose, fill, grouping, the cooling clock, tops and rest. In: grams,
 * degrees Celsius, seconds. Knows {@code quantity}, {@code shape}, {@code material}. Maths and
 * sources: docs/models/pour.md.
 */
@NullMarked
package pourwright.pour;

import org.jspecify.annotations.NullMarked;
