@NullMarked
package pourwright.page.house;

import org.jspecify.annotations.NullMarked;
