@NullMarked
package pourwright.page.stockroom;

import org.jspecify.annotations.NullMarked;
