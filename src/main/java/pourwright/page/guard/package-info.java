/**
 * What stands at the door: host and origin checks, tokens, sessions, the passphrase, request keys,
 * headers.
 */
@NullMarked
package pourwright.page.guard;

import org.jspecify.annotations.NullMarked;
