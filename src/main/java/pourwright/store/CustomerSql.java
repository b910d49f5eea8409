package pourwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import pourwright.work.Customer;
import pourwright.work.CustomerBook;
import pourwright.work.PageOf;

/** Customers in SQL. */
final class CustomerSql implements CustomerBook {
  private final Handle handle;

  CustomerSql(Handle handle) {
    this.handle = handle;
  }

  private static Customer map(ResultSet row) throws SQLException {
    return new Customer(
        row.getString("ref"),
        row.getString("name"),
        row.getString("address"),
        row.getString("email"),
        row.getString("phone"),
        row.getString("note"));
  }

  @Override
  public Optional<Customer> customer(String ref) {
    return handle
        .createQuery("SELECT * FROM customer WHERE ref = :ref")
        .bind("ref", ref)
        .map((row, ctx) -> map(row))
        .findOne();
  }

  @Override
  public Optional<Customer> named(String name) {
    return handle
        .createQuery("SELECT * FROM customer WHERE name = :name ORDER BY ref LIMIT 1")
        .bind("name", name)
        .map((row, ctx) -> map(row))
        .findOne();
  }

  @Override
  public PageOf<Customer> list(@Nullable String after, int limit) {
    List<Customer> rows =
        handle
            .createQuery("SELECT * FROM customer WHERE ref > :above ORDER BY ref LIMIT :limit")
            .bind("above", Keys.above(after))
            .bind("limit", limit + 1)
            .map((row, ctx) -> map(row))
            .list();
    return PageOf.cut(rows, limit, Customer::ref);
  }

  @Override
  public void put(Customer customer) {
    handle
        .createUpdate(
            """
            INSERT INTO customer (ref, name, address, email, phone, note)
            VALUES (:ref, :name, :address, :email, :phone, :note)
            ON CONFLICT (ref) DO UPDATE SET name = :name, address = :address, email = :email,
              phone = :phone, note = :note
            """)
        .bind("ref", customer.ref())
        .bind("name", customer.name())
        .bind("address", customer.address())
        .bind("email", customer.email())
        .bind("phone", customer.phone())
        .bind("note", customer.note())
        .execute();
  }

  @Override
  public void erase(String ref) {
    handle.createUpdate("DELETE FROM customer WHERE ref = :ref").bind("ref", ref).execute();
  }
}
