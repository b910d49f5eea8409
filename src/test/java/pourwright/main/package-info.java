@NullMarked
package pourwright.main;

import org.jspecify.annotations.NullMarked;
