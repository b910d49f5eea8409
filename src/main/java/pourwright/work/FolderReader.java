package pourwright.work;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import pourwright.hazard.Classification;
import pourwright.hazard.Finding;
import pourwright.label.LabelRequest;
import pourwright.label.LabelText;
import pourwright.label.Language;
import pourwright.label.Texts;
import pourwright.stock.Lot;
import pourwright.stock.Trace;
import pourwright.work.ProofFolder.Section;

/** Reads out of the books what goes into a candle's proof folder. */
public final class FolderReader {
  /** Usual cautions of the work, in our own words. */
  private static final List<String> CAUTIONS =
      List.of(
          "A test or a prediction does not replace looking after a burning candle: never alone, away"
              + " from what can catch fire, away from children and pets.",
          "Each vessel, wax and wick together is tested to the last cycle before it is sold; another"
              + " dye, oil, sealer or wick is another candle.",
          "A vessel is dry before it is filled: water in the wall can make steam and crack it.",
          "A fragrance oil may irritate or cause allergy: its sheet is read for this lot.",
          "Local rules and the suppliers' sheets come before anything written here.");

  private static final DateTimeFormatter DAY = DateTimeFormatter.ISO_LOCAL_DATE;

  private final Books books;
  private final ZoneId zone;

  /**
   * @param books as they are now
   * @param zone of the studio, for days
   */
  public FolderReader(Books books, ZoneId zone) {
    this.books = books;
    this.zone = zone;
  }

  /**
   * The folder of a candle.
   *
   * @param label what its label stands on
   * @param request what the label is made from
   * @param text the label
   * @param set how it is set
   * @param riskNotes the maker's words on risks, one paragraph a line
   */
  public ProofFolder folder(
      CandleLabel label,
      LabelRequest request,
      LabelText text,
      IssuedFolder.Label set,
      String riskNotes) {
    CandleCards cards = label.cards();
    Optional<BurnTest.Proof> word =
        new ProvedCandle(books, Drawers.materials(books))
            .word(cards.candle().code(), cards.candle().version());
    int proved = word.map(BurnTest.Proof::candleVersion).orElse(label.version());
    List<BurnTest> tests = tests(cards.candle().code(), proved);
    List<Section> sections = new ArrayList<>();
    sections.add(head(label, word));
    sections.add(versions(cards));
    sections.addAll(new FolderCards(label).sections());
    sections.add(lots(tests, set.mark()));
    sections.add(classification(label));
    sections.add(reasons(label.classification()));
    sections.addAll(new FolderTests(books, zone).sections(tests));
    sections.add(label(request, text, set));
    sections.add(risks(riskNotes));
    List<String> against = new ArrayList<>(label.gate().reasons());
    pourwright.label.LabelPress.missing(request).forEach(m -> against.add("missing: " + m));
    return new ProofFolder(
        cards.candle().code(), cards.candle().body().name(), label.version(), sections, against);
  }

  private List<BurnTest> tests(String candle, int version) {
    return books.burns().list(candle, null, 100).items().stream()
        .filter(t -> t.candleVersion() == version)
        .sorted((a, b) -> Long.compare(a.id(), b.id()))
        .toList();
  }

  private String day(Instant moment) {
    return DAY.format(moment.atZone(zone));
  }

  private Section head(CandleLabel label, Optional<BurnTest.Proof> word) {
    List<String> notes = new ArrayList<>();
    notes.add(
        "Candle "
            + label.candle().design().name()
            + " ("
            + label.candle().design().code()
            + "), version "
            + label.version()
            + " of its card.");
    word.ifPresent(
        w ->
            notes.add(
                "Proved for sale by "
                    + w.by()
                    + " on "
                    + day(w.at())
                    + ", version "
                    + w.candleVersion()
                    + " of the card, burn test "
                    + w.test()
                    + ": "
                    + w.statement()));
    notes.add(
        "This folder holds what was written down and measured. Keep it for ten years after the last"
            + " of these candles was sold (Regulation (EU) 2023/988 Article 9).");
    return new Section("What it is", List.of(), List.of(), notes);
  }

  private Section versions(CandleCards cards) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(version(cards.candle()));
    rows.add(version(cards.pour()));
    rows.add(version(cards.vessel()));
    rows.add(version(cards.mix()));
    rows.add(version(cards.finish()));
    return new Section(
        "Cards and versions", List.of("card", "code", "version", "of", "by"), rows, List.of());
  }

  private List<String> version(CardVersion<?> card) {
    return List.of(
        card.kind().name(),
        card.code(),
        Integer.toString(card.version()),
        day(card.at()),
        card.by());
  }

  /** The lots of the candles that were tested, and of the mark on the label. */
  private Section lots(List<BurnTest> tests, String mark) {
    Set<Long> lots = new TreeSet<>();
    for (BurnTest test : tests) {
      for (BurnTest.Sample sample : books.burns().samples(test.id())) {
        if (sample.piece() != null) {
          lots.addAll(lotsOf(new Trace.Node(Trace.Kind.PIECE, sample.piece())));
        }
      }
    }
    if (!mark.isBlank()) {
      books
          .pieces()
          .marked(pourwright.batch.Mark.read(mark))
          .map(Subject::node)
          .ifPresent(node -> lots.addAll(lotsOf(node)));
    }
    List<List<String>> rows = new ArrayList<>();
    for (long id : lots) {
      books.lots().shelf(id).ifPresent(shelf -> rows.add(row(shelf.lot())));
    }
    return new Section(
        "Lots",
        List.of("material", "lot", "supplier", "received"),
        rows,
        rows.isEmpty()
            ? List.of("No lot is on file for the candles that were tested.")
            : List.of("Lots of the candles that were tested, and of the mark on the label."));
  }

  private List<Long> lotsOf(Trace.Node node) {
    return Trace.walk(node, books.trace()::back, false).of(Trace.Kind.LOT);
  }

  private static List<String> row(Lot lot) {
    String supplier = lot.supplier();
    return List.of(
        lot.material(), lot.code(), supplier == null ? "" : supplier, DAY.format(lot.receivedOn()));
  }

  private static Section classification(CandleLabel label) {
    Classification found = label.classification();
    List<String> notes = new ArrayList<>();
    notes.add(
        found.isUnclassified()
            ? "No hazard class is given."
            : "Classes: " + String.join(", ", found.classes()) + ".");
    String word = found.signalWord();
    notes.add("Signal word: " + (word == null ? "none" : word) + ".");
    for (String code : found.statements()) {
      notes.add(code + ": " + Texts.of(code, Language.ENGLISH));
    }
    if (!found.supplemental().isEmpty()) {
      notes.add("Supplemental: " + String.join(", ", found.supplemental()) + ".");
    }
    if (!found.namedSubstances().isEmpty()) {
      notes.add("Named on the label: " + String.join(", ", found.namedSubstances()) + ".");
    }
    found.warnings().forEach(w -> notes.add("Read with care: " + w + "."));
    notes.add(
        "By the published criteria of Regulation (EC) 1272/2008 Annex I, from the sheets above; to"
            + " be checked against them and with the local authority.");
    List<List<String>> sheets = label.sheets().stream().map(List::of).toList();
    return new Section("Hazard classification", List.of("stands on"), sheets, notes);
  }

  private static Section reasons(Classification found) {
    List<List<String>> rows = new ArrayList<>();
    for (Finding finding : found.reasons()) {
      rows.add(
          List.of(
              finding.sentence(),
              finding.distance(),
              finding.rule().clause() + " (" + finding.rule().confidence() + ")"));
    }
    return new Section(
        "Why",
        List.of("finding", "how far from the next", "rule"),
        rows,
        rows.isEmpty()
            ? List.of("No substance of the sheets has anything to do with a hazard class.")
            : List.of());
  }

  private static Section label(LabelRequest request, LabelText text, IssuedFolder.Label set) {
    List<String> notes = new ArrayList<>();
    notes.add(
        String.format(
            Locale.ROOT,
            "Label of %.0f × %.0f mm on a %s, for %s, in %s.",
            set.widthMm(),
            set.heightMm(),
            set.carrier(),
            request.isEuropean() ? "the European Union and Great Britain" : "the United States",
            String.join(", ", set.languages())));
    notes.add("Net contents: " + text.netContents() + ".");
    if (!text.signalWord().isEmpty()) {
      notes.add("Signal word: " + text.signalWord() + ".");
    }
    if (!text.pictograms().isEmpty()) {
      notes.add("Pictograms: " + String.join(", ", text.pictograms()) + ".");
    }
    notes.addAll(text.paragraphs());
    notes.add(String.join(", ", text.maker()) + ".");
    notes.add(text.mark() + ".");
    notes.add(Texts.ORIGIN);
    return new Section("Label", List.of(), List.of(), notes);
  }

  private static Section risks(String riskNotes) {
    List<String> notes = new ArrayList<>();
    riskNotes.lines().map(String::strip).filter(l -> !l.isEmpty()).forEach(notes::add);
    notes.addAll(CAUTIONS);
    return new Section("Risk notes", List.of(), List.of(), notes);
  }
}
