package pourwright.work;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import pourwright.batch.BatchKind;
import pourwright.burn.ProofRule;
import pourwright.burn.TestSample;
import pourwright.card.CandleDesign;
import pourwright.material.Material;
import pourwright.material.MaterialKind;
import pourwright.quantity.Counted;
import pourwright.quantity.OutOfRange;
import pourwright.stock.Lot;
import pourwright.stock.Shelf;
import pourwright.stock.Trace.Edge;
import pourwright.stock.Trace.Kind;
import pourwright.stock.Trace.Node;

/**
 * What it still takes to declare a design proved, by the maker's own rule; what a change of it asks
 * for; and which lots of wax, oil and wick were never burnt.
 */
public final class Proving {
  /** The setting that holds her rule, as {@link ProofRule#text} writes it. */
  public static final String RULE = "proof.rule";

  private static final Set<MaterialKind> CHECKED =
      Set.of(MaterialKind.WAX, MaterialKind.FRAGRANCE, MaterialKind.WICK);
  private static final int TESTS = 200;

  private final Books books;

  /** Reads these books. */
  public Proving(Books books) {
    this.books = books;
  }

  /** Her rule; the house's where she set none or what is set cannot be read. */
  public ProofRule rule() {
    try {
      return books.settings().value(RULE).map(ProofRule::of).orElse(ProofRule.house());
    } catch (OutOfRange e) {
      return ProofRule.house();
    }
  }

  /** What the passed tests of a version of a candle's card stand on. */
  public ProofRule.Standing standing(String candle, int version) {
    int lives = 0;
    boolean veryEnd = false;
    Set<Long> casts = new LinkedHashSet<>();
    Set<Long> pours = new LinkedHashSet<>();
    for (BurnTest test : books.burns().list(candle, null, TESTS).items()) {
      BurnTest.Closed closed = test.closed();
      if (test.candleVersion() != version || closed == null || !closed.verdict().equals("pass")) {
        continue;
      }
      for (BurnTest.Sample sample : books.burns().samples(test.id())) {
        List<BurnTest.Cycle> cycles = books.burns().cycles(sample.id());
        TestSample.End end = BurnLife.end(cycles);
        boolean counts =
            end.isGood()
                && BurnLife.litEarly(cycles).isEmpty()
                && !BurnLife.wentOnTestUnrested(books, sample);
        if (counts) {
          lives++;
          veryEnd |= end.isTheVeryEnd();
          batches(sample, casts, pours);
        }
      }
    }
    return new ProofRule.Standing(lives, casts.size(), pours.size(), veryEnd, isWaxTight(candle));
  }

  private boolean isWaxTight(String candle) {
    Optional<CardVersion<CandleDesign>> card = books.cards().current(Drawers.CANDLE, candle);
    return card.isEmpty() || books.pieces().designHeldWax(card.get().body().vessel());
  }

  private void batches(BurnTest.Sample sample, Set<Long> casts, Set<Long> pours) {
    if (sample.piece() == null) {
      return; // a candle that was never in the books: nobody knows what it came from
    }
    for (Edge edge : books.trace().back(List.of(new Node(Kind.PIECE, sample.piece())))) {
      books
          .batches()
          .batch(edge.from().id())
          .ifPresent(b -> (b.plan().kind() == BatchKind.CAST ? casts : pours).add(b.id()));
    }
  }

  /** What is still missing before a version may be declared proved, in sentences. */
  public List<String> missing(String candle, int version) {
    List<String> missing = new ArrayList<>(rule().missing(standing(candle, version)));
    overdue(candle).ifPresent(missing::add);
    missing.addAll(PlasterGate.missing(books, candle));
    return missing;
  }

  /**
   * The burn of one candle of every so many pours, by candle: those of which it is due or overdue,
   * each with its sentence.
   */
  public Map<String, Checked> checkBurns() {
    ProofRule rule = rule();
    Map<String, Checked> due = new TreeMap<>();
    books
        .burns()
        .poursSinceBurnt(null)
        .forEach((candle, pours) -> checked(rule, pours.size()).ifPresent(c -> due.put(candle, c)));
    return due;
  }

  /**
   * A check burn that is due.
   *
   * @param overdue true when another pour was made without it, so that the word waits
   * @param sentence what is to be done
   */
  public record Checked(boolean overdue, String sentence) {}

  private static Optional<Checked> checked(ProofRule rule, int pours) {
    return switch (rule.checkBurn(pours)) {
      case NOT_YET -> Optional.empty();
      case DUE ->
          Optional.of(
              new Checked(
                  false,
                  Counted.of(pours, "pour", "pours")
                      + " since one was burnt: burn one candle of the latest before the next"
                      + " pour"));
      case OVERDUE ->
          Optional.of(
              new Checked(
                  true,
                  "its check burn is overdue: "
                      + Counted.of(pours, "pour", "pours")
                      + " since one was burnt, your rule says one candle of every "
                      + rule.thenEveryPour()));
    };
  }

  /** Why the word on a candle waits for its check burn; empty where none is overdue. */
  Optional<String> overdue(String candle) {
    return overdue(candle, null);
  }

  /**
   * Why the word on what came out of some pours of a candle waits for a check burn. One candle of
   * every so many pours is burnt: pours up to that one are sold meanwhile, later ones wait until it
   * has passed.
   *
   * @param pours numbers of batches, or null for the design with all its pours
   */
  Optional<String> overdue(String candle, @Nullable Collection<Long> pours) {
    List<Long> since = books.burns().poursSinceBurnt(candle).getOrDefault(candle, List.of());
    ProofRule rule = rule();
    Optional<Checked> checked = checked(rule, since.size()).filter(Checked::overdue);
    if (checked.isEmpty()
        || (pours != null
            && since.subList(rule.thenEveryPour(), since.size()).stream()
                .noneMatch(pours::contains))) {
      return Optional.empty();
    }
    return checked.map(Checked::sentence);
  }

  /**
   * Where the cards as they are now differ from what was burnt: each asks for a new test. Empty
   * where no word stands, and where nothing changed.
   */
  public List<String> changes(String candle) {
    Optional<CandleCards> now = CandleCards.now(books, candle);
    if (now.isEmpty()) {
      return List.of();
    }
    ProvedCandle proved = new ProvedCandle(books, Drawers.materials(books));
    Optional<BurnTest.Proof> word = proved.word(candle, now.get().candle().version());
    return word.filter(BurnTest.Proof::proved).isEmpty() ? List.of() : proved.against(now.get());
  }

  /** Lots with something left of wax, oil or wick that no passed test has burnt yet, in words. */
  public List<String> freshLots() {
    Set<Long> burnt = burntLots();
    List<String> fresh = new ArrayList<>();
    for (Shelf shelf : books.lots().allShelves()) {
      if (isChecked(shelf.lot()) && !burnt.contains(shelf.lot().id())) {
        fresh.add(words(shelf.lot()));
      }
    }
    return fresh;
  }

  /** Lots that these pieces were made of and no passed test has burnt yet, in words. */
  public List<String> freshLotsOf(List<Long> pieces) {
    if (pieces.isEmpty()) {
      return List.of();
    }
    Map<Long, Lot> open = new LinkedHashMap<>();
    for (long id : lotsOf(pieces)) {
      books
          .lots()
          .shelf(id)
          .map(Shelf::lot)
          .filter(this::isChecked)
          .ifPresent(lot -> open.put(id, lot));
    }
    // nearly always enough; the whole walk is asked for the rest
    open.keySet().removeAll(books.burns().weighedIntoPassed(List.copyOf(open.keySet())));
    if (!open.isEmpty()) {
      open.keySet().removeAll(burntLots());
    }
    return open.values().stream().map(Proving::words).toList();
  }

  private boolean isChecked(Lot lot) {
    return books
        .cards()
        .current(Drawers.MATERIAL, lot.material())
        .map(CardVersion::body)
        .map(Material::kind)
        .filter(CHECKED::contains)
        .isPresent();
  }

  private static String words(Lot lot) {
    return "lot " + lot.code() + " of " + lot.material() + ": one check burn before its first sale";
  }

  private Set<Long> burntLots() {
    return lotsOf(books.burns().passedPieces());
  }

  /** The lots behind pieces, all walked at once. */
  private Set<Long> lotsOf(Collection<Long> pieces) {
    Set<Node> seen = new LinkedHashSet<>();
    pieces.forEach(p -> seen.add(new Node(Kind.PIECE, p)));
    Set<Long> lots = new LinkedHashSet<>();
    Set<Node> frontier = new LinkedHashSet<>(seen);
    while (!frontier.isEmpty()) {
      Set<Node> next = new LinkedHashSet<>();
      for (Edge edge : books.trace().back(frontier)) {
        if (seen.add(edge.from())) {
          next.add(edge.from());
          if (edge.from().kind() == Kind.LOT) {
            lots.add(edge.from().id());
          }
        }
      }
      frontier = next;
    }
    return lots;
  }
}
