package pourwright.work;

/** Changes and erases customers; the history says that it was done and not who it was. */
public final class KeepCustomers {
  private static final String CHANGED = "changed a customer";
  private static final String ERASED = "erased a customer";
  private final Doing doing;

  KeepCustomers(Doing doing) {
    this.doing = doing;
  }

  /** Adds or changes a customer. */
  public Outcome<Customer> put(Act act, Customer customer) {
    return doing.once(
        act,
        CHANGED,
        turn -> {
          Deed deed = turn.deed(new Subject(Subject.Kind.STUDIO, customer.ref()));
          turn.books().customers().put(customer);
          return Turn.done(deed, customer);
        },
        (books, deed) -> customer);
  }

  /** Erases a customer for good; an undo does not bring the person back. */
  public Outcome<String> erase(Act act, String ref) {
    return doing.once(
        act,
        ERASED,
        turn -> {
          if (turn.books().customers().customer(ref).isEmpty()) {
            return Doing.notOnFile("customer " + ref);
          }
          Deed deed = turn.deed(new Subject(Subject.Kind.STUDIO, ref));
          turn.books().customers().erase(ref);
          return Turn.done(deed, ref);
        },
        (books, deed) -> ref);
  }
}
