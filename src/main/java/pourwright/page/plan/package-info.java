/** The plan: a time line of hands and molds, planning again, and the calendar. */
@NullMarked
package pourwright.page.plan;

import org.jspecify.annotations.NullMarked;
