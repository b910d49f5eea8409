package pourwright.work;

import java.util.List;
import java.util.Optional;

/** What is attached to what. */
public interface AttachmentBook {

  /** Attachments of one thing, oldest first, undone deeds left out. */
  List<Attachment> of(Subject subject);

  /** One attachment by number. */
  Optional<Attachment> attachment(long id);

  /** The attachment that a deed wrote. */
  Optional<Attachment> ofDeed(long deed);

  /** The hashes of all attached files. */
  List<String> hashes();

  /** Adds one and gives it back with its number. Only inside a write. */
  Attachment append(Attachment attachment);
}
