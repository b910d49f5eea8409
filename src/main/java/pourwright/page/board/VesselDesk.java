package pourwright.page.board;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.card.CardBook;
import pourwright.card.SolidForm;
import pourwright.card.Vessel;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.quantity.Sourced;
import pourwright.work.Drawer;
import pourwright.work.Drawers;

/** Vessels as a form: outside and cavity by their measures. */
final class VesselDesk implements CardDesk<Vessel> {
  private final BodyForm outer;
  private final BodyForm cavity;

  VesselDesk(Desk desk) {
    Lengths lengths = new Lengths(desk);
    this.outer = new BodyForm(lengths, "outer", "Outside", "foot", "Height, foot to rim");
    this.cavity = new BodyForm(lengths, "cavity", "Cavity", "base", "Depth, rim to base");
  }

  @Override
  public Drawer<Vessel> drawer() {
    return Drawers.VESSEL;
  }

  @Override
  public String singular() {
    return "vessel";
  }

  @Override
  public List<EntryGroup> entries(CardBook book) {
    List<EntryGroup> groups = new ArrayList<>();
    groups.add(EntryGroup.of("Vessel", Entry.text("name", "Name")));
    groups.addAll(outer.entries());
    groups.addAll(cavity.entries());
    groups.add(EntryGroup.of("Note", Entry.area("note", "Note", "")));
    return groups;
  }

  @Override
  public Map<String, String> fresh(CardBook book) {
    Map<String, String> fresh = new LinkedHashMap<>();
    fresh.put("outer_form", "circle");
    fresh.put("cavity_form", "circle");
    return fresh;
  }

  @Override
  public Map<String, String> written(Vessel vessel) {
    Map<String, String> written = new LinkedHashMap<>();
    written.put("name", vessel.name());
    outer.write(vessel.outer(), written);
    cavity.write(vessel.cavity(), written);
    String note = vessel.note();
    written.put("note", note == null ? "" : note);
    return written;
  }

  @Override
  public Optional<Vessel> read(Form form, String code, Optional<Vessel> before) {
    String name = form.text("name", "a name");
    Optional<SolidForm> outside = outer.read(form);
    Optional<SolidForm> inside = cavity.read(form);
    if (outside.isEmpty() || inside.isEmpty() || !form.ok()) {
      return Optional.empty();
    }
    boolean sameOuter = before.isPresent() && before.get().outer().equals(outside.get());
    boolean sameCavity = before.isPresent() && before.get().cavity().equals(inside.get());
    Sourced cavityMl = sameCavity ? before.get().cavityMl() : null;
    Sourced castMl = sameOuter && sameCavity ? before.get().castMl() : null;
    String note = form.optionalText("note");
    Vessel vessel =
        new Vessel(
            code,
            name,
            outside.get(),
            inside.get(),
            castMl,
            cavityMl,
            note.isEmpty() ? null : note);
    vessel.hollow();
    return Optional.of(vessel);
  }
}
