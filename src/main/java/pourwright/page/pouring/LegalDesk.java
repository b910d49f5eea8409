package pourwright.page.pouring;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pourwright.card.ResolvedPour;
import pourwright.material.Material;
import pourwright.material.Property;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.quantity.Origin;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;
import pourwright.work.Act;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;
import pourwright.work.SaveCard;

/** The legal limit of a fragrance, read on its certificate and kept with the fragrance. */
final class LegalDesk {
  private static final Property LEGAL = Property.FRAGRANCE_LEGAL_MAX_OF_TOTAL_FRACTION;

  private final Desk desk;

  LegalDesk(Desk desk) {
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.post("/pouring/blend/legal", this::keep);
  }

  /** The fragrances of a pour card with the limits that are kept with them. */
  static List<BlendPage.Legal> of(ResolvedPour pour) {
    return pour.fragrances().stream()
        .map(ResolvedPour.Share::material)
        .map(
            f ->
                new BlendPage.Legal(
                    f.code(),
                    f.name(),
                    f.property(LEGAL)
                        .map(l -> String.format(Locale.ROOT, "%.2f", 100 * l.value()))
                        .orElse("")))
        .toList();
  }

  private void keep(Context http) {
    Form form = Form.of(http);
    String back =
        "/pouring/blend?pour=" + URLEncoder.encode(form.value("pour"), StandardCharsets.UTF_8);
    String code = form.value("fragrance");
    Optional<Double> share = form.read("limit", "a share in per cent", LegalDesk::share);
    Optional<Act> act = form.act(http, "read on its certificate");
    Optional<CardVersion<Material>> card =
        desk.studio().look(books -> books.cards().current(Drawers.MATERIAL, code));
    if (share.isEmpty() || act.isEmpty() || card.isEmpty()) {
      String hint = act.isEmpty() ? "Say who works here first." : "Give it in per cent: 7.5.";
      Show.done(http, Said.refused("The limit was not kept.", hint), back);
      return;
    }
    Material changed =
        card.get().body().with(LEGAL, Sourced.exact(share.get(), Origin.SUPPLIERS_SHEET));
    SaveCard.Saving<Material> saving =
        desk.studio()
            .saveCard
            .run(
                act.get(),
                SaveCard.Request.of(Drawers.MATERIAL, code, card.get().version(), changed));
    Said said =
        saving instanceof SaveCard.Saving.Saved<Material>
            ? Said.done("Kept with " + changed.name() + ".")
            : Said.refused("The fragrance was changed meanwhile; nothing was kept.", "Look again.");
    Show.done(http, said, back);
  }

  /** A share typed in per cent. */
  static double share(String text) {
    double percent = Double.parseDouble(text.replace(',', '.').replace("%", "").strip());
    if (!(percent >= 0 && percent <= 100)) {
      throw new OutOfRange(
          "legal", "a share is from 0 to 100 %", "leave it out where none is known");
    }
    return percent / 100;
  }
}
