package pourwright.page.board;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.card.CardBook;
import pourwright.card.PourCard;
import pourwright.card.PourCard.Losses;
import pourwright.card.PourCard.Part;
import pourwright.card.PourCard.Temperatures;
import pourwright.material.Material;
import pourwright.material.MaterialKind;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.pour.Dose.LoadOf;
import pourwright.pour.Rest;
import pourwright.work.Drawer;
import pourwright.work.Drawers;

/**
 * Pour cards as a form. The windows are asked for and never filled in: the wax's sheet has them.
 */
final class PourCardDesk implements CardDesk<PourCard> {
  private static final int WAXES = 3;
  private static final int SCENTS = 4;
  private static final int EXTRAS = 2;

  private final Desk desk;
  private final Lengths numbers;

  PourCardDesk(Desk desk) {
    this.desk = desk;
    this.numbers = new Lengths(desk);
  }

  @Override
  public Drawer<PourCard> drawer() {
    return Drawers.POUR;
  }

  @Override
  public String singular() {
    return "pour card";
  }

  private static Map<String, String> materials(CardBook book, MaterialKind... kinds) {
    Map<String, String> found = new LinkedHashMap<>();
    found.put("", "none");
    for (MaterialKind kind : kinds) {
      book.materials().all().stream()
          .filter(m -> m.kind() == kind)
          .forEach(m -> found.put(m.code(), m.name()));
    }
    return found;
  }

  private static List<Entry> parts(
      String key, String label, int many, Map<String, String> choices) {
    List<Entry> entries = new ArrayList<>();
    for (int i = 1; i <= many; i++) {
      entries.add(Entry.choice(key + i, label + " " + i, choices));
      entries.add(Entry.number(key + "_parts" + i, "Parts of " + i, "").mayBeLeftOut());
    }
    return entries;
  }

  @Override
  public List<EntryGroup> entries(CardBook book) {
    List<Entry> extras = new ArrayList<>();
    Map<String, String> dyes = materials(book, MaterialKind.DYE, MaterialKind.ADDITIVE);
    for (int i = 1; i <= EXTRAS; i++) {
      extras.add(Entry.choice("extra" + i, "Dye or additive " + i, dyes));
      extras.add(Entry.number("extra_per" + i, "Grams to 100 g of wax", "").mayBeLeftOut());
    }
    String degrees = desk.units().temperature();
    Map<String, String> of = new LinkedHashMap<>();
    of.put("TOTAL", "of the total");
    of.put("WAX", "of the wax");
    List<Entry> scents =
        parts("scent", "Fragrance", SCENTS, materials(book, MaterialKind.FRAGRANCE));
    scents.add(Entry.number("load", "Fragrance load", "%").mayBeLeftOut());
    scents.add(Entry.choice("load_of", "The load is", of));
    return List.of(
        EntryGroup.of(
            "Pour card",
            Entry.text("name", "Name"),
            Entry.text("family", "Scent family")
                .hint("The pitcher is washed between two families: woods, sweet, plain.")),
        new EntryGroup("Wax", parts("wax", "Wax", WAXES, materials(book, MaterialKind.WAX))),
        new EntryGroup("Scent", scents),
        new EntryGroup("Dye and additives", extras),
        EntryGroup.of(
            "Windows of the wax's sheet",
            Entry.number("add_from", "Stir the scent in from", degrees),
            Entry.number("add_to", "Stir the scent in up to", degrees),
            Entry.number("pour_from", "Pour from", degrees),
            Entry.number("pour_to", "Pour up to", degrees)),
        EntryGroup.of(
            "Rest and what is not poured",
            Entry.choice("rest_kind", "Typical rest", rests())
                .hint("The wax's sheet decides; a longer one is never wrong."),
            Entry.number("rest", "Rest before test and sale", "d")
                .hint("Left out, the longer end of the typical rest counts.")
                .mayBeLeftOut(),
            Entry.number("waste", "Waste, 0.03 for 3 % more", ""),
            Entry.number("residue", "What stays in the pitcher", "g")
                .hint("House: a pitcher keeps 5 to 15 g, whatever the batch."),
            Entry.area("note", "Note", "")));
  }

  private static Map<String, String> rests() {
    Map<String, String> rests = new LinkedHashMap<>();
    rests.put("", "as the sheet says, below");
    for (Rest rest : Rest.values()) {
      rests.put(rest.name(), rest.words());
    }
    return rests;
  }

  @Override
  public Map<String, String> fresh(CardBook book) {
    Map<String, String> fresh = new LinkedHashMap<>();
    fresh.put("wax_parts1", "1");
    fresh.put("scent_parts1", "1");
    fresh.put("load_of", "TOTAL");
    fresh.put("waste", numbers.number(Losses.HOUSE.wasteFraction()));
    fresh.put("residue", numbers.number(Losses.HOUSE.residueG()));
    return fresh;
  }

  @Override
  public Map<String, String> written(PourCard card) {
    Map<String, String> w = new LinkedHashMap<>();
    w.put("name", card.name());
    w.put("family", card.family());
    write(w, "wax", card.waxes());
    write(w, "scent", card.fragrances());
    for (int i = 0; i < card.extras().size(); i++) {
      w.put("extra" + (i + 1), card.extras().get(i).material());
      w.put("extra_per" + (i + 1), numbers.number(100 * card.extras().get(i).parts()));
    }
    w.put("load", card.load() == 0 ? "" : numbers.number(round(100 * card.load())));
    w.put("load_of", card.loadOf().name());
    Temperatures t = card.temperatures();
    w.put("add_from", numbers.celsius(t.addFromC()));
    w.put("add_to", numbers.celsius(t.addToC()));
    w.put("pour_from", numbers.celsius(t.pourFromC()));
    w.put("pour_to", numbers.celsius(t.pourToC()));
    w.put("rest", numbers.number(card.restDays()));
    w.put("waste", numbers.number(card.losses().wasteFraction()));
    w.put("residue", numbers.number(card.losses().residueG()));
    String note = card.note();
    w.put("note", note == null ? "" : note);
    return w;
  }

  /** A share in per cent without the dust of binary fractions. */
  private static double round(double percent) {
    return Math.rint(percent * 1e6) / 1e6;
  }

  private void write(Map<String, String> into, String key, List<Part> parts) {
    for (int i = 0; i < parts.size(); i++) {
      into.put(key + (i + 1), parts.get(i).material());
      into.put(key + "_parts" + (i + 1), numbers.number(parts.get(i).parts()));
    }
  }

  @Override
  public Optional<PourCard> read(Form form, String code, Optional<PourCard> before) {
    String name = form.text("name", "a name");
    String family = form.text("family", "a scent family");
    List<Part> waxes = read(form, "wax", WAXES);
    List<Part> scents = read(form, "scent", SCENTS);
    List<Part> extras = new ArrayList<>();
    for (int i = 1; i <= EXTRAS; i++) {
      String material = form.optionalText("extra" + i);
      if (!material.isEmpty()) {
        numbers
            .readNumber(form, "extra_per" + i, "the grams to 100 g of wax")
            .ifPresent(per -> extras.add(new Part(material, per / 100)));
      }
    }
    double load = numbers.readNumberIfThere(form, "load", "the load in per cent").orElse(0.0);
    Optional<String> of = form.choice("load_of", "what the load is of", List.of("TOTAL", "WAX"));
    Optional<Double> addFrom = window(form, "add_from");
    Optional<Double> addTo = window(form, "add_to");
    Optional<Double> pourFrom = window(form, "pour_from");
    Optional<Double> pourTo = window(form, "pour_to");
    Optional<Double> waste = numbers.readNumber(form, "waste", "the waste");
    Optional<Double> residue = numbers.readNumber(form, "residue", "what stays in the pitcher");
    Optional<Double> rest = rest(form);
    boolean all =
        of.isPresent()
            && addFrom.isPresent()
            && addTo.isPresent()
            && pourFrom.isPresent()
            && pourTo.isPresent();
    if (!form.ok() || !all || waste.isEmpty() || residue.isEmpty() || rest.isEmpty()) {
      return Optional.empty();
    }
    String note = form.optionalText("note");
    return Optional.of(
        new PourCard(
            code,
            name,
            waxes,
            scents,
            load / 100,
            LoadOf.valueOf(of.get()),
            extras,
            new Temperatures(addFrom.get(), addTo.get(), pourFrom.get(), pourTo.get()),
            new Losses(waste.get(), residue.get()),
            rest.get(),
            Material.checkCode("family", family),
            note.isEmpty() ? null : note));
  }

  private Optional<Double> window(Form form, String field) {
    return numbers.readCelsius(form, field, "the temperature on the wax's sheet");
  }

  /** What is typed, else the longer end of the typical rest that was chosen. */
  private Optional<Double> rest(Form form) {
    Optional<Double> typed = numbers.readNumberIfThere(form, "rest", "the days");
    if (typed.isPresent()) {
      return typed;
    }
    for (Rest rest : Rest.values()) {
      if (rest.name().equals(form.value("rest_kind"))) {
        return Optional.of((double) rest.toDays());
      }
    }
    form.complain("rest", "Please give the days of rest, or choose a typical one.");
    return Optional.empty();
  }

  private List<Part> read(Form form, String key, int many) {
    List<Part> parts = new ArrayList<>();
    for (int i = 1; i <= many; i++) {
      String material = form.optionalText(key + i);
      if (!material.isEmpty()) {
        double share = numbers.readNumberIfThere(form, key + "_parts" + i, "the parts").orElse(1.0);
        parts.add(new Part(material, share));
      }
    }
    return parts;
  }
}
