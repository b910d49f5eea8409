@NullMarked
package pourwright.cli;

import org.jspecify.annotations.NullMarked;
