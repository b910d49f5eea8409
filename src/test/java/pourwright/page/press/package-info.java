@NullMarked
package pourwright.page.press;

import org.jspecify.annotations.NullMarked;
