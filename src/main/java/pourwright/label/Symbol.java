package pourwright.label;

import java.util.List;

/**
 * A sign as vector layers in a square of 100 units, the origin at the top left, y downwards.
 *
 * @param name code, such as {@code GHS07} or {@code away-from-children}
 * @param layers painted in order
 */
public record Symbol(String name, List<Layer> layers) {

  /**
   * One painted path.
   *
   * @param path absolute path data of the letters M, L, C and Z
   * @param colour {@code #rrggbb}
   * @param strokeWidth 0 for a filled path, else the width of the line in units
   */
  public record Layer(String path, String colour, double strokeWidth) {}

  /** Copies the list. */
  public Symbol {
    layers = List.copyOf(layers);
  }

  /** True for the diamonds of hazardous substances, whose size is the side of the square. */
  public boolean isDiamond() {
    return name.startsWith("GHS");
  }

  /** The sign as an SVG element of a given width, for screens. */
  public String svg(double widthMm) {
    StringBuilder svg = new StringBuilder();
    svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 100 100\" width=\"")
        .append(Amounts.plain(widthMm))
        .append("mm\" role=\"img\" aria-label=\"")
        .append(name)
        .append("\">");
    layers.forEach(l -> svg.append(svg(l)));
    return svg.append("</svg>").toString();
  }

  /** One layer as an SVG path. */
  public static String svg(Layer layer) {
    return layer.strokeWidth() > 0
        ? "<path d=\""
            + layer.path()
            + "\" fill=\"none\" stroke-linecap=\"round\" stroke-linejoin=\"round\" stroke=\""
            + layer.colour()
            + "\" stroke-width=\""
            + Amounts.plain(layer.strokeWidth())
            + "\"/>"
        : "<path d=\"" + layer.path() + "\" fill=\"" + layer.colour() + "\"/>";
  }
}
