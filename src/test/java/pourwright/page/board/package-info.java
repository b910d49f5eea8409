@NullMarked
package pourwright.page.board;

import org.jspecify.annotations.NullMarked;
