/**
 * Proportioning of a mix, water, maturity and set, hardening, drying, tightness, leftover, defects.
 * In: grams, millilitres, degrees Celsius, hours. Knows {@code quantity}, {@code shape}, {@code
 * material}. Maths and sources: docs/models/cast.md.
 */
@NullMarked
package pourwright.cast;

import org.jspecify.annotations.NullMarked;
