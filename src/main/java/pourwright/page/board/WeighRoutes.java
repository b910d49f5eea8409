package pourwright.page.board;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.card.Vessel;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;
import pourwright.shape.Water;
import pourwright.work.Act;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;
import pourwright.work.SaveCard;

/** Measures a vessel's cavity, or the room of its mold, by weighing it full of water. */
final class WeighRoutes {
  private static final String TEMPLATE = "board/weigh.jte";

  /** Share above which drawing and water are shown side by side with the likeliest cause. */
  static final double DISAGREE = 0.05;

  private final Desk desk;
  private final Lengths lengths;

  WeighRoutes(Desk desk) {
    this.desk = desk;
    this.lengths = new Lengths(desk);
  }

  void addTo(RoutesConfig routes) {
    routes.get("/board/vessel/{code}/weigh", this::show);
    routes.post("/board/vessel/{code}/weigh", this::weigh);
  }

  private CardVersion<Vessel> vessel(Context http) {
    return desk.studio()
        .look(b -> b.cards().current(Drawers.VESSEL, http.pathParam("code")))
        .orElseThrow(() -> new NotFoundResponse("no such vessel"));
  }

  private void show(Context http) {
    Form form =
        Form.startingFrom(
            Map.of("what", "cavity", "water_c", lengths.celsius(20), "step", lengths.number(1)));
    Show.page(http, TEMPLATE, page(vessel(http), form));
  }

  private WeighPage page(CardVersion<Vessel> version, Form form) {
    Vessel vessel = version.body();
    return new WeighPage(
        vessel.name(),
        "/board/vessel/" + vessel.code(),
        form,
        version.version(),
        known(vessel.holdsMl()),
        known(vessel.mixMl()));
  }

  private String known(Sourced value) {
    return lengths.millilitres(value.value())
        + " "
        + Lengths.plusMinus(value.relativeUncertainty())
        + ", "
        + value.origin().words();
  }

  private void weigh(Context http) {
    Form form = Form.of(http);
    CardVersion<Vessel> version = vessel(http);
    Optional<Sourced> volume = volume(form);
    Optional<String> what = form.choice("what", "what was filled", List.of("cavity", "mold"));
    Optional<Integer> basedOn = form.count("based_on", "the version", 0, Integer.MAX_VALUE);
    Optional<Act> act = form.act(http, "weighed with water");
    if (!form.ok() || volume.isEmpty() || what.isEmpty() || basedOn.isEmpty() || act.isEmpty()) {
      Show.again(http, TEMPLATE, page(version, form));
      return;
    }
    boolean cavity = what.get().equals("cavity");
    Vessel measured = with(version.body(), cavity, volume.get());
    SaveCard.Saving<Vessel> saving =
        desk.studio()
            .saveCard
            .run(
                act.get(),
                SaveCard.Request.of(Drawers.VESSEL, measured.code(), basedOn.get(), measured));
    if (saving instanceof SaveCard.Saving.Saved<Vessel>) {
      Show.done(http, said(measured, cavity, volume.get()), "/board/vessel/" + measured.code());
    } else {
      form.complain("full_g", "Somebody changed the vessel meanwhile; look at it and weigh again.");
      Show.again(http, TEMPLATE, page(vessel(http), form));
    }
  }

  private Optional<Sourced> volume(Form form) {
    Optional<Double> empty = lengths.readGrams(form, "empty_g", "the empty weight");
    Optional<Double> full = lengths.readGrams(form, "full_g", "the full weight");
    Optional<Double> celsius = lengths.readCelsius(form, "water_c", "the water's temperature");
    Optional<Double> step = lengths.readNumber(form, "step", "the scale's step");
    if (empty.isEmpty() || full.isEmpty() || celsius.isEmpty() || step.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(Water.volumeMl(empty.get(), full.get(), celsius.get(), step.get()));
    } catch (OutOfRange e) {
      String field = e.field().equals("scale_resolution_g") ? "step" : e.field();
      form.complain(field, e.sentence() + ": " + e.hint() + ".");
      return Optional.empty();
    }
  }

  private static Vessel with(Vessel v, boolean cavity, Sourced volume) {
    return new Vessel(
        v.code(),
        v.name(),
        v.outer(),
        v.cavity(),
        cavity ? v.castMl() : volume,
        cavity ? volume : v.cavityMl(),
        v.note());
  }

  private Said said(Vessel vessel, boolean cavity, Sourced volume) {
    double drawn =
        cavity ? vessel.drawnCavity().volumeMl().value() : vessel.drawnMix().volumeMl().value();
    String headline =
        "It holds "
            + lengths.millilitres(volume.value())
            + " "
            + Lengths.plusMinus(volume.relativeUncertainty())
            + ".";
    double off = volume.value() / drawn - 1;
    if (Math.abs(off) <= DISAGREE) {
      return Said.done(headline);
    }
    String cause =
        off > 0
            ? "Likeliest: the drawing is of the wrong measure (inside for outside, radius for"
                + " diameter), or the mold bulges when it is full."
            : "Likeliest: it was not filled to the brim, a corner or the core takes room that the"
                + " drawing does not show, or the full weight is of a smaller piece.";
    return Said.warning(
        headline,
        String.format(
            Locale.ROOT,
            "The drawing says %s, %+.0f %% apart. %s",
            lengths.millilitres(drawn),
            100 * off,
            cause));
  }
}
