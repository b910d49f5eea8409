package pourwright.work;

/** Stops a lot, a design or a mark: from this moment it is not drawn, picked or promised. */
public final class PlaceHold {
  static final String VERB = "placed a hold";
  private final Doing doing;

  PlaceHold(Doing doing) {
    this.doing = doing;
  }

  /**
   * Places a hold.
   *
   * @param subject a LOT, a CARD or a PIECE
   * @param reason why, in her words
   */
  public Outcome<Hold> run(Act act, Subject subject, String reason) {
    return doing.once(
        act,
        VERB,
        turn -> place(turn, subject, reason),
        (books, deed) -> Doing.known(books.holds().hold(deed.subject().number()), deed));
  }

  private static Outcome<Hold> place(Turn turn, Subject subject, String reason) {
    Books books = turn.books();
    boolean onFile =
        switch (subject.kind()) {
          case LOT -> books.lots().shelf(subject.number()).isPresent();
          case PIECE -> books.pieces().piece(subject.number()).isPresent();
          case CARD -> subject.id().matches("[a-z][a-z0-9-]*/.+");
          default -> false;
        };
    if (!onFile) {
      return Doing.notOnFile(
          subject.kind().name().toLowerCase(java.util.Locale.ROOT) + " " + subject.id());
    }
    if (reason.isBlank()) {
      return Outcome.refused(
          Reason.A_NAME_IS_NEEDED, "a hold without a reason", "say in a few words what is wrong");
    }
    long id = books.holds().nextId();
    Deed deed = turn.deed(Subject.of(Subject.Kind.HOLD, id));
    Hold hold =
        new Hold(id, subject, reason, turn.now(), turn.act().by(), null, null, null, deed.id());
    books.holds().add(hold);
    return Turn.done(deed, hold);
  }
}
