package pourwright.work;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Customers: the one book that is edited and erased. */
public interface CustomerBook {

  /** A customer by reference; empty when erased. */
  Optional<Customer> customer(String ref);

  /** A customer of exactly that name. */
  Optional<Customer> named(String name);

  /** Customers by reference. */
  PageOf<Customer> list(@Nullable String after, int limit);

  /** Adds or changes one. Only inside a write. */
  void put(Customer customer);

  /** Erases one. Only inside a write. */
  void erase(String ref);
}
