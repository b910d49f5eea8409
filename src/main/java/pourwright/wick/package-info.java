/**
 * Where wicks stand and how they burn: layout by covering, burn-rate memory, template. In:
 * millimetres, grams an hour. Knows {@code quantity}, {@code shape}, {@code material}. Maths:
 * docs/models/wick.md.
 */
@NullMarked
package pourwright.wick;

import org.jspecify.annotations.NullMarked;
