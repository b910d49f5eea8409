/** The label press: hazard classification, labels, batch marks, sheets to print. */
@NullMarked
package pourwright.page.press;

import org.jspecify.annotations.NullMarked;
