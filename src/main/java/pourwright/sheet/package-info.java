/**
 * Paper: PDF of mix sheets, pour sheets, order of work, labels. The only importer of the PDF
 * library.
 */
@NullMarked
package pourwright.sheet;

import org.jspecify.annotations.NullMarked;
