package pourwright.page.board;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pourwright.card.CardBook;
import pourwright.card.Finish;
import pourwright.material.MaterialKind;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.work.Drawer;
import pourwright.work.Drawers;

/** Finishes as a form: sanding, coats and their waits. */
final class FinishDesk implements CardDesk<Finish> {
  private static final int COATS = 3;
  private final Lengths numbers;

  FinishDesk(Desk desk) {
    this.numbers = new Lengths(desk);
  }

  @Override
  public Drawer<Finish> drawer() {
    return Drawers.FINISH;
  }

  @Override
  public String singular() {
    return "finish";
  }

  @Override
  public List<EntryGroup> entries(CardBook book) {
    Map<String, String> sealers = new LinkedHashMap<>();
    sealers.put("", "none");
    book.materials().all().stream()
        .filter(m -> m.kind() == MaterialKind.SEALER)
        .forEach(m -> sealers.put(m.code(), m.name()));
    Map<String, String> where = new LinkedHashMap<>();
    where.put("INSIDE", "inside");
    where.put("OUTSIDE", "outside");
    where.put("BOTH", "inside and outside");
    List<Entry> coats = new ArrayList<>();
    for (int i = 1; i <= COATS; i++) {
      coats.add(Entry.choice("sealer" + i, "Coat " + i, sealers));
      coats.add(Entry.choice("where" + i, "Coat " + i + " goes", where));
      coats.add(
          Entry.number("recoat" + i, "Coat " + i + ": earliest next coat", "h").mayBeLeftOut());
    }
    return List.of(
        EntryGroup.of(
            "Finish",
            Entry.text("name", "Name"),
            Entry.number("grits", "Grits of wet sanding, coarse to fine", "")
                .hint("120 220 400. P and plain numbers agree only up to 220.")
                .mayBeLeftOut(),
            Entry.number("minutes", "Minutes of sanding a piece", "min")),
        new EntryGroup("Coats, on a dry wall", coats),
        EntryGroup.of(
            "Waits",
            Entry.number("full_dry", "Full-dry after the last coat", "h")
                .hint("The sealer's sheet decides. Without one: 168 h, typical."),
            Entry.choice("tightness", "Tightness test", yesNo()),
            Entry.area("note", "Note", "")));
  }

  private static Map<String, String> yesNo() {
    Map<String, String> choices = new LinkedHashMap<>();
    choices.put("yes", "every piece");
    choices.put("no", "not each piece");
    return choices;
  }

  @Override
  public Map<String, String> fresh(CardBook book) {
    return Map.of("minutes", "5", "full_dry", "168", "tightness", "yes");
  }

  @Override
  public Map<String, String> written(Finish finish) {
    Map<String, String> w = new LinkedHashMap<>();
    w.put("name", finish.name());
    w.put("grits", finish.grits().stream().map(String::valueOf).collect(Collectors.joining(" ")));
    w.put("minutes", numbers.number(finish.sandMinutesPerPiece()));
    for (int i = 0; i < finish.coats().size(); i++) {
      Finish.Coat coat = finish.coats().get(i);
      w.put("sealer" + (i + 1), coat.sealer());
      w.put("where" + (i + 1), coat.where().name());
      w.put("recoat" + (i + 1), numbers.number(coat.recoatFromH()));
    }
    w.put("full_dry", numbers.number(finish.fullDryH()));
    w.put("tightness", finish.tightnessTest() ? "yes" : "no");
    String note = finish.note();
    w.put("note", note == null ? "" : note);
    return w;
  }

  @Override
  public Optional<Finish> read(Form form, String code, Optional<Finish> before) {
    String name = form.text("name", "a name");
    List<Integer> grits =
        form.readIfThere("grits", "grits, with blanks between", FinishDesk::grits)
            .orElse(List.of());
    Optional<Double> minutes = numbers.readNumber(form, "minutes", "the minutes");
    List<Finish.Coat> coats = coats(form);
    Optional<Double> fullDry = numbers.readNumber(form, "full_dry", "the hours");
    if (!form.ok() || minutes.isEmpty() || fullDry.isEmpty()) {
      return Optional.empty();
    }
    String note = form.optionalText("note");
    return Optional.of(
        new Finish(
            code,
            name,
            grits,
            minutes.get(),
            coats,
            fullDry.get(),
            form.value("tightness").equals("yes"),
            note.isEmpty() ? null : note));
  }

  private static List<Integer> grits(String text) {
    List<Integer> grits = new ArrayList<>();
    for (String word : text.strip().split("[,;\\s]+", -1)) {
      grits.add(Integer.valueOf(word.replaceFirst("^[Pp]", "")));
    }
    return grits;
  }

  private List<Finish.Coat> coats(Form form) {
    List<Finish.Coat> coats = new ArrayList<>();
    for (int i = 1; i <= COATS; i++) {
      String sealer = form.optionalText("sealer" + i);
      Optional<String> where =
          form.choice("where" + i, "where it goes", List.of("INSIDE", "OUTSIDE", "BOTH"));
      Optional<Double> recoat = numbers.readNumberIfThere(form, "recoat" + i, "the hours");
      if (!sealer.isEmpty() && where.isPresent()) {
        coats.add(
            new Finish.Coat(sealer, Finish.Where.valueOf(where.get()), recoat.orElse(2.0), null));
      }
    }
    return coats;
  }
}
