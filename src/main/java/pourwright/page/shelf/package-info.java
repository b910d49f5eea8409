/** The test shelf: burn tests, verdicts, what to test next, proved for sale or not. */
@NullMarked
package pourwright.page.shelf;

import org.jspecify.annotations.NullMarked;
