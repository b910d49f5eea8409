/**
 * Labels on paper: setting the words and signs of a label, PDF with embedded fonts, SVG and PNG.
 * What stands on a label is decided in {@code label}; here it is only placed.
 */
@NullMarked
package pourwright.sheet.label;

import org.jspecify.annotations.NullMarked;
