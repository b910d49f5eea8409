/**
 * Outlines, solids and vessels: volumes, areas, walls, centres of gravity, tipping. In and out:
 * millimetres, square millimetres, millilitres. Knows {@code quantity}. Maths and sources:
 * docs/models/shape.md.
 */
@NullMarked
package pourwright.shape;

import org.jspecify.annotations.NullMarked;
