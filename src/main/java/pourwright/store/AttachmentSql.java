package pourwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import pourwright.work.Attachment;
import pourwright.work.AttachmentBook;
import pourwright.work.Subject;

/** What is attached to what, in SQL. */
final class AttachmentSql implements AttachmentBook {
  private static final String SELECT =
      """
      SELECT a.*, d.at_ms, d.by_whom FROM attachment a JOIN deed d ON d.id = a.deed_id
      WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = a.deed_id)
      """;

  private final Handle handle;

  AttachmentSql(Handle handle) {
    this.handle = handle;
  }

  private static Attachment map(ResultSet row) throws SQLException {
    return new Attachment(
        row.getLong("id"),
        DeskSql.subject(row),
        row.getString("sha256"),
        row.getLong("bytes"),
        row.getString("media_type"),
        row.getString("name"),
        Row.at(row, "at_ms"),
        row.getString("by_whom"),
        row.getLong("deed_id"));
  }

  @Override
  public List<Attachment> of(Subject subject) {
    return handle
        .createQuery(
            SELECT + " AND a.subject_kind = :kind AND a.subject_id = :subject ORDER BY a.id")
        .bind("kind", subject.kind().name())
        .bind("subject", subject.id())
        .map((row, ctx) -> map(row))
        .list();
  }

  @Override
  public Optional<Attachment> attachment(long id) {
    return Ids.row(handle, SELECT + " AND a.id = :id", id, (row, ctx) -> map(row));
  }

  @Override
  public Optional<Attachment> ofDeed(long deed) {
    return handle
        .createQuery(
            """
            SELECT a.*, d.at_ms, d.by_whom FROM attachment a JOIN deed d ON d.id = a.deed_id
            WHERE a.deed_id = :deed ORDER BY a.id
            """)
        .bind("deed", deed)
        .map((row, ctx) -> map(row))
        .findFirst();
  }

  @Override
  public List<String> hashes() {
    return handle
        .createQuery("SELECT DISTINCT sha256 FROM attachment ORDER BY sha256")
        .mapTo(String.class)
        .list();
  }

  @Override
  public Attachment append(Attachment attachment) {
    long id = Ids.next(handle, "attachment");
    handle
        .createUpdate(
            """
            INSERT INTO attachment
              (id, subject_kind, subject_id, sha256, bytes, media_type, name, deed_id)
            VALUES (:id, :kind, :subject, :sha, :bytes, :type, :name, :deed)
            """)
        .bind("id", id)
        .bind("kind", attachment.subject().kind().name())
        .bind("subject", attachment.subject().id())
        .bind("sha", attachment.sha256())
        .bind("bytes", attachment.bytes())
        .bind("type", attachment.mediaType())
        .bind("name", attachment.name())
        .bind("deed", attachment.deed())
        .execute();
    return attachment(id).orElseThrow();
  }
}
