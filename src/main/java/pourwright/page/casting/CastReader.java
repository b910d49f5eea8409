package pourwright.page.casting;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pourwright.batch.Batch;
import pourwright.batch.BatchPlan;
import pourwright.batch.PlannedAmount;
import pourwright.batch.PlannedStep;
import pourwright.batch.RecordedStep;
import pourwright.card.CardBook;
import pourwright.card.Scales;
import pourwright.card.Vessel;
import pourwright.material.Material;
import pourwright.material.UnitKind;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.board.Lengths;
import pourwright.page.house.MistakesPart;
import pourwright.quantity.Counted;
import pourwright.work.Attachment;
import pourwright.work.Books;
import pourwright.work.CastSheet;
import pourwright.work.CastWalk;
import pourwright.work.Drawers;
import pourwright.work.MoldCare;
import pourwright.work.OwnCasts;
import pourwright.work.Reading;
import pourwright.work.Subject;

/** Reads a cast from the books into finished strings. */
final class CastReader {
  private static final String STOP = "Stop when it pours. More water makes it weaker and leakier.";

  private static final Map<String, String> CAUTIONS =
      Map.of(
          CastWalk.POWDER,
          "Cement and sand dust harm the lungs: mask on (N95 or better), no dry sweeping. Wet"
              + " cement burns the skin: gloves, goggles, rinse splashes at once.",
          "rest-water",
          STOP,
          CastWalk.RANGE_WATER,
          STOP);

  private final Desk desk;
  private final Lengths numbers;
  private final WaitDesk waits;

  CastReader(Desk desk) {
    this.desk = desk;
    this.waits = new WaitDesk(desk);
    this.numbers = new Lengths(desk);
  }

  static String what(Batch batch, CardBook book) {
    return batch.plan().makes().stream()
        .map(m -> m.count() + " × " + name(book, m.design()))
        .collect(Collectors.joining(", "));
  }

  static String name(CardBook book, String vessel) {
    return book.all(Vessel.class).stream()
        .filter(v -> v.code().equals(vessel))
        .map(Vessel::name)
        .findFirst()
        .orElse(vessel);
  }

  /** The first planned step that nobody recorded yet. */
  static Optional<PlannedStep> nextStep(Books books, Batch batch) {
    Set<String> recorded =
        books.batches().steps(batch.id()).stream()
            .map(RecordedStep::key)
            .collect(Collectors.toSet());
    return batch.plan().steps().stream().filter(s -> !recorded.contains(s.key())).findFirst();
  }

  static String next(Books books, Batch batch) {
    return nextStep(books, batch).map(PlannedStep::sentence).orElse("Demold.");
  }

  /** Step and reading of one tap are written within this time. */
  private static final Duration ONE_POST = Duration.ofSeconds(2);

  CastPage page(Books books, Batch batch, Form form) {
    CardBook book = Drawers.book(books);
    Optional<PlannedStep> next = batch.isRunning() ? nextStep(books, batch) : Optional.empty();
    Subject subject = Subject.of(Subject.Kind.BATCH, batch.id());
    Map<String, String> photos = new LinkedHashMap<>();
    for (Attachment photo : books.attachments().of(subject)) {
      photos.put("/files/" + photo.id(), photo.name());
    }
    return new CastPage(
        batch.mark().text() + ": " + what(batch, book),
        "/casting/" + batch.id(),
        form,
        next.map(s -> step(books, batch, book, s)).orElse(null),
        demold(batch, book),
        done(books, batch, book),
        photos,
        "batch/" + batch.id(),
        !batch.isRunning(),
        waits.of(books, batch),
        MistakesPart.of(books, batch),
        water(books, batch));
  }

  /** All water as one sum, once it was recorded. */
  private String water(Books books, Batch batch) {
    Optional<Reading> total =
        books.readings().newest(Subject.of(Subject.Kind.BATCH, batch.id()), OwnCasts.WATER);
    Double ratio = OwnCasts.weighed(books, Drawers.book(books), batch).waterToPowder();
    return total.isEmpty() || ratio == null
        ? ""
        : "Water in all: "
            + numbers.grams(total.get().value(), 1)
            + ", "
            + numbers.number(ratio, 3)
            + " of the powder.";
  }

  /** The molds of a cast, those that have served least first in turn. */
  private List<CastPage.MoldTick> molds(Books books, Batch batch) {
    List<CastPage.MoldTick> ticks = new ArrayList<>();
    List<MoldCare.Kind> kinds = MoldCare.all(books, desk.now());
    for (BatchPlan.Makes makes : batch.plan().makes()) {
      for (MoldCare.Kind kind : kinds) {
        if (kind.mold().code().equals(makes.mold())) {
          List<Integer> next = kind.next(MoldCare.molds(kind.mold(), makes.count()));
          for (MoldCare.Single single : kind.singles()) {
            ticks.add(
                new CastPage.MoldTick(
                    kind.mold().code() + "/" + single.number(),
                    kind.mold().name()
                        + " no. "
                        + single.number()
                        + ", "
                        + Counted.of(single.casts(), "cast", "casts")
                        + (single.casts() >= kind.life() ? ", worn" : ""),
                    next.contains(single.number())));
          }
        }
      }
    }
    return ticks;
  }

  private CastPage.Step step(Books books, Batch batch, CardBook book, PlannedStep step) {
    List<PlannedStep> all = batch.plan().steps();
    List<CastPage.Weigh> weighs = new ArrayList<>();
    Scales scales = Scales.of(book);
    for (PlannedAmount amount : step.amounts()) {
      boolean mass = amount.amount().kind() == UnitKind.MASS && !desk.units().metric();
      double usual = amount.amount().inUsualUnit();
      String figure = mass ? desk.units().massFigure(usual) : numbers.number(usual);
      weighs.add(
          new CastPage.Weigh(
              field(amount.material()),
              materialName(book, amount.material()),
              figure,
              mass ? desk.units().mass() : amount.amount().usualUnit(),
              step.key().equals(CastWalk.RANGE_WATER),
              amount.amount().kind() == UnitKind.MASS
                  ? scales.tooFine(usual).map(Scales.TooFine::sentence).orElse("")
                  : ""));
    }
    return new CastPage.Step(
        step.key(),
        "step " + (all.indexOf(step) + 1) + " of " + all.size(),
        step.sentence(),
        CAUTIONS.getOrDefault(step.key(), ""),
        weighs,
        step.takesTemperature(),
        step.key().equals(CastWalk.MOLDS) ? molds(books, batch) : List.of(),
        step.key().equals(CastWalk.COVER));
  }

  static String field(String material) {
    return "used_" + material;
  }

  private static String materialName(CardBook book, String code) {
    return code.equals(CastSheet.WATER)
        ? "Water"
        : book.materials().find(code).map(Material::name).orElse(code);
  }

  private static List<CastPage.Demold> demold(Batch batch, CardBook book) {
    List<CastPage.Demold> demold = new ArrayList<>();
    for (BatchPlan.Makes makes : batch.plan().makes()) {
      demold.add(new CastPage.Demold(makes.design(), name(book, makes.design()), makes.count()));
    }
    return demold;
  }

  private List<String> done(Books books, Batch batch, CardBook book) {
    Map<String, String> sentences = new LinkedHashMap<>();
    batch.plan().steps().forEach(s -> sentences.put(s.key(), s.sentence()));
    List<Reading> readings =
        books.readings().of(Subject.of(Subject.Kind.BATCH, batch.id())).stream()
            .filter(r -> r.quantity().equals("water_g"))
            .toList();
    List<String> done = new ArrayList<>();
    for (RecordedStep step : books.batches().steps(batch.id())) {
      StringBuilder line = new StringBuilder();
      line.append(desk.clockTime(step.at())).append(", ").append(step.by()).append(": ");
      line.append(sentences.getOrDefault(step.key(), step.key()));
      readings.stream()
          .filter(r -> Duration.between(step.at(), r.takenAt()).abs().compareTo(ONE_POST) < 0)
          .forEach(r -> line.append(' ').append(numbers.number(r.value())).append(" g"));
      for (RecordedStep.Used used : step.used()) {
        line.append(' ').append(numbers.number(used.amount().inUsualUnit()));
        line.append(' ').append(used.amount().usualUnit()).append(' ');
        line.append(materialName(book, used.material()));
        line.append(used.lot() == null ? " (no lot had it)" : "");
      }
      if (!step.note().isEmpty()) {
        line.append(' ').append(step.note());
      }
      done.add(line.toString());
    }
    return done;
  }
}
