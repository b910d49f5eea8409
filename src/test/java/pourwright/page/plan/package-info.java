/** The pages of the plan, through their forms. */
@NullMarked
package pourwright.page.plan;

import org.jspecify.annotations.NullMarked;
