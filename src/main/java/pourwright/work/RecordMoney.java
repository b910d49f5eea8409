package pourwright.work;

import java.util.List;
import java.util.Optional;
import pourwright.cost.MoneyKind;

/** Writes down money that came or went, and prices that were agreed. */
public final class RecordMoney {
  private static final String VERB = "wrote money down";
  private static final long MOST = 100_000_000_00L;
  private final Doing doing;

  RecordMoney(Doing doing) {
    this.doing = doing;
  }

  /** Writes them all or none. */
  public Outcome<List<MoneyFact>> run(Act act, List<MoneyFact> facts) {
    return doing.once(
        act, VERB, turn -> record(turn, facts), (books, deed) -> books.money().ofDeed(deed.id()));
  }

  private static Outcome<List<MoneyFact>> record(Turn turn, List<MoneyFact> facts) {
    if (facts.isEmpty()) {
      return Outcome.refused(Reason.INPUT_CANNOT_BE, "no amount is given", "give at least one");
    }
    for (MoneyFact fact : facts) {
      Optional<Outcome<List<MoneyFact>>> refusal = refusal(turn, fact);
      if (refusal.isPresent()) {
        return refusal.get();
      }
    }
    String order = facts.get(0).order();
    Deed deed =
        turn.deed(
            order == null
                ? new Subject(Subject.Kind.STUDIO, "money")
                : new Subject(Subject.Kind.ORDER, order));
    return Turn.done(deed, facts.stream().map(f -> turn.books().money().append(f, deed)).toList());
  }

  private static Optional<Outcome<List<MoneyFact>>> refusal(Turn turn, MoneyFact fact) {
    if (fact.minor() < 0 || fact.minor() > MOST) {
      return Optional.of(
          Outcome.refused(
              Reason.INPUT_CANNOT_BE,
              "an amount of " + fact.minor() + " cents",
              "give it as it was paid; money that goes back is a refund"));
    }
    String keeps = turn.books().settings().value("currency").orElse("EUR");
    if (!keeps.equals(fact.currency())) {
      return Optional.of(
          Outcome.refused(
              Reason.PRICE_IS_IN_ANOTHER_CURRENCY,
              "the amount is in " + fact.currency() + " and the studio keeps its books in " + keeps,
              "convert it at the rate you paid and give it in " + keeps));
    }
    Optional<Outcome<List<MoneyFact>>> closed = CloseBooks.refusal(turn.books(), fact.day());
    if (closed.isPresent()) {
      return closed;
    }
    boolean known = fact.order() == null || turn.books().orders().order(fact.order()).isPresent();
    boolean line = fact.line() == null || turn.books().orders().line(fact.line()).isPresent();
    if (!known || !line) {
      return Optional.of(Doing.notOnFile("order " + fact.order()));
    }
    if (fact.kind() == MoneyKind.AGREED && fact.line() == null) {
      return Optional.of(
          Outcome.refused(
              Reason.INPUT_CANNOT_BE, "a price for no line", "say which line it was agreed for"));
    }
    return Optional.empty();
  }
}
