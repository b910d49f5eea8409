package pourwright.work;

import java.time.Instant;

/**
 * A file kept with something: a photo, a safety data sheet, a certificate. The file stands beside
 * the database under its own hash.
 *
 * @param id the ledger's number
 * @param subject what it belongs to
 * @param sha256 64 lower-case hexadecimal digits
 * @param bytes its size
 * @param mediaType as {@code image/jpeg}
 * @param name the name it came with
 * @param at when it was attached
 * @param by by whom
 * @param deed the deed
 */
public record Attachment(
    long id,
    Subject subject,
    String sha256,
    long bytes,
    String mediaType,
    String name,
    Instant at,
    String by,
    long deed) {}
