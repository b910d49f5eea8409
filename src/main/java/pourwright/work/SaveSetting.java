package pourwright.work;

/** Changes a setting of the studio; earlier values stay in the history. */
public final class SaveSetting {
  private static final String VERB = "changed a setting";
  private final Doing doing;

  SaveSetting(Doing doing) {
    this.doing = doing;
  }

  /** Saves; gives the value. */
  public Outcome<String> run(Act act, String key, String value) {
    return doing.once(
        act,
        VERB,
        turn -> {
          if (!key.matches("[a-z][a-z0-9.-]{0,79}") || key.startsWith(CloseBooks.KEY)) {
            return Outcome.refused(
                Reason.INPUT_CANNOT_BE, "'" + key + "' is not a setting", "use small letters");
          }
          Deed deed = turn.deed(new Subject(Subject.Kind.SETTING, key));
          turn.books().settings().put(key, value, deed.id());
          return Turn.done(deed, value);
        },
        (books, deed) -> books.settings().value(key).orElse(value));
  }
}
