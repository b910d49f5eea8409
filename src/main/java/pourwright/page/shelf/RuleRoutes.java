package pourwright.page.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import pourwright.burn.ProofRule;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.work.Act;
import pourwright.work.Outcome;
import pourwright.work.Proving;

/** Her rule of proof: how many lives, casts and pours a word for sale has to stand on. */
final class RuleRoutes {
  private static final String TEMPLATE = "shelf/rule.jte";
  private final Desk desk;

  RuleRoutes(Desk desk) {
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/shelf/rule", http -> Show.page(http, TEMPLATE, new RulePage(now())));
    routes.post("/shelf/rule", this::save);
    routes.get("/shelf/proof", http -> Show.page(http, "shelf/proof.jte", proof()));
  }

  private ProofPage proof() {
    return desk.studio().look(books -> new ProofViews(desk, books).page(ProofViews.rule(books)));
  }

  private Form now() {
    ProofRule rule = desk.studio().look(books -> new Proving(books).rule());
    Map<String, String> values = new LinkedHashMap<>();
    values.put("lives", String.valueOf(rule.fullLives()));
    values.put("casts", String.valueOf(rule.casts()));
    values.put("pours", String.valueOf(rule.pours()));
    values.put("every", String.valueOf(rule.thenEveryPour()));
    return Form.startingFrom(values);
  }

  private void save(Context http) {
    Form form = Form.of(http);
    Optional<Integer> lives = form.count("lives", "how many full lives", 1, 100);
    Optional<Integer> casts = form.count("casts", "how many casts", 1, 100);
    Optional<Integer> pours = form.count("pours", "how many pours", 1, 100);
    Optional<Integer> every = form.count("every", "every how many pours", 1, 1000);
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty() || lives.isEmpty() || casts.isEmpty() || pours.isEmpty()) {
      Show.again(http, TEMPLATE, new RulePage(form));
      return;
    }
    ProofRule rule =
        new ProofRule(
            lives.get(), casts.get(), pours.get(), every.orElse(ProofRule.house().thenEveryPour()));
    Outcome<String> outcome = desk.studio().saveSetting.run(act.get(), Proving.RULE, rule.text());
    Said said =
        outcome instanceof Outcome.Refused<String> refused
            ? Said.refused(refused)
            : Said.done("Your rule of proof is set.");
    Show.done(http, said, "/shelf");
  }
}
