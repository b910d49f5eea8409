package pourwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.work.Deed;
import pourwright.work.OrderBook;
import pourwright.work.PageOf;

/** Orders in SQL. */
final class OrderSql implements OrderBook {
  private static final int CHUNK = 500;
  private static final String LINES =
      """
      SELECT l.*, t.quantity, t.due_on, t.note FROM order_line l
      JOIN order_terms t ON t.line_id = l.id AND t.deed_id = (
        SELECT MAX(n.deed_id) FROM order_terms n WHERE n.line_id = l.id
          AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = n.deed_id))
      WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = l.deed_id)
      """;

  private final Handle handle;

  OrderSql(Handle handle) {
    this.handle = handle;
  }

  /** An order's head and the key that lists go by. */
  private record Head(
      String number, String channel, @Nullable String customer, OrderState state, long first) {

    Order with(List<OrderLine> lines) {
      return new Order(number, channel, customer, state, lines);
    }
  }

  private static Head head(ResultSet row) throws SQLException {
    return new Head(
        row.getString("order_number"),
        row.getString("channel"),
        row.getString("customer"),
        OrderState.valueOf(row.getString("state")),
        row.getLong("first_fact"));
  }

  private static OrderLine line(ResultSet row) throws SQLException {
    return new OrderLine(
        row.getString("order_number"),
        row.getString("design"),
        row.getInt("nth"),
        row.getInt("quantity"),
        Row.dayOrNull(row, "due_on"),
        row.getString("note"));
  }

  private List<Order> withLines(List<Head> heads) {
    Map<String, List<OrderLine>> lines = new TreeMap<>();
    List<String> numbers = heads.stream().map(Head::number).toList();
    for (int i = 0; i < numbers.size(); i += CHUNK) {
      handle
          .createQuery(
              LINES + " AND l.order_number IN (<numbers>) AND t.quantity > 0 ORDER BY l.id")
          .bindList("numbers", numbers.subList(i, Math.min(numbers.size(), i + CHUNK)))
          .map((row, ctx) -> line(row))
          .forEach(l -> lines.computeIfAbsent(l.order(), n -> new ArrayList<>()).add(l));
    }
    return heads.stream().map(h -> h.with(lines.getOrDefault(h.number(), List.of()))).toList();
  }

  @Override
  public Optional<Order> order(String number) {
    return of(List.of(number)).stream().findFirst();
  }

  @Override
  public PageOf<Order> list(@Nullable OrderState state, @Nullable String after, int limit) {
    String only = state == null ? "" : " AND o.state = :state";
    var query =
        handle.createQuery(
            "SELECT o.* FROM order_now o WHERE o.first_fact < :below"
                + only
                + " ORDER BY o.first_fact DESC LIMIT :limit");
    if (state != null) {
      query.bind("state", state.name());
    }
    PageOf<Head> heads =
        Keys.newestFirst(query, after, limit, (row, ctx) -> head(row), Head::first);
    return new PageOf<>(withLines(heads.items()), heads.next());
  }

  @Override
  public List<Order> wanting() {
    return withLines(
        handle
            .createQuery(
                "SELECT o.* FROM order_now o WHERE o.state IN ('OPEN', 'PICKED')"
                    + " ORDER BY o.first_fact")
            .map((row, ctx) -> head(row))
            .list());
  }

  @Override
  public List<Order> of(Collection<String> numbers) {
    List<String> all = List.copyOf(numbers);
    List<Head> heads = new ArrayList<>();
    for (int i = 0; i < all.size(); i += CHUNK) {
      heads.addAll(
          handle
              .createQuery(
                  "SELECT o.* FROM order_now o WHERE o.order_number IN (<numbers>)"
                      + " ORDER BY o.first_fact")
              .bindList("numbers", all.subList(i, Math.min(all.size(), i + CHUNK)))
              .map((row, ctx) -> head(row))
              .list());
    }
    return withLines(heads);
  }

  @Override
  public Map<OrderLine.Key, Long> lineIds(String number) {
    Map<OrderLine.Key, Long> ids = new TreeMap<>();
    handle
        .createQuery(LINES + " AND l.order_number = :number ORDER BY l.id")
        .bind("number", number)
        .map((row, ctx) -> Map.entry(key(row), row.getLong("id")))
        .forEach(e -> ids.put(e.getKey(), e.getValue()));
    return ids;
  }

  private static OrderLine.Key key(ResultSet row) throws SQLException {
    return new OrderLine.Key(
        row.getString("order_number"), row.getString("design"), row.getInt("nth"));
  }

  @Override
  public Optional<OrderLine> line(long id) {
    return handle
        .createQuery(
            """
            SELECT l.*, t.quantity, t.due_on, t.note FROM order_line l
            JOIN order_terms t ON t.line_id = l.id
            WHERE l.id = :id AND t.quantity > 0 ORDER BY t.deed_id DESC LIMIT 1
            """)
        .bind("id", id)
        .map((row, ctx) -> line(row))
        .findOne();
  }

  @Override
  public Map<Long, Integer> filled(Collection<Long> lines) {
    Map<Long, Integer> filled = new TreeMap<>();
    if (lines.isEmpty()) {
      return filled;
    }
    handle
        .createQuery(
            """
            SELECT order_line_id, COUNT(*) AS n FROM piece_now
            WHERE order_line_id IN (<lines>) GROUP BY order_line_id
            """)
        .bindList("lines", List.copyOf(lines))
        .map((row, ctx) -> Map.entry(row.getLong("order_line_id"), row.getInt("n")))
        .forEach(e -> filled.put(e.getKey(), e.getValue()));
    return filled;
  }

  @Override
  public Map<OrderLine.Key, Integer> filledOfWanting() {
    Map<OrderLine.Key, Integer> filled = new TreeMap<>();
    handle
        .createQuery(
            """
            SELECT l.order_number, l.design, l.nth, COUNT(*) AS n FROM order_now o
            JOIN order_line l ON l.order_number = o.order_number
            JOIN piece_now w ON w.order_line_id = l.id
            WHERE o.state IN ('OPEN', 'PICKED')
              AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = l.deed_id)
            GROUP BY l.order_number, l.design, l.nth
            """)
        .map((row, ctx) -> Map.entry(key(row), row.getInt("n")))
        .forEach(e -> filled.put(e.getKey(), e.getValue()));
    return filled;
  }

  @Override
  public Optional<Deed> file(String fingerprint) {
    return handle
        .createQuery(
            """
            SELECT f.deed_id FROM order_file f WHERE f.fingerprint = :print
              AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = f.deed_id)
            ORDER BY f.deed_id LIMIT 1
            """)
        .bind("print", fingerprint)
        .mapTo(Long.class)
        .findOne()
        .flatMap(id -> new DeedSql(handle).deed(id));
  }

  @Override
  public List<OrderLine> linesOf(long deed) {
    return handle
        .createQuery(
            """
            SELECT l.*, t.quantity, t.due_on, t.note FROM order_terms t
            JOIN order_line l ON l.id = t.line_id
            WHERE t.deed_id = :deed AND t.quantity > 0 ORDER BY l.id
            """)
        .bind("deed", deed)
        .map((row, ctx) -> line(row))
        .list();
  }

  @Override
  public void put(Order order, Deed deed) {
    handle
        .createUpdate(
            """
            INSERT INTO order_fact (id, order_number, channel, customer, state, deed_id)
            VALUES (:id, :number, :channel, :customer, :state, :deed)
            """)
        .bind("id", Ids.next(handle, "order_fact"))
        .bind("number", order.number())
        .bind("channel", order.channel())
        .bind("customer", order.customer())
        .bind("state", order.state().name())
        .bind("deed", deed.id())
        .execute();
    retell(List.of(order.number()));
  }

  @Override
  public long put(OrderLine line, Deed deed) {
    Long known = lineIds(line.order()).get(line.key());
    long id = known == null ? Ids.next(handle, "order_line") : known;
    if (known == null) {
      handle
          .createUpdate(
              """
              INSERT INTO order_line (id, order_number, design, nth, deed_id)
              VALUES (:id, :number, :design, :nth, :deed)
              """)
          .bind("id", id)
          .bind("number", line.order())
          .bind("design", line.design())
          .bind("nth", line.nth())
          .bind("deed", deed.id())
          .execute();
    }
    terms(id, line.quantity(), Row.text(line.dueOn()), line.note(), deed);
    return id;
  }

  private void terms(
      long line, int quantity, @Nullable String dueOn, @Nullable String note, Deed deed) {
    handle
        .createUpdate(
            """
            INSERT INTO order_terms (line_id, quantity, due_on, note, deed_id)
            VALUES (:line, :quantity, :due, :note, :deed)
            """)
        .bind("line", line)
        .bind("quantity", quantity)
        .bind("due", dueOn)
        .bind("note", note)
        .bind("deed", deed.id())
        .execute();
  }

  @Override
  public void takeOff(OrderLine.Key line, Deed deed) {
    Long id = lineIds(line.order()).get(line);
    if (id != null) {
      terms(id, 0, null, null, deed);
    }
  }

  @Override
  public void keepFile(String fingerprint, String name, int lines, Deed deed) {
    handle
        .createUpdate(
            """
            INSERT INTO order_file (fingerprint, name, lines, deed_id)
            VALUES (:print, :name, :lines, :deed)
            """)
        .bind("print", fingerprint)
        .bind("name", name)
        .bind("lines", lines)
        .bind("deed", deed.id())
        .execute();
  }

  @Override
  public void retellOrdersOf(long deed) {
    retell(
        handle
            .createQuery("SELECT DISTINCT order_number FROM order_fact WHERE deed_id = :deed")
            .bind("deed", deed)
            .mapTo(String.class)
            .list());
  }

  /** Works the kept heads out anew from the newest fact that counts. */
  void retell(List<String> numbers) {
    for (String number : new LinkedHashSet<>(numbers)) {
      handle
          .createUpdate("DELETE FROM order_now WHERE order_number = :number")
          .bind("number", number)
          .execute();
      handle
          .createUpdate(
              """
              INSERT INTO order_now (order_number, channel, customer, state, first_fact)
              SELECT f.order_number, f.channel, f.customer, f.state,
                (SELECT MIN(g.id) FROM order_fact g WHERE g.order_number = f.order_number)
              FROM order_fact f WHERE f.order_number = :number
                AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = f.deed_id)
              ORDER BY f.id DESC LIMIT 1
              """)
          .bind("number", number)
          .execute();
    }
  }
}
