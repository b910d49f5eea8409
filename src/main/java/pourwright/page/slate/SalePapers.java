package pourwright.page.slate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pourwright.cost.MoneyKind;
import pourwright.label.Language;
import pourwright.label.Texts;
import pourwright.page.Desk;
import pourwright.work.MoneyFact;
import pourwright.work.PaperSheet;
import pourwright.work.PaperSheet.Block;
import pourwright.work.PaperSheet.Column;
import pourwright.work.PaperSheet.How;
import pourwright.work.SaleSums;

/** Quote, invoice and packing slip of an order. */
final class SalePapers {
  private static final List<Column> PRICED =
      List.of(
          Column.of("Candle", 3),
          new Column("Pieces", 0.8, How.RIGHT),
          new Column("Each", 1.3, How.RIGHT),
          new Column("Together", 1.4, How.RIGHT));

  private final Desk desk;
  private final Map<String, String> settings;

  SalePapers(Desk desk) {
    this.desk = desk;
    this.settings = desk.studio().look(books -> books.settings().all());
  }

  private String setting(String key) {
    return settings.getOrDefault(key, "");
  }

  private PaperSheet sheet(String title, SaleSums sums, List<Block> blocks) {
    List<Block> all = new ArrayList<>();
    String address =
        String.join(
            ", ",
            java.util.stream.Stream.of("maker.name", "maker.address", "maker.web", "maker.phone")
                .map(this::setting)
                .filter(v -> !v.isBlank())
                .toList());
    if (!address.isEmpty()) {
      all.add(new Block.Text("From " + address, false));
    }
    String customer = customer(sums);
    if (!customer.isEmpty()) {
      all.add(new Block.Text("For " + customer, true));
    }
    all.addAll(blocks);
    return new PaperSheet(
        setting("studio.name").isBlank() ? "Pourwright" : setting("studio.name"),
        desk.dayAndTime(desk.now()),
        title,
        "order " + sums.order().number() + ", " + desk.day(desk.today()),
        all);
  }

  private String customer(SaleSums sums) {
    String ref = sums.order().customer();
    if (ref == null) {
      return "";
    }
    return desk.studio()
        .look(books -> books.customers().customer(ref))
        .map(c -> (c.name() + " " + c.address()).strip().replaceAll("\\s+", " "))
        .orElse("");
  }

  private static Block lines(SaleSums sums) {
    List<List<String>> rows = new ArrayList<>();
    for (SaleSums.Line line : sums.lines()) {
      Long each = line.eachMinor();
      rows.add(
          List.of(
              line.name(),
              "" + line.pieces(),
              each == null ? "to be agreed" : sums.words(each),
              sums.words(line.sumMinor())));
    }
    rows.add(List.of("All together", "", "", sums.words(sums.totalMinor())));
    return new Block.Grid(PRICED, rows);
  }

  private Block tax() {
    String said = setting("books.tax");
    return new Block.Text(
        said.isBlank() ? "Whether tax is in these prices is not said." : "Tax: " + said + ".",
        false);
  }

  private String terms(SaleSums sums) {
    String terms = setting("slate.terms." + sums.order().channel());
    return terms.isBlank() ? "" : "Terms: " + terms + ".";
  }

  PaperSheet quote(SaleSums sums) {
    List<Block> blocks = new ArrayList<>(List.of(lines(sums), tax()));
    String terms = terms(sums);
    if (!terms.isEmpty()) {
      blocks.add(new Block.Text(terms, false));
    }
    blocks.add(new Block.Text("A quote: nothing is owed until the order is taken.", false));
    return sheet("Quote", sums, blocks);
  }

  PaperSheet invoice(SaleSums sums) {
    List<Block> blocks = new ArrayList<>(List.of(lines(sums), tax()));
    for (MoneyFact fact : sums.money()) {
      if (List.of(
              MoneyKind.PAID,
              MoneyKind.DEPOSIT,
              MoneyKind.VOUCHER_USED,
              MoneyKind.COMMISSION,
              MoneyKind.REFUND)
          .contains(fact.kind())) {
        blocks.add(
            new Block.Text(
                fact.kind().words() + ", " + desk.day(fact.day()) + ": " + sums.words(fact.minor()),
                false));
      }
    }
    blocks.add(new Block.Text("To pay: " + sums.words(sums.totalMinor() - sums.paidMinor()), true));
    String terms = terms(sums);
    if (!terms.isEmpty()) {
      blocks.add(new Block.Text(terms, false));
    }
    return sheet("Invoice", sums, blocks);
  }

  /** Without prices; with the marks, and the cautions that go into the box. */
  PaperSheet slip(SaleSums sums) {
    List<List<String>> rows = new ArrayList<>();
    for (SaleSums.Line line : sums.lines()) {
      List<Long> picked = desk.studio().look(books -> books.recalls().pickedForLine(line.id()));
      List<String> marks =
          picked.stream()
              .flatMap(p -> desk.studio().look(b -> b.pieces().piece(p)).stream())
              .map(p -> p.mark().text())
              .toList();
      rows.add(List.of(line.name(), "" + line.pieces(), String.join(" ", marks)));
    }
    return sheet(
        "Packing slip",
        sums,
        List.of(
            new Block.Grid(
                List.of(
                    new Column("Candle", 2.4, How.TICK),
                    new Column("Pieces", 0.7, How.RIGHT),
                    Column.of("Marks", 3)),
                rows),
            new Block.Grid(
                List.of(new Column("In the box, too", 1, How.TICK)),
                List.of(
                    List.of("care card"),
                    List.of("warning"),
                    List.of("packed tight: dropped once, nothing moved"))),
            new Block.Sign(
                List.of(
                    Texts.of("burn-within-sight", Language.ENGLISH),
                    Texts.of("away-from-fire", Language.ENGLISH),
                    Texts.of("away-from-children", Language.ENGLISH)))));
  }
}
