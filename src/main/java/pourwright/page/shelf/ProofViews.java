package pourwright.page.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pourwright.burn.ProofRule;
import pourwright.card.CandleDesign;
import pourwright.page.Desk;
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
        + rule.fullLives()
        + " full lives over "
        + rule.casts()
        + " casts and "
        + rule.pours()
        + " pours, one to the very end, then one candle of every "
        + rule.thenEveryPour()
        + "th pour"
        + (rule.equals(ProofRule.house()) ? " (house)." : ".");
  }

  List<ShelfPage.Line> designs() {
    List<ShelfPage.Line> lines = new ArrayList<>();
    for (CardVersion<CandleDesign> card : books.cards().all(Drawers.CANDLE)) {
      lines.add(design(card));
    }
    return lines;
  }

  private ShelfPage.Line design(CardVersion<CandleDesign> card) {
    String title = card.body().name() + " (" + card.code() + ", version " + card.version() + ")";
    Optional<BurnTest.Proof> word = latest(card.code(), card.version());
    if (word.isEmpty()) {
      String missing = String.join(", ", proving.missing(card.code(), card.version()));
      String detail = missing.isEmpty() ? "no word given yet" : "no word given yet: " + missing;
      return new ShelfPage.Line("", title, detail, "not proved", "plain");
    }
    BurnTest.Proof given = word.get();
    String said = given.statement() + " · " + given.by() + ", " + desk.dayAndTime(given.at());
    if (!given.proved()) {
      return new ShelfPage.Line("", title, said, "withdrawn", "stop");
    }
    List<String> changes = proving.changes(card.code());
    if (!changes.isEmpty()) {
      return new ShelfPage.Line(
          "",
          title,
          said + " · changed since: " + String.join("; ", changes),
          "needs a new test",
          "warn");
    }
    boolean limited = given.statement().startsWith("limited to");
    return new ShelfPage.Line(
        "", title, said, limited ? "limited" : "proved for sale", limited ? "warn" : "good");
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
