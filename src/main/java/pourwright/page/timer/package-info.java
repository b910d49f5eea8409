/** Timers that ring on every open page: the stream of bells and the answer to one. */
@NullMarked
package pourwright.page.timer;

import org.jspecify.annotations.NullMarked;
