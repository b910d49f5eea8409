package pourwright.cost;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * A journal of double entries: every entry's postings add up to nothing, which is checked when it
 * is made. Written out it is a plain-text accounting journal: a line with the day and what
 * happened, under it the accounts with what came to each. Maths: docs/models/cost.md 8.
 *
 * @param currency of all amounts, three letters
 * @param entries in the order of their days
 * @param notes what a reader must know, written at the head
 */
public record Journal(String currency, List<Entry> entries, List<String> notes) {
  /** Keeps its own copies. */
  public Journal {
    entries = List.copyOf(entries);
    notes = List.copyOf(notes);
  }

  /** So many cents came to an account; below 0 they left it. */
  public record Posting(String account, long minor) {}

  /**
   * One thing that happened.
   *
   * @param day the studio's day
   * @param code what it is found by in the history, as {@code D12}
   * @param words what happened
   * @param postings two or more that add up to nothing
   */
  public record Entry(LocalDate day, String code, String words, List<Posting> postings) {
    /** Keeps its own copy and checks the balance. */
    public Entry {
      postings = List.copyOf(postings);
      long sum = 0;
      for (Posting posting : postings) {
        sum = Math.addExact(sum, posting.minor());
      }
      if (sum != 0) {
        throw new IllegalArgumentException("'" + words + "' is out of balance by " + sum);
      }
    }
  }

  /** What stands on each account after the last day before {@code end}; empty accounts left out. */
  public Map<String, Long> balances(LocalDate end) {
    Map<String, Long> sums = new TreeMap<>();
    for (Entry entry : entries) {
      if (entry.day().isBefore(end)) {
        entry.postings().forEach(p -> sums.merge(p.account(), p.minor(), Math::addExact));
      }
    }
    sums.values().removeIf(v -> v == 0);
    return sums;
  }

  /** What came to an account and those under it from a day until before another. */
  public long sum(String account, LocalDate from, LocalDate to) {
    long sum = 0;
    for (Entry entry : entries) {
      if (!entry.day().isBefore(from) && entry.day().isBefore(to)) {
        for (Posting posting : entry.postings()) {
          sum = Math.addExact(sum, under(posting.account(), account) ? posting.minor() : 0);
        }
      }
    }
    return sum;
  }

  private static boolean under(String account, String head) {
    return account.equals(head) || account.startsWith(head.endsWith(":") ? head : head + ":");
  }

  /**
   * The journal of a period. What stood on the accounts of what one has and owes before it is the
   * first entry; income and expenses begin at nothing.
   */
  public Journal between(LocalDate from, LocalDate to) {
    List<Posting> opening = new ArrayList<>();
    long rest = 0;
    for (Map.Entry<String, Long> balance : balances(from).entrySet()) {
      if (balance.getKey().startsWith("Assets") || balance.getKey().startsWith("Liabilities")) {
        opening.add(new Posting(balance.getKey(), balance.getValue()));
        rest += balance.getValue();
      }
    }
    List<Entry> some = new ArrayList<>();
    if (!opening.isEmpty()) {
      opening.add(new Posting(Accounts.BEFORE, -rest));
      some.add(new Entry(from, "0", "what stood there before", opening));
    }
    entries.stream()
        .filter(e -> !e.day().isBefore(from) && e.day().isBefore(to))
        .forEach(some::add);
    return new Journal(currency, some, notes);
  }

  private int decimals() {
    try {
      return Math.max(0, Currency.getInstance(currency).getDefaultFractionDigits());
    } catch (IllegalArgumentException e) {
      return 2;
    }
  }

  /** Cents as an amount of the currency, as {@code 12.50}. */
  public BigDecimal amount(long minor) {
    return BigDecimal.valueOf(minor, decimals());
  }

  /** The journal as text; line ends are single line feeds. */
  public String text() {
    StringBuilder out = new StringBuilder();
    notes.forEach(n -> out.append("; ").append(oneLine(n)).append('\n'));
    out.append("commodity ").append(amount(100_000)).append(' ').append(currency).append('\n');
    entries.stream()
        .flatMap(e -> e.postings().stream())
        .map(Posting::account)
        .distinct()
        .sorted()
        .forEach(a -> out.append("account ").append(a).append('\n'));
    out.append('\n');
    for (Entry entry : entries) {
      out.append(entry.day()).append(" (").append(oneLine(entry.code())).append(") ");
      out.append(oneLine(entry.words())).append('\n');
      for (Posting posting : entry.postings()) {
        out.append(
            String.format(
                Locale.ROOT,
                "    %-44s  %12s %s%n",
                posting.account(),
                amount(posting.minor()).toPlainString(),
                currency));
      }
      out.append('\n');
    }
    return out.toString().replace("\r\n", "\n");
  }

  /** Text that stays within its line and is no sign of the format. */
  private static String oneLine(String text) {
    return text.replaceAll("[\\p{Cntrl};|]+", " ").replace("(", "[").replace(")", "]").strip();
  }
}
