/** The first page: a clock strip of hands, molds and waits; what to do now and next. */
@NullMarked
package pourwright.page.now;

import org.jspecify.annotations.NullMarked;
