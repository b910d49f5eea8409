package pourwright.store;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import pourwright.batch.TrayCard;

/** Tray cards in SQL. A piece lies on the newest tray card that it was laid on. */
final class TraySql {
  private static final String MIXED =
      """
      EXISTS (SELECT 1 FROM tray_mixed x WHERE x.tray_id = y.id
        AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = x.deed_id)) AS mixed
      """;

  private final Handle handle;

  TraySql(Handle handle) {
    this.handle = handle;
  }

  Optional<TrayCard> tray(long id) {
    return handle
        .createQuery(
            "SELECT y.*, "
                + MIXED
                + " FROM tray y WHERE y.id = :id AND NOT EXISTS"
                + " (SELECT 1 FROM undone u WHERE u.deed_id = y.deed_id)")
        .bind("id", id)
        .map(
            (row, ctx) ->
                new TrayCard(
                    row.getLong("id"),
                    row.getString("label"),
                    pieces(row.getLong("id")),
                    row.getBoolean("mixed")))
        .findOne();
  }

  List<TrayCard> all() {
    List<Long> ids =
        handle
            .createQuery(
                """
                SELECT y.id FROM tray y
                WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = y.deed_id)
                  AND EXISTS (SELECT 1 FROM tray_piece t JOIN piece_now w ON w.piece_id = t.piece_id
                    WHERE t.tray_id = y.id AND w.state IN ('Green', 'Hardened', 'Damp', 'Dry'))
                ORDER BY y.id DESC
                """)
            .mapTo(Long.class)
            .list();
    return ids.stream()
        .flatMap(id -> tray(id).stream())
        .filter(t -> !t.pieces().isEmpty())
        .toList();
  }

  private List<Long> pieces(long tray) {
    return handle
        .createQuery(
            """
            SELECT t.piece_id FROM tray_piece t JOIN piece_now w ON w.piece_id = t.piece_id
            WHERE t.tray_id = :tray AND NOT EXISTS (
              SELECT 1 FROM tray_piece n JOIN tray y ON y.id = n.tray_id
              WHERE n.piece_id = t.piece_id AND n.tray_id > t.tray_id
                AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = y.deed_id))
            ORDER BY t.piece_id
            """)
        .bind("tray", tray)
        .mapTo(Long.class)
        .list();
  }

  TrayCard add(String label, List<Long> pieces, long deed) {
    long id = Ids.next(handle, "tray");
    handle
        .createUpdate("INSERT INTO tray (id, label, deed_id) VALUES (:id, :label, :deed)")
        .bind("id", id)
        .bind("label", label)
        .bind("deed", deed)
        .execute();
    for (long piece : pieces) {
      handle
          .createUpdate("INSERT INTO tray_piece (tray_id, piece_id) VALUES (:tray, :piece)")
          .bind("tray", id)
          .bind("piece", piece)
          .execute();
    }
    return new TrayCard(id, label, pieces, false);
  }

  void mixUp(long tray, long deed) {
    handle
        .createUpdate("INSERT INTO tray_mixed (tray_id, deed_id) VALUES (:tray, :deed)")
        .bind("tray", tray)
        .bind("deed", deed)
        .execute();
  }
}
