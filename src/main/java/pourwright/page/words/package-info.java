/**
 * The pages in other languages. Pages are written in English; what goes out to a device that asked
 * for another language passes the {@link pourwright.page.words.Interpreter}, who finds each English
 * phrase in a {@link pourwright.page.words.Phrasebook}. What a person wrote is left as she wrote
 * it.
 */
@NullMarked
package pourwright.page.words;

import org.jspecify.annotations.NullMarked;
