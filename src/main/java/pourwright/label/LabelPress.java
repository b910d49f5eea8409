package pourwright.label;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import pourwright.hazard.Classification;

/** Puts a label's words and signs together. A closed gate leaves only TEST, NOT FOR SALE. */
public final class LabelPress {
  /** The three signs that every candle carries, with the general warning before them. */
  static final List<String> SAFETY =
      List.of("warning", "never-unattended", "away-from-fire", "away-from-children");

  /** A small x of the label's face is 0.750 of its capitals; a hair more is asked for. */
  private static final double SMALL_OF_CAPITAL = 0.76;

  private LabelPress() {}

  /** What is missing before a sale label, in words. */
  public static List<String> missing(LabelRequest request) {
    List<String> missing = new ArrayList<>(request.maker().missing());
    if (request.name().isBlank()) {
      missing.add("the candle's name");
    }
    if (request.mark().isBlank()) {
      missing.add("the batch mark");
    }
    if (request.languages().isEmpty()) {
      missing.add("a language");
    }
    boolean ufi = request.isEuropean() && PoisonCentre.asksForUfi(request.classification());
    if (ufi && request.ufi().isBlank()) {
      missing.add("the UFI of the notification to the poison centres");
    }
    if (request.classification().unknown() > 1e-6) {
      missing.add(
          "what "
              + Amounts.percent(request.classification().unknown())
              + " of the wax mixture consists of");
    }
    return missing;
  }

  /** Sets the label; the gate's own findings and what is missing both close it. */
  public static LabelText text(LabelRequest request, SaleGate gate) {
    boolean forSale = gate.isOpen() && missing(request).isEmpty();
    Declaration declaration = Declaration.of(request.netG(), request.panel(), false);
    boolean eu = request.isEuropean();
    List<Language> languages =
        request.languages().isEmpty() ? List.of(Language.ENGLISH) : request.languages();
    return new LabelText(
        request.name(),
        request.scent(),
        eu ? declaration.textMetric() : declaration.textUs(),
        signalWords(request, languages),
        eu ? request.classification().pictograms() : List.of(),
        SAFETY,
        paragraphs(request, languages),
        maker(request.maker()),
        Texts.of("mark", languages.get(0)) + " " + request.mark(),
        request.link(),
        forSale ? "" : banner(languages),
        least(request),
        eu ? declaration.typeHeightEuropeMm() : declaration.typeHeightMm());
  }

  /** In the United States the letters also follow the panel; a small x is 3/4 of a capital. */
  private static LabelMinimum least(LabelRequest request) {
    LabelMinimum least = LabelMinimum.of(request.capacityMl());
    if (request.isEuropean()) {
      return least;
    }
    double x = SMALL_OF_CAPITAL * CautionLetters.otherMm(request.panel().areaMm2());
    return new LabelMinimum(
        least.labelWidthMm(),
        least.labelHeightMm(),
        least.pictogramMm(),
        least.pictogramWantedMm(),
        Math.max(least.xHeightMm(), x));
  }

  private static String banner(List<Language> languages) {
    Set<String> banners = new LinkedHashSet<>();
    banners.add(Texts.of("test-not-for-sale", Language.ENGLISH));
    languages.forEach(l -> banners.add(Texts.of("test-not-for-sale", l)));
    return String.join(" · ", banners);
  }

  private static String signalWords(LabelRequest request, List<Language> languages) {
    String word = request.classification().signalWord();
    if (word == null || !request.isEuropean()) {
      return "";
    }
    Set<String> words = new LinkedHashSet<>();
    languages.forEach(l -> words.add(Texts.of(word, l)));
    return String.join(" · ", words);
  }

  private static List<String> maker(Maker maker) {
    return List.of(maker.name(), maker.address(), maker.phone() + " · " + maker.web());
  }

  private static List<String> paragraphs(LabelRequest request, List<Language> languages) {
    List<String> paragraphs = new ArrayList<>();
    for (Language language : languages) {
      if (request.isEuropean()) {
        String hazards = hazardText(request, language);
        if (!hazards.isEmpty()) {
          paragraphs.add(hazards);
        }
      }
      paragraphs.add(
          String.join(
              " ",
              Texts.of("never-unattended", language),
              Texts.of("away-from-fire", language),
              Texts.of("away-from-children", language)));
      List<String> care = CareLines.of(request.burn(), language);
      if (!care.isEmpty()) {
        paragraphs.add(String.join(" ", care));
      }
    }
    if (!request.ufi().isBlank()) {
      paragraphs.add("UFI: " + request.ufi());
    }
    return paragraphs;
  }

  /** Statements, named substances, supplemental statements and precautions in one paragraph. */
  static String hazardText(LabelRequest request, Language language) {
    Classification found = request.classification();
    SmallPackage stays = SmallPackage.of(request.capacityMl(), found);
    List<String> sentences = new ArrayList<>();
    stays.statements().forEach(code -> sentences.add(Texts.of(code, language)));
    String names = String.join(", ", found.namedSubstances());
    boolean inEuh208 = found.supplemental().contains("EUH208");
    if (!names.isEmpty() && !inEuh208 && !found.hazards().isEmpty()) {
      sentences.add(Texts.of("contains", language) + " " + names + ".");
    }
    for (String code : found.supplemental()) {
      sentences.add(Texts.of(code, language, "names", names));
    }
    if (stays.precautions()) {
      found.precautionary().forEach(code -> sentences.add(Texts.of(code, language)));
    }
    return String.join(" ", sentences);
  }
}
