package pourwright.page.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.burn.ProofRule;
import pourwright.card.CandleDesign;
import pourwright.page.Desk;
import pourwright.quantity.Counted;
import pourwright.work.Books;
import pourwright.work.BurnTest;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;
import pourwright.work.Proving;

/** Which designs are proved for sale, which are not, and what a change of one asks for. */
final class ProofViews {
  private final Desk desk;
  private final Books books;
  private final Proving proving;

  ProofViews(Desk desk, Books books) {
    this.desk = desk;
    this.books = books;
    this.proving = new Proving(books);
  }

  /** Her rule in a sentence. */
  static String rule(Books books) {
    ProofRule rule = new Proving(books).rule();
    return "Your rule: at least "
        + Counted.of(rule.fullLives(), "full life", "full lives")
        + " over "
        + Counted.of(rule.casts(), "cast", "casts")
        + " and "
        + Counted.of(rule.pours(), "pour", "pours")
        + ", one to the very end, then one candle of every "
        + (rule.thenEveryPour() == 1 ? "" : Counted.nth(rule.thenEveryPour()) + " ")
        + "pour"
        + (rule.equals(ProofRule.house()) ? " (house)." : ".");
  }

  /** What was said of each design, without asking what changed since: enough for a glance. */
  List<ShelfPage.Line> words() {
    List<ShelfPage.Line> lines = new ArrayList<>();
    Map<String, Proving.Checked> due = proving.checkBurns();
    for (CardVersion<CandleDesign> card : books.cards().all(Drawers.CANDLE)) {
      Optional<BurnTest.Proof> word = latest(card.code(), card.version());
      lines.add(
          word.isPresent()
              ? checked(said(title(card), word.get()), word.get(), due.get(card.code()))
              : new ShelfPage.Line("", title(card), "no word given yet", "not proved", "plain"));
    }
    return lines;
  }

  /** The page of proofs: every design with what is missing or changed, and lots never burnt. */
  ProofPage page(String rule) {
    return new ProofPage(rule, designs(), proving.freshLots());
  }

  private static String title(CardVersion<CandleDesign> card) {
    return card.body().name() + " (" + card.code() + ", version " + card.version() + ")";
  }

  private List<ShelfPage.Line> designs() {
    List<ShelfPage.Line> lines = new ArrayList<>();
    Map<String, Proving.Checked> due = proving.checkBurns();
    for (CardVersion<CandleDesign> card : books.cards().all(Drawers.CANDLE)) {
      lines.add(design(card, due));
    }
    return lines;
  }

  /** A candle that is proved, with the check burn that is due. */
  private static ShelfPage.Line checked(
      ShelfPage.Line said, BurnTest.Proof word, Proving.@Nullable Checked due) {
    return due == null || !word.proved()
        ? said
        : new ShelfPage.Line(
            "/shelf/new",
            said.title(),
            said.detail() + " · " + due.sentence(),
            due.overdue() ? "waits for a check burn" : "check burn due",
            due.overdue() ? "stop" : "warn");
  }

  private ShelfPage.Line design(CardVersion<CandleDesign> card, Map<String, Proving.Checked> due) {
    Optional<BurnTest.Proof> word = latest(card.code(), card.version());
    if (word.isEmpty()) {
      String missing = String.join(", ", proving.missing(card.code(), card.version()));
      String detail = missing.isEmpty() ? "no word given yet" : "no word given yet: " + missing;
      return new ShelfPage.Line("", title(card), detail, "not proved", "plain");
    }
    ShelfPage.Line said = said(title(card), word.get());
    List<String> changes = word.get().proved() ? proving.changes(card.code()) : List.of();
    return changes.isEmpty()
        ? checked(said, word.get(), due.get(card.code()))
        : new ShelfPage.Line(
            "",
            said.title(),
            said.detail() + " · changed since: " + String.join("; ", changes),
            "needs a new test",
            "warn");
  }

  private ShelfPage.Line said(String title, BurnTest.Proof given) {
    String said = given.statement() + " · " + given.by() + ", " + desk.dayAndTime(given.at());
    boolean limited = given.statement().startsWith("limited to");
    String badge = !given.proved() ? "withdrawn" : limited ? "limited" : "proved for sale";
    return new ShelfPage.Line(
        "", title, said, badge, !given.proved() ? "stop" : limited ? "warn" : "good");
  }

  private Optional<BurnTest.Proof> latest(String code, int version) {
    for (int v = version; v >= 1; v--) {
      Optional<BurnTest.Proof> word = books.burns().proof(code, v);
      if (word.isPresent()) {
        return word;
      }
    }
    return Optional.empty();
  }
}
