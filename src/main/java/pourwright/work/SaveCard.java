package pourwright.work;

import java.util.Optional;

/** Saves a card as its next version, unless somebody else saved one in the meantime. */
public final class SaveCard {
  private static final String VERB = "saved a card";
  private final Doing doing;

  SaveCard(Doing doing) {
    this.doing = doing;
  }

  /**
   * What came of saving.
   *
   * @param <T> the card's record
   */
  public sealed interface Saving<T> {
    /** It is the version that counts now. */
    record Saved<T>(Deed deed, CardVersion<T> version) implements Saving<T> {}

    /**
     * Somebody saved another version since; nothing was overwritten.
     *
     * @param theirs the version that counts now
     * @param mine what was to be saved
     */
    record Conflict<T>(CardVersion<T> theirs, T mine) implements Saving<T> {}

    /** It was refused for another reason. */
    record Refused<T>(Reason reason, String sentence, String hint) implements Saving<T> {}
  }

  /**
   * A card to be saved.
   *
   * @param code its code, unique in its kind
   * @param basedOn the version one started from, 0 for a new card
   * @param body what is on it
   * @param retired true to put it away
   */
  public record Request<T>(Drawer<T> kind, String code, int basedOn, T body, boolean retired) {

    /** A card in use. */
    public static <T> Request<T> of(Drawer<T> kind, String code, int basedOn, T body) {
      return new Request<>(kind, code, basedOn, body, false);
    }
  }

  /** Saves, or shows both versions. */
  public <T> Saving<T> run(Act act, Request<T> request) {
    Outcome<CardVersion<T>> outcome =
        doing.once(
            act,
            VERB,
            turn -> save(turn, request),
            (books, deed) ->
                Doing.known(
                    books.cards().history(request.kind(), request.code()).stream()
                        .filter(v -> v.deed() == deed.id())
                        .findFirst(),
                    deed));
    if (outcome instanceof Outcome.Done<CardVersion<T>> done) {
      return new Saving.Saved<>(done.deed(), done.made());
    }
    Outcome.Refused<CardVersion<T>> refused = (Outcome.Refused<CardVersion<T>>) outcome;
    if (refused.reason() == Reason.CARD_WAS_CHANGED_MEANWHILE) {
      Optional<CardVersion<T>> theirs =
          doing.look(books -> books.cards().current(request.kind(), request.code()));
      if (theirs.isPresent()) {
        return new Saving.Conflict<>(theirs.get(), request.body());
      }
    }
    return new Saving.Refused<>(refused.reason(), refused.sentence(), refused.hint());
  }

  private static <T> Outcome<CardVersion<T>> save(Turn turn, Request<T> request) {
    DrawerBook cards = turn.books().cards();
    if (!request.code().matches("[^\\s/][^/]{0,79}")) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE,
          "'" + request.code() + "' cannot be a code",
          "use up to 80 characters without a slash");
    }
    int current = cards.current(request.kind(), request.code()).map(CardVersion::version).orElse(0);
    if (current != request.basedOn()) {
      return Outcome.refused(
          Reason.CARD_WAS_CHANGED_MEANWHILE,
          request.kind().name()
              + " "
              + request.code()
              + " is at version "
              + current
              + ", yours began from "
              + request.basedOn(),
          "look at both and save again from the newer one");
    }
    int next = cards.lastVersion(request.kind(), request.code()) + 1;
    Deed deed = turn.deed(Subject.card(request.kind(), request.code()));
    CardVersion<T> version =
        new CardVersion<>(
            request.kind(),
            request.code(),
            next,
            request.body(),
            request.retired(),
            turn.now(),
            turn.act().by(),
            deed.id());
    cards.append(version);
    return Turn.done(deed, version);
  }
}
