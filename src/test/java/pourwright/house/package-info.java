@NullMarked
package pourwright.house;

import org.jspecify.annotations.NullMarked;
