package pourwright.label;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The text for a shop's page, from the same facts as the label. */
public final class Listing {
  private Listing() {}

  /** Paragraphs in one language. */
  public static List<String> of(LabelRequest request, Language language) {
    List<String> lines = new ArrayList<>();
    String scent = request.scent().isBlank() ? "" : " · " + request.scent();
    lines.add(request.name() + scent);
    Declaration declaration = Declaration.of(request.netG(), request.panel(), false);
    lines.add(
        request.isEuropean()
            ? Texts.of("net", language) + ": " + declaration.textMetric()
            : declaration.textUs());
    String hazards = request.isEuropean() ? LabelPress.hazardText(request, language) : "";
    if (!hazards.isEmpty()) {
      String word = request.classification().signalWord();
      lines.add((word == null ? "" : Texts.of(word, language) + ". ") + hazards);
    }
    lines.add(
        String.join(
            " ",
            Texts.of("never-unattended", language),
            Texts.of("away-from-fire", language),
            Texts.of("away-from-children", language)));
    List<String> care = CareLines.of(request.burn(), language);
    if (!care.isEmpty()) {
      lines.add(String.join(" ", care));
    }
    String maker =
        Stream.of(request.maker().name(), request.maker().address(), request.maker().web())
            .filter(part -> !part.isBlank())
            .collect(Collectors.joining(", "));
    if (!maker.isEmpty()) {
      lines.add(maker);
    }
    if (!request.mark().isBlank()) {
      lines.add(Texts.of("mark", language) + ": " + request.mark());
    }
    return lines;
  }
}
