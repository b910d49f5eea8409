@NullMarked
package pourwright.sheet.label;

import org.jspecify.annotations.NullMarked;
