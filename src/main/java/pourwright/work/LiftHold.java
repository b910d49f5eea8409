package pourwright.work;

import java.util.Optional;

/** Lifts a hold; somebody answers for it with a full name and a reason. */
public final class LiftHold {
  static final String VERB = "lifted a hold";
  private final Doing doing;

  LiftHold(Doing doing) {
    this.doing = doing;
  }

  /**
   * Lifts a hold.
   *
   * @param name the name of who answers for it, more than initials
   * @param reason why it may be lifted
   */
  public Outcome<Hold> run(Act act, long hold, String name, String reason) {
    return doing.once(
        act,
        VERB,
        turn -> {
          Optional<Outcome<Hold>> learner = Learner.bar(turn, "lift a hold");
          if (learner.isPresent()) {
            return learner.get();
          }
          Optional<Hold> standing = turn.books().holds().hold(hold);
          if (standing.isEmpty()) {
            return Doing.notOnFile("hold " + hold);
          }
          if (!standing.get().stands()) {
            return Outcome.refused(
                Reason.IT_IS_ALREADY_ANSWERED,
                "the hold was lifted by " + standing.get().liftedBy(),
                "nothing more to do");
          }
          if (name.strip().length() < 3 || reason.isBlank()) {
            return Outcome.refused(
                Reason.A_NAME_IS_NEEDED,
                "a hold is lifted only by a named person who says why",
                "give your name in full and the reason");
          }
          Deed deed = turn.deed(Subject.of(Subject.Kind.HOLD, hold));
          turn.books().holds().lift(hold, name.strip(), reason.strip(), deed);
          return Turn.done(deed, Doing.known(turn.books().holds().hold(hold), deed));
        },
        (books, deed) -> Doing.known(books.holds().hold(hold), deed));
  }
}
