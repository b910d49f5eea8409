package pourwright.work;

/**
 * A customer. Stands outside the ledger: orders hold only the reference, so that a person can be
 * erased and every trace and book stays equal.
 *
 * @param ref the reference that orders hold
 * @param name as the shop gave it, may be empty
 * @param address may be empty
 * @param email may be empty
 * @param phone may be empty
 * @param note may be empty
 */
public record Customer(
    String ref, String name, String address, String email, String phone, String note) {

  /** A customer of whom only the name is known. */
  public static Customer named(String ref, String name) {
    return new Customer(ref, name, "", "", "", "");
  }
}
