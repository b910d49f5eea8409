package pourwright.work;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Keeps a file with something: a photo of a step, a sheet, a certificate. */
public final class AttachFile {
  private static final String VERB = "attached a file";
  private final Doing doing;
  private final AttachmentFiles files;

  AttachFile(Doing doing, AttachmentFiles files) {
    this.doing = doing;
    this.files = files;
  }

  /**
   * A file.
   *
   * @param subject what it belongs to
   * @param mediaType checked by who lets it in
   * @param name the name it came with
   */
  public record Request(Subject subject, String mediaType, String name) {}

  /** Puts the bytes on the disk first and into the books after. */
  public Outcome<Attachment> run(Act act, Request request, InputStream bytes) {
    AttachmentFiles.Kept kept;
    try {
      kept = files.keep(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return doing.once(
        act,
        VERB,
        turn -> {
          Deed deed = turn.deed(request.subject());
          Attachment attachment =
              new Attachment(
                  0,
                  request.subject(),
                  kept.sha256(),
                  kept.bytes(),
                  request.mediaType(),
                  request.name(),
                  turn.now(),
                  turn.act().by(),
                  deed.id());
          return Turn.done(deed, turn.books().attachments().append(attachment));
        },
        (books, deed) -> Doing.known(books.attachments().ofDeed(deed.id()), deed));
  }
}
