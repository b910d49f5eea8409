/**
 * Making: casts, pours, tray cards and pieces with their states as types, marks with a check
 * character.
 */
@NullMarked
package pourwright.batch;

import org.jspecify.annotations.NullMarked;
