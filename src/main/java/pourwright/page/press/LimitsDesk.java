package pourwright.page.press;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pourwright.burn.Sooting;
import pourwright.hazard.Workplace;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Show;
import pourwright.quantity.NumberText;

/**
 * Three limits of the bench: silica dust over the day, chromium in cement, lead in a wick's core.
 */
final class LimitsDesk {
  private static final int STRETCHES = 3;

  private final Desk desk;

  LimitsDesk(Desk desk) {
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/press/limits", this::show);
  }

  private void show(Context http) {
    Form form = Form.asked(http);
    List<String> said = new ArrayList<>();
    if (http.queryParam("dust0") != null) {
      dust(form, said);
    }
    number(form, "chromium", "the chromium of the cement in ppm", 0, 1_000_000)
        .ifPresent(
            ppm ->
                said.add(
                    Workplace.tooMuchChromium(ppm)
                        ? "More than 2 ppm of soluble chromium(VI): such cement may not be sold or"
                            + " used in Europe (REACH Annex XVII entry 47). Do not mix it."
                        : "At or under 2 ppm of soluble chromium(VI), as long as the pack is within"
                            + " its dates. It still burns the skin: wear gloves."));
    number(form, "lead", "the lead of the core in per cent", 0, 100)
        .ifPresent(
            percent ->
                said.add(
                    Workplace.tooMuchLead(percent / 100)
                        ? "More than 0.06 % lead in the metal core: banned in the United States (16"
                            + " CFR 1500.12 and 1500.17). Do not burn it and do not sell it."
                        : "At or under 0.06 % lead in the metal core (16 CFR 1500.12). Keep the"
                            + " supplier's statement with the lot."));
    if (http.queryParam("soot0") != null) {
      soot(form, said);
    }
    PressPages.LimitsPage page = new PressPages.LimitsPage(form, said, STRETCHES);
    if (form.ok()) {
      Show.page(http, "press/limits.jte", page);
    } else {
      Show.again(http, "press/limits.jte", page);
    }
  }

  private void dust(Form form, List<String> said) {
    List<Workplace.Stretch> day = new ArrayList<>();
    double hours = 0;
    for (int i = 0; i < STRETCHES; i++) {
      Optional<Double> dust = number(form, "dust" + i, "the silica in the air", 0, 1_000_000);
      Optional<Double> time = number(form, "hours" + i, "the hours", 0, 24);
      if (dust.isPresent() && time.isPresent()) {
        day.add(new Workplace.Stretch(dust.get(), time.get()));
        hours += time.get();
      } else if (dust.isPresent() && form.error("hours" + i).isEmpty()) {
        form.complain("hours" + i, "How long was that? Type the hours.");
      }
    }
    if (hours > 24) {
      form.complain("hours0", "The stretches come to more than a day. Look at the hours again.");
    }
    if (!form.ok() || day.isEmpty()) {
      return;
    }
    String average =
        String.format(
            Locale.ROOT, "%.1f µg/m³ over eight hours. ", Workplace.eightHourAverage(day));
    said.add(
        average
            + switch (Workplace.silica(day)) {
              case BELOW_ACTION_LEVEL ->
                  "Under the action level of 25 µg/m³ (29 CFR 1910.1053). Keep it wet all the same.";
              case ACTION_LEVEL ->
                  "At or over the action level of 25 µg/m³, not over the limit of 50 µg/m³ (29 CFR"
                      + " 1910.1053). Work wet, extract the dust, wear the mask.";
              case ABOVE_LIMIT ->
                  "Over the limit of 50 µg/m³ (29 CFR 1910.1053). Stop sanding dry; work wet, with"
                      + " extraction and a P100 or FFP3 mask.";
            });
  }

  private void soot(Form form, List<String> said) {
    List<Double> indices = new ArrayList<>();
    for (int i = 0; i < Sooting.CANDLES; i++) {
      String field = "soot" + i;
      number(form, field, "the soot index", 0, 1000).ifPresent(indices::add);
      if (indices.size() <= i && form.error(field).isEmpty()) {
        form.complain(field, "Type the soot index: the method takes the mean of three candles.");
      }
    }
    Optional<Integer> wicks = form.count("wicks", "the number of wicks", 1, 100);
    Optional<Double> across = number(form, "across", "how wide the candle is in mm", 1, 1000);
    if (across.isEmpty() && form.error("across").isEmpty()) {
      form.complain("across", "Type how wide the candle is in mm.");
    }
    if (!form.ok() || wicks.isEmpty() || across.isEmpty()) {
      return;
    }
    said.add(
        switch (Sooting.judge(indices, wicks.get(), across.get())) {
          case PASS ->
              "The mean soot index is at or under 1.0 an hour (EN 15426:2018, from memory; check"
                  + " against the standard).";
          case FAIL ->
              "The mean soot index is over 1.0 an hour (EN 15426:2018, from memory; check against"
                  + " the standard). Try a smaller wick or a lower load, and trim it.";
          case NOT_APPLICABLE ->
              "EN 15426:2018 judges candles of one wick up to 100 mm across only. For this one look"
                  + " at the soot in your burn tests.";
        });
  }

  private Optional<Double> number(Form form, String field, String what, double least, double most) {
    Optional<Double> value =
        form.readIfThere(
            field, what, text -> NumberText.in(desk.locale()).decimal(text).doubleValue());
    if (value.isPresent() && !(value.get() >= least && value.get() <= most)) {
      form.complain(
          field, String.format(Locale.ROOT, "Type %s, from %.0f to %.0f.", what, least, most));
      return Optional.empty();
    }
    return value;
  }
}
