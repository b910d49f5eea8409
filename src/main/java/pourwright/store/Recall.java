package pourwright.store;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What was worked out of committed facts, kept while they stay the same. Each answer is kept with
 * the edition of the facts it was worked out of, a word that the database gives and that changes
 * whenever one of these facts is added or ceases to count; an answer of another edition is never
 * given. Only transactions that read may use it: what a transaction has written but not committed
 * must not be remembered.
 */
final class Recall {
  private static final int MOST = 400;

  private record Answer(String edition, Object value) {}

  private final Map<Object, Answer> answers =
      new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, Answer> eldest) {
          return size() > MOST;
        }
      };

  /**
   * The answer to a question at an edition.
   *
   * @param question what is asked; questions are told apart by their equality, and one question
   *     always has answers of one type
   * @param edition of all facts that the answer stands on
   * @param work works the answer out; it never changes after
   */
  @SuppressWarnings("unchecked")
  <T> T answer(Object question, String edition, Supplier<T> work) {
    Answer known = known(question);
    if (known != null && known.edition().equals(edition)) {
      return (T) known.value();
    }
    T value = work.get();
    synchronized (answers) {
      answers.put(question, new Answer(edition, value));
    }
    return value;
  }

  private @Nullable Answer known(Object question) {
    synchronized (answers) {
      return answers.get(question);
    }
  }
}
