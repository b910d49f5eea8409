/**
 * What things are made of: powders, sand, pigments, sealers, waxes, fragrances, wicks, packaging,
 * each a set of properties with their origin. Knows {@code quantity}.
 */
@NullMarked
package pourwright.material;

import org.jspecify.annotations.NullMarked;
