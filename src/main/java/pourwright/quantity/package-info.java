/**
 * Mass, volume, length, temperature, area, density and money: exact at the edge (whole counts of a
 * small unit), SI doubles inside. {@link pourwright.quantity.Sourced} values carry an origin and a
 * range. Knows no other room; nothing here reads a file or a clock.
 */
@NullMarked
package pourwright.quantity;

import org.jspecify.annotations.NullMarked;
