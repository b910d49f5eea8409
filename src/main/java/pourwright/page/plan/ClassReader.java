package pourwright.page.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.material.Material;
import pourwright.order.OrderState;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.plan.ClassKit;
import pourwright.plan.SeatClass;
import pourwright.quantity.Counted;
import pourwright.quantity.OutOfRange;
import pourwright.work.Classes;
import pourwright.work.PaperSheet;
import pourwright.work.PaperSheet.Block;
import pourwright.work.PaperSheet.Column;
import pourwright.work.PaperSheet.How;
import pourwright.work.TaughtClass;

/** Classes of the books as finished strings and as a sheet. */
final class ClassReader {
  static final String PATH = "/plan/classes";

  private static final String DUST =
      "Dust of powder harms the lungs and wet mix burns the skin: mask, goggles and gloves for"
          + " every seat. The supplier's sheet and local rules come first.";
  private static final String HEAT =
      "Hot wax burns: nobody leaves a warm melter, a lid to put a fire out stands by it. The"
          + " supplier's sheet and local rules come first.";

  private final Desk desk;

  ClassReader(Desk desk) {
    this.desk = desk;
  }

  /** Classes to come, the next one first. */
  List<ClassPages.Row> rows() {
    List<ClassPages.Row> rows = new ArrayList<>();
    for (SeatClass one : desk.studio().look(b -> Classes.of(b, desk.today())).ahead()) {
      try {
        rows.add(row(taught(one)));
      } catch (OutOfRange e) { // a card of it is missing: its page says which
        rows.add(new ClassPages.Row(path(one), when(one), seats(one), "", e.sentence(), ""));
      }
    }
    return rows;
  }

  private TaughtClass taught(SeatClass one) {
    return desk.studio().look(b -> TaughtClass.of(b, one, desk.now(), desk.zone()));
  }

  private ClassPages.Row row(TaughtClass taught) {
    SeatClass of = taught.of();
    return new ClassPages.Row(
        path(of),
        when(of),
        seats(of) + ": " + taught.book().candle(of.design()).name(),
        "" + taught.kit().kits(),
        taught.day().sets() ? "all of it" : "nothing",
        desk.day(taught.day().parcelDay()));
  }

  private static String path(SeatClass one) {
    return PATH + "/" + Classes.slug(one.order());
  }

  private String when(SeatClass one) {
    return desk.day(one.day()) + ", " + one.from() + "\u2013" + one.to();
  }

  private static String seats(SeatClass one) {
    return Counted.of(one.seats(), "seat", "seats");
  }

  /** One class; empty where there is none of this number. */
  Optional<ClassPages.One> one(String number, Form form) {
    Optional<SeatClass> found = desk.studio().look(b -> Classes.one(b, number));
    if (found.isEmpty()) {
      return Optional.empty();
    }
    boolean open =
        desk.studio()
            .look(b -> b.orders().order(number))
            .filter(o -> o.state() == OrderState.OPEN)
            .isPresent();
    SeatClass of = found.get();
    boolean cast = of.does() == SeatClass.Does.CAST;
    String cautions = cast ? DUST : HEAT;
    try {
      TaughtClass taught = taught(of);
      List<ClassPages.Step> later =
          taught.day().later().stream()
              .map(
                  l ->
                      new ClassPages.Step(
                          l.words(),
                          PlanWords.length(l.minutes()),
                          desk.dayAndTime(l.done().toInstant())))
              .toList();
      return Optional.of(
          new ClassPages.One(
              form,
              number,
              path(of),
              lead(taught),
              taught.day().warnings().stream().map(w -> w + ".").toList(),
              cautions,
              facts(taught),
              parts(taught),
              later,
              desk.day(taught.day().parcelDay()),
              open));
    } catch (OutOfRange e) {
      List<String> why = List.of(e.sentence() + ": " + e.hint() + ".");
      return Optional.of(
          new ClassPages.One(
              form,
              number,
              path(of),
              seats(of) + ", " + when(of) + ".",
              why,
              cautions,
              List.of(),
              List.of(),
              List.of(),
              "",
              open));
    }
  }

  private String lead(TaughtClass taught) {
    SeatClass of = taught.of();
    return seats(of)
        + ", "
        + Counted.of(taught.kit().kits(), "kit: ", "kits: ")
        + taught.book().candle(of.design()).name()
        + ", "
        + when(of)
        + ".";
  }

  private static List<String> facts(TaughtClass taught) {
    SeatClass of = taught.of();
    List<String> facts = new ArrayList<>();
    facts.add(
        "Of the kits "
            + number(100 * taught.spare())
            + " % are spare, rounded up to whole kits. Each is mixed or melted by itself.");
    facts.add(
        of.teacher() + " teaches: the plan leaves these hands alone from then until it ends.");
    if (taught.kit().vessels() > 0) {
      facts.add(
          "Vessels that stand ready, tight and dry, when it begins: "
              + taught.kit().vessels()
              + ". What is not there is cast before, by the plan.");
    }
    if (of.does() == SeatClass.Does.CAST) {
      facts.add(
          taught.day().sets()
              ? "It sets in class and is taken out of the mold there."
              : "It does not set in class: it stays in the mold and is taken out later.");
    } else {
      facts.add(
          taught.day().sets()
              ? "The wax sets in class and is trimmed there."
              : "The wax does not set in class: it stays where it stands.");
    }
    return facts;
  }

  private static List<ClassPages.Part> parts(TaughtClass taught) {
    ClassKit kit = taught.kit();
    List<ClassPages.Part> parts = new ArrayList<>();
    kit.perHead()
        .byMaterial()
        .forEach(
            (code, one) -> {
              Material material = taught.book().materials().get(code);
              String unit = " " + material.unit().unit();
              parts.add(
                  new ClassPages.Part(
                      material.name(), number(one) + unit, number(one * kit.kits()) + unit));
            });
    if (kit.waterG() > 0) {
      parts.add(
          new ClassPages.Part(
              "Water", number(kit.waterG()) + " g", number(kit.waterG() * kit.kits()) + " g"));
    }
    String vessel = taught.book().candle(taught.of().design()).vessel();
    String name = taught.book().vessel(vessel).name();
    parts.add(
        new ClassPages.Part(
            kit.vessels() > 0 ? name : "Mold: " + name,
            "1",
            "" + (kit.vessels() > 0 ? kit.vessels() : taught.of().seats())));
    return parts;
  }

  private static String number(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  /** What a seat may do, by code. */
  static Map<String, String> does() {
    Map<String, String> does = new java.util.LinkedHashMap<>();
    does.put("cast", "Casts a vessel");
    does.put("pour", "Pours a candle");
    return does;
  }

  /** The kit list on paper: to tick as it is laid out, and what is told at the end. */
  PaperSheet sheet(ClassPages.One one) {
    List<Column> kit =
        List.of(
            new Column("In each kit", 2.6, How.TICK),
            new Column("Each", 1, How.RIGHT),
            new Column("All kits", 1, How.RIGHT),
            new Column("Laid out", 1, How.WRITE));
    List<Column> later =
        List.of(
            new Column("After the class", 3, How.WRAP),
            new Column("How long", 1, How.RIGHT),
            new Column("Done", 1.6, How.RIGHT));
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Text(one.lead(), true));
    blocks.add(new Block.Text(one.cautions(), true));
    one.warnings().forEach(w -> blocks.add(new Block.Text(w, true)));
    blocks.add(
        new Block.Grid(
            kit,
            one.kit().stream().map(p -> List.of(p.material(), p.each(), p.all(), "")).toList()));
    one.facts().forEach(f -> blocks.add(new Block.Text(f, false)));
    blocks.add(
        new Block.Grid(
            later,
            one.later().stream().map(s -> List.of(s.words(), s.length(), s.done())).toList()));
    blocks.add(new Block.Text("Can be posted from: " + one.posted(), true));
    String studio =
        desk.studio().look(books -> books.settings().value("studio.name")).orElse("Pourwright");
    return new PaperSheet(studio, desk.dayAndTime(desk.now()), "Kit list", one.name(), blocks);
  }
}
