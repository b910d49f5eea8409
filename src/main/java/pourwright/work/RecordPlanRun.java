package pourwright.work;

/** Keeps a run of the planner. */
public final class RecordPlanRun {
  private static final String VERB = "planned";
  private final Doing doing;

  RecordPlanRun(Doing doing) {
    this.doing = doing;
  }

  /** Appends the run; its number, time and deed are filled in. */
  public Outcome<PlanRun> run(Act act, PlanRun run) {
    return doing.once(
        act,
        VERB,
        turn -> {
          Deed deed = turn.deed(new Subject(Subject.Kind.PLAN_RUN, run.problemHash()));
          return Turn.done(deed, turn.books().planRuns().append(run, deed));
        },
        (books, deed) -> Doing.known(books.planRuns().ofDeed(deed.id()), deed));
  }
}
