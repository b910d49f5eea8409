package pourwright.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import pourwright.label.Declaration;
import pourwright.label.Panel;

/** {@code declare}: the declaration of net contents and its letter height. */
final class DeclareComputation implements Computation {
  @Override
  public void compute(JsonIn in, ObjectNode out) {
    double netG = in.number("net_g", Range.POSITIVE);
    Declaration found =
        Declaration.of(netG, panel(in.object("panel")), in.flagOr("molded_in", false));
    out.put("text_us", found.textUs());
    out.put("text_metric", found.textMetric());
    out.put("type_height_mm", found.typeHeightMm());
    out.put("type_height_eu_mm", found.typeHeightEuropeMm());
    out.put("panel_mm2", found.panelMm2());
  }

  private static Panel panel(JsonIn panel) {
    JsonIn cylinder = panel.objectOrNull("cylinder");
    JsonIn rectangle = panel.objectOrNull("rectangle");
    JsonIn other = panel.objectOrNull("other");
    boolean several =
        (cylinder != null && rectangle != null)
            || (cylinder != null && other != null)
            || (rectangle != null && other != null);
    if (several) {
      throw panel.refuse("cylinder", "several forms of the panel are given", "give one");
    }
    if (cylinder != null) {
      return new Panel.Cylinder(
          cylinder.number("diameter_mm", Range.POSITIVE),
          cylinder.number("height_mm", Range.POSITIVE));
    }
    if (rectangle != null) {
      return new Panel.Rectangle(
          rectangle.number("width_mm", Range.POSITIVE),
          rectangle.number("height_mm", Range.POSITIVE));
    }
    if (other != null) {
      return new Panel.OtherShape(other.number("surface_mm2", Range.POSITIVE));
    }
    throw panel.refuse(
        "cylinder", "the form of the panel is missing", "give cylinder, rectangle or other");
  }
}
