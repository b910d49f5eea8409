/**
 * Headless commands: a JSON document in, a JSON document out, from the functions that the pages
 * use.
 */
@NullMarked
package pourwright.cli;

import org.jspecify.annotations.NullMarked;
