package pourwright.work;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * Keeps what is typed into a long form until the form itself is kept. A draft is no deed: it stands
 * in no history and is written over. One whose request was done is gone, even where the program was
 * killed between the two.
 */
public final class KeepDrafts {
  /** Longest draft, characters. */
  public static final int TYPED_MAX = 100_000;

  /** So long a draft waits; common practice, no source. */
  public static final Duration KEPT_FOR = Duration.ofDays(30);

  /** So many forms of one device are kept at once; common practice, no source. */
  private static final int FORMS_MAX = 50;

  private final Doing doing;

  KeepDrafts(Doing doing) {
    this.doing = doing;
  }

  /**
   * Saves what was typed; it is on the disk when this returns. Gives the moment, or nothing when
   * the form was kept meanwhile: then there is nothing left to save.
   */
  public Optional<Instant> save(String device, String form, String requestKey, String typed) {
    Instant now = doing.now();
    return doing.aside(
        books -> {
          if (books.deeds().ofRequest(requestKey).isPresent()) {
            books.drafts().drop(device, form);
            return Optional.<Instant>empty();
          }
          Draft draft = new Draft(device, form, requestKey, typed, now);
          books.drafts().put(draft);
          books.drafts().tidy(now.minus(KEPT_FOR), draft, FORMS_MAX - 1);
          return Optional.of(now);
        });
  }

  /** What was typed into a form on a device and not kept. */
  public Optional<Draft> find(String device, String form) {
    return doing.look(
        books ->
            books
                .drafts()
                .draft(device, form)
                .filter(d -> d.at().isAfter(doing.now().minus(KEPT_FOR)))
                .filter(d -> books.deeds().ofRequest(d.requestKey()).isEmpty()));
  }

  /** Throws a draft away. */
  public void drop(String device, String form) {
    if (doing.look(books -> books.drafts().draft(device, form)).isPresent()) {
      doing.aside(
          books -> {
            books.drafts().drop(device, form);
            return form;
          });
    }
  }
}
