package pourwright.page.press;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.batch.Mark;
import pourwright.label.EuropeanNet;
import pourwright.label.NetContents;
import pourwright.label.NetSample;
import pourwright.label.UnitedStatesNet;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Show;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Unit;
import pourwright.work.Act;
import pourwright.work.Outcome;
import pourwright.work.Reading;
import pourwright.work.Subject;

/** Net weight control: a sample of a lot on the scale, the verdict, and the record of it. */
final class NetDesk {
  private static final Map<String, String> SYSTEMS = systems();
  private static final double GRAM = 1e6;

  private final Desk desk;

  NetDesk(Desk desk) {
    this.desk = desk;
  }

  private static Map<String, String> systems() {
    Map<String, String> systems = new LinkedHashMap<>();
    systems.put("us", "United States (NIST Handbook 133)");
    systems.put("eu", "Europe, with the sign e (76/211/EEC)");
    return systems;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/press/net", http -> Show.page(http, "press/net.jte", blank()));
    routes.post("/press/net", this::judge);
  }

  private static PressPages.NetPage blank() {
    return new PressPages.NetPage(
        Form.startingFrom(Map.of("system", "us")), SYSTEMS, "", "", List.of());
  }

  private double grams(String text) {
    return desk.quantities().mass(text, Unit.GRAM).micrograms() / GRAM;
  }

  private void judge(Context http) {
    Form form = Form.of(http);
    Optional<String> system = form.choice("system", "the rules", List.copyOf(SYSTEMS.keySet()));
    Optional<Double> label = form.read("label", "a mass", this::grams);
    Optional<Integer> lot = form.count("lot", "how many packages", 1, 10_000_000);
    List<Double> nets = nets(form);
    Optional<Subject> subject = subject(form);
    Optional<Act> act = form.act(http, "net weight control");
    Optional<NetContents> found = Optional.empty();
    if (form.ok() && label.isPresent() && lot.isPresent()) {
      found = judged(form, system.orElse("us"), label.get(), lot.get(), nets);
    }
    if (!form.ok() || found.isEmpty() || act.isEmpty()) {
      Show.again(http, "press/net.jte", new PressPages.NetPage(form, SYSTEMS, "", "", List.of()));
      return;
    }
    Outcome<List<Reading>> kept =
        desk.studio()
            .recordReading
            .run(act.get(), readings(subject.orElse(studio()), nets, found.get()));
    Show.page(http, "press/net.jte", page(form, found.get(), kept.isDone()));
  }

  private static Subject studio() {
    return new Subject(Subject.Kind.STUDIO, "net-weights");
  }

  private Optional<Subject> subject(Form form) {
    Optional<Mark> mark = form.readIfThere("mark", "a mark", Mark::read);
    if (mark.isEmpty()) {
      return Optional.empty();
    }
    Optional<Subject> found = desk.studio().find(mark.get());
    if (found.isEmpty()) {
      form.complain("mark", "Nothing in the books carries this mark.");
    }
    return found;
  }

  private List<Double> nets(Form form) {
    List<Double> nets = new ArrayList<>();
    String text = form.text("nets", "the weights, one a line");
    for (String line : text.split("[\\n;]+", -1)) {
      String word = line.strip();
      if (word.isEmpty()) {
        continue;
      }
      try {
        nets.add(grams(word));
      } catch (OutOfRange e) {
        form.complain(
            "nets", "'" + word + "' cannot be read as a weight: one a line, such as 228.1");
      }
    }
    return nets;
  }

  private static Optional<NetContents> judged(
      Form form, String system, double label, int lot, List<Double> nets) {
    try {
      NetSample sample = new NetSample(label, lot, nets);
      return Optional.of(
          system.equals("us") ? UnitedStatesNet.judge(sample) : EuropeanNet.judge(sample));
    } catch (OutOfRange e) {
      String field = e.field().equals("label_g") ? "label" : "nets";
      form.complain(field, e.sentence() + ": " + e.hint() + ".");
      return Optional.empty();
    }
  }

  private List<Reading> readings(Subject subject, List<Double> nets, NetContents found) {
    NetContents.Verdict verdict = found.verdict();
    String note = "net weight control: " + (verdict == null ? "no verdict" : verdict.code());
    List<Reading> readings = new ArrayList<>();
    for (double net : nets) {
      readings.add(new Reading(0, subject, "net_g", net, desk.now(), null, note, 0));
    }
    return readings;
  }

  private static PressPages.NetPage page(Form form, NetContents found, boolean kept) {
    NetContents.Verdict verdict = found.verdict();
    List<String> reasons = new ArrayList<>(found.reasons());
    reasons.addAll(found.warnings());
    String words =
        verdict == null
            ? "No verdict yet"
            : switch (verdict) {
              case PASS -> "The lot passes";
              case FAIL_AVERAGE -> "The lot fails: the average is short";
              case FAIL_INDIVIDUAL -> "The lot fails: single packages are short";
            };
    String tone = verdict == NetContents.Verdict.PASS ? "done" : "warning";
    return new PressPages.NetPage(
        form, SYSTEMS, words + (kept ? ". Kept in the books." : "."), tone, reasons);
  }
}
