/**
 * Web pages, one package for each place: form in, use case, finished strings out. The only importer
 * of the web framework.
 */
@NullMarked
package pourwright.page;

import org.jspecify.annotations.NullMarked;
