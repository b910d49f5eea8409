/**
 * Use cases, one verb each; the only room that carries values between rooms, and the unit of work.
 */
@NullMarked
package pourwright.work;

import org.jspecify.annotations.NullMarked;
