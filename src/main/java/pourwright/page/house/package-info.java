/**
 * What belongs to the whole house and to no single place: timers, history and undo, holds, STOP,
 * finding a mark, settings, attached files.
 */
@NullMarked
package pourwright.page.house;

import org.jspecify.annotations.NullMarked;
