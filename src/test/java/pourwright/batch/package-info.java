@NullMarked
package pourwright.batch;

import org.jspecify.annotations.NullMarked;
