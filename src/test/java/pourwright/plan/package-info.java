/** Tests of the planner's room. */
@NullMarked
package pourwright.plan;

import org.jspecify.annotations.NullMarked;
