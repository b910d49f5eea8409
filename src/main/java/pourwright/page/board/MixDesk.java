package pourwright.page.board;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.card.CardBook;
import pourwright.card.MixCard;
import pourwright.material.Material;
import pourwright.material.MaterialKind;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.work.Drawer;
import pourwright.work.Drawers;

/** Mix cards as a form. */
final class MixDesk implements CardDesk<MixCard> {
  private static final int PARTS = 4;
  private final Lengths numbers;

  MixDesk(Desk desk) {
    this.numbers = new Lengths(desk);
  }

  @Override
  public Drawer<MixCard> drawer() {
    return Drawers.MIX;
  }

  @Override
  public String singular() {
    return "mix card";
  }

  private static Map<String, String> materials(CardBook book, MaterialKind... kinds) {
    Map<String, String> found = new LinkedHashMap<>();
    for (MaterialKind kind : kinds) {
      book.materials().all().stream()
          .filter(m -> m.kind() == kind)
          .forEach(m -> found.put(m.code(), m.name() + " (" + kind.words() + ")"));
    }
    return found;
  }

  @Override
  public List<EntryGroup> entries(CardBook book) {
    Map<String, String> parts = new LinkedHashMap<>();
    parts.put("", "none");
    parts.putAll(
        materials(
            book,
            MaterialKind.SAND,
            MaterialKind.PIGMENT,
            MaterialKind.LIQUID_COLOUR,
            MaterialKind.FIBRE,
            MaterialKind.ADMIXTURE));
    List<Entry> more = new ArrayList<>();
    for (int i = 1; i <= PARTS; i++) {
      more.add(Entry.choice("part" + i, "Addition " + i, parts));
      more.add(
          Entry.number("per" + i, "Grams of addition " + i + " to 1 g of powder", "")
              .mayBeLeftOut());
    }
    return List.of(
        EntryGroup.of(
            "Mix",
            Entry.text("name", "Name"),
            Entry.choice("powder", "Powder", materials(book, MaterialKind.POWDER)),
            Entry.choice("ratio_by", "Ratio by", by()),
            Entry.number("ratio_powder", "Parts of powder", ""),
            Entry.number("ratio_powder_to", "Up to parts of powder", "")
                .hint(
                    "Where you mix to consistency: 3 to 4. The sheet begins with the least water.")
                .mayBeLeftOut(),
            Entry.number("ratio_water", "Parts of water", ""),
            Entry.text("family", "Colour family")
                .hint("The pot is washed between two families: grey, white, red.")),
        new EntryGroup("Additions", more),
        EntryGroup.of(
            "What is mixed but not cast",
            Entry.number("waste", "Waste, 0.10 for a tenth more", ""),
            Entry.number("residue", "What stays in the bucket", "g")
                .hint("House: a bucket keeps 30 to 60 g, whatever the batch."),
            Entry.number("air", "Air, 0.02 for 2 %", "")),
        EntryGroup.of(
            "Times at 20 °C",
            Entry.number("pot_life", "Pot life", "min"),
            Entry.number("demold_from", "Demold from", "h"),
            Entry.number("demold_to", "Demold until", "h"),
            Entry.number("harden", "Harden, kept damp", "h"),
            Entry.number("dry", "Dry to constant mass, typical", "h"),
            Entry.area("note", "Note", "")));
  }

  private static Map<String, String> by() {
    Map<String, String> by = new LinkedHashMap<>();
    by.put("MASS", "mass, weighed");
    by.put("VOLUME", "volume, scooped");
    return by;
  }

  @Override
  public Map<String, String> fresh(CardBook book) {
    MixCard house =
        new MixCard(
            "new",
            "new",
            "portland-cement",
            new MixCard.Ratio(MixCard.By.MASS, 2.5, 1),
            List.of(),
            MixCard.Losses.HOUSE,
            MixCard.Times.RAPID,
            "grey",
            null);
    Map<String, String> fresh = written(house);
    fresh.put("name", "");
    return fresh;
  }

  @Override
  public Map<String, String> written(MixCard mix) {
    Map<String, String> w = new LinkedHashMap<>();
    w.put("name", mix.name());
    w.put("powder", mix.powder());
    w.put("ratio_by", mix.ratio().by().name());
    w.put("ratio_powder", numbers.number(mix.ratio().powder()));
    Double to = mix.ratio().powderTo();
    w.put("ratio_powder_to", to == null ? "" : numbers.number(to));
    w.put("ratio_water", numbers.number(mix.ratio().water()));
    w.put("family", mix.family());
    for (int i = 0; i < mix.parts().size(); i++) {
      w.put("part" + (i + 1), mix.parts().get(i).material());
      w.put("per" + (i + 1), numbers.number(mix.parts().get(i).perPowder()));
    }
    w.put("waste", numbers.number(mix.losses().wasteFraction()));
    w.put("residue", numbers.number(mix.losses().residueG()));
    w.put("air", numbers.number(mix.losses().airFraction()));
    w.put("pot_life", numbers.number(mix.times().potLifeMin()));
    w.put("demold_from", numbers.number(mix.times().demoldFromH()));
    w.put("demold_to", numbers.number(mix.times().demoldToH()));
    w.put("harden", numbers.number(mix.times().hardenH()));
    w.put("dry", numbers.number(mix.times().dryH()));
    String note = mix.note();
    w.put("note", note == null ? "" : note);
    return w;
  }

  @Override
  public Optional<MixCard> read(Form form, String code, Optional<MixCard> before) {
    String name = form.text("name", "a name");
    String powder = form.text("powder", "the powder");
    Optional<String> by = form.choice("ratio_by", "how it is measured", List.of("MASS", "VOLUME"));
    double parts = number(form, "ratio_powder", "the parts of powder");
    double water = number(form, "ratio_water", "the parts of water");
    Optional<Double> to =
        numbers.readNumberIfThere(form, "ratio_powder_to", "the parts of powder at the drier end");
    String family = form.text("family", "a colour family");
    List<MixCard.Part> additions = parts(form);
    double[] rest = {
      number(form, "waste", "the waste"),
      number(form, "residue", "what stays in the bucket"),
      number(form, "air", "the air"),
      number(form, "pot_life", "the pot life"),
      number(form, "demold_from", "the earliest demold"),
      number(form, "demold_to", "the latest demold"),
      number(form, "harden", "the hardening"),
      number(form, "dry", "the drying")
    };
    if (!form.ok() || by.isEmpty()) {
      return Optional.empty();
    }
    String note = form.optionalText("note");
    return Optional.of(
        new MixCard(
            code,
            name,
            powder,
            new MixCard.Ratio(MixCard.By.valueOf(by.get()), parts, water, to.orElse(null)),
            additions,
            new MixCard.Losses(rest[0], rest[1], rest[2]),
            new MixCard.Times(rest[3], rest[4], rest[5], rest[6], rest[7]),
            Material.checkCode("family", family),
            note.isEmpty() ? null : note));
  }

  private double number(Form form, String field, String what) {
    return numbers.readNumber(form, field, what).orElse(Double.NaN);
  }

  private List<MixCard.Part> parts(Form form) {
    List<MixCard.Part> parts = new ArrayList<>();
    for (int i = 1; i <= PARTS; i++) {
      String material = form.optionalText("part" + i);
      if (!material.isEmpty()) {
        numbers
            .readNumber(form, "per" + i, "the grams to 1 g of powder")
            .ifPresent(per -> parts.add(new MixCard.Part(material, per)));
      }
    }
    return parts;
  }
}
