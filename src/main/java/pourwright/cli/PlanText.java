package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import pourwright.material.Material;
import pourwright.order.OrderImport;
import pourwright.plan.CastJob;
import pourwright.plan.MakePlan;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.Planner;
import pourwright.plan.PourJob;
import pourwright.plan.Step;
import pourwright.plan.StepKind;
import pourwright.work.WorkPlan;

/** A plan as it is printed in a terminal, and as JSON. */
public final class PlanText {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("EEE yyyy-MM-dd HH:mm", Locale.ENGLISH);

  private final WorkPlan plan;
  private final PrintWriter out;

  private PlanText(WorkPlan plan, PrintWriter out) {
    this.plan = plan;
    this.out = out;
  }

  /** How the file was read. */
  public static void detected(OrderImport.Detected detected, PrintWriter out) {
    String columns =
        detected.map().entrySet().stream()
            .map(e -> e.getKey().word() + "=" + e.getValue())
            .collect(Collectors.joining(", "));
    out.printf(
        "Read %d lines: %s, %s, delimiter %s, decimal mark %s, dates %s%n  columns %s%n",
        detected.rows(),
        detected.format(),
        detected.encoding(),
        detected.delimiter(),
        detected.decimal(),
        detected.dates(),
        columns);
  }

  /** Prints the whole plan. */
  public static void print(WorkPlan plan, PrintWriter out) {
    PlanText text = new PlanText(plan, out);
    text.orders();
    text.casts();
    text.pours();
    text.picks();
    text.work();
    out.flush();
  }

  private String grams(double grams) {
    return String.format(Locale.ROOT, "%.1f g", grams);
  }

  private Material material(String code) {
    return plan.book().materials().get(code);
  }

  private String amount(MakePlan.Pick pick, long units) {
    double amount = pick.unit().fromSmall(units);
    return String.format(
        Locale.ROOT,
        pick.unit().smallUnitsPerUnit() == 1 ? "%.0f %s" : "%.1f %s",
        amount,
        pick.unit().unit());
  }

  private void orders() {
    out.println();
    out.println("ORDERS");
    for (MakePlan.Served served : plan.make().served()) {
      out.printf(
          "  %-14s %3d x %-34s due %-10s  %s%n",
          served.line().order(),
          served.line().quantity(),
          plan.book().candle(served.line().design()).name(),
          served.line().dueOn() == null ? "-" : served.line().dueOn(),
          how(served));
    }
  }

  private String how(MakePlan.Served served) {
    String stock = served.fromStock() == 0 ? "" : served.fromStock() + " from stock ";
    return stock + String.join(" ", served.pours());
  }

  private void casts() {
    out.println();
    out.println("CASTS");
    for (CastJob cast : plan.make().casts()) {
      String fills =
          cast.fills().stream()
              .map(f -> f.pieces() + " " + plan.book().vessel(f.vessel()).name())
              .collect(Collectors.joining(", "));
      out.printf(
          "  %-4s %s: %s; water %s, in all %s%n",
          cast.key(),
          plan.book().mix(cast.mix()).name(),
          fills,
          grams(cast.waterG()),
          grams(cast.totalG()));
      cast.warnings().forEach(w -> out.println("       " + w));
    }
  }

  private void pours() {
    out.println();
    out.println("POURS");
    for (PourJob pour : plan.make().pours()) {
      String fills =
          pour.fills().stream()
              .map(
                  f ->
                      f.candles()
                          + " "
                          + plan.book().candle(f.design()).name()
                          + " of "
                          + grams(f.netG()))
              .collect(Collectors.joining(", "));
      out.printf(
          "  %-4s %s: wax %s, fragrance %s; %s%n",
          pour.key(),
          plan.book().pour(pour.pour()).name(),
          grams(pour.waxG()),
          grams(pour.fragranceG()),
          fills);
    }
  }

  private void picks() {
    out.println();
    out.println("MATERIALS AND LOTS");
    for (MakePlan.Pick pick : plan.make().picks()) {
      String draws =
          pick.draws().stream()
              .map(d -> "lot " + d.code() + " " + amount(pick, d.units()))
              .collect(Collectors.joining(", "));
      String missing = pick.shortUnits() == 0 ? "" : "  SHORT " + amount(pick, pick.shortUnits());
      out.printf(
          "  %-4s %-30s %12s  %s%s%n",
          pick.batch(),
          material(pick.material()).name(),
          amount(pick, pick.needUnits()),
          draws,
          missing);
    }
    Map<String, Long> shortages = plan.make().shortages();
    out.println();
    out.println(shortages.isEmpty() ? "Nothing is short." : "SHORT IN ALL");
    shortages.forEach(
        (code, units) ->
            out.printf(
                Locale.ROOT,
                "  %-35s %12.1f %s%n",
                material(code).name(),
                material(code).unit().fromSmall(units),
                material(code).unit().unit()));
  }

  private void work() {
    out.println();
    out.println("ORDER OF WORK");
    Plan work = plan.plan();
    if (work == null) {
      plan.reasons().forEach(r -> out.println("  cannot be planned: " + r));
      return;
    }
    Map<String, Step> steps = plan.problem().stepsByKey();
    for (Placed placed : work.placed()) {
      Step step = steps.get(placed.step());
      if (step != null && (step.kind() != StepKind.WAIT || step.minutes() >= 60)) {
        ZonedDateTime from = plan.problem().clock(placed.startMin());
        String until = WHEN.format(plan.problem().clock(placed.endMin()));
        out.printf(
            "  %s  %-5s %-5s %s%s%n",
            WHEN.format(from),
            step.kind().words(),
            step.batch(),
            step.words(),
            step.kind() == StepKind.WAIT ? "  until " + until : "");
      }
    }
    out.println();
    out.println("Late, in minutes of all orders together: " + work.tardiness(plan.problem()));
    if (plan.outcome() instanceof Planner.Planned planned) {
      for (Planner.Aim aim : planned.aims()) {
        out.printf(
            "  %s: %d, %s%n",
            aim.words(),
            aim.value(),
            aim.proven() ? "the least there is" : "no plan has less than " + aim.bound());
      }
    }
  }

  /** The plan as a JSON document. */
  public static ObjectNode json(WorkPlan plan) {
    JsonNodeFactory make = JsonNodeFactory.instance;
    ObjectNode root = make.objectNode();
    ArrayNode orders = root.putArray("orders");
    for (MakePlan.Served served : plan.make().served()) {
      ObjectNode node = orders.addObject();
      node.put("order", served.line().order());
      node.put("design", served.line().design());
      node.put("quantity", served.line().quantity());
      node.put("due", served.line().dueOn() == null ? null : "" + served.line().dueOn());
      node.put("from_stock", served.fromStock());
      served.pours().forEach(node.putArray("pours")::add);
    }
    ArrayNode casts = root.putArray("casts");
    for (CastJob cast : plan.make().casts()) {
      ObjectNode node = casts.addObject();
      node.put("key", cast.key()).put("mix", cast.mix()).put("water_g", cast.waterG());
      node.put("total_g", cast.totalG());
      ArrayNode fills = node.putArray("fills");
      cast.fills()
          .forEach(f -> fills.addObject().put("vessel", f.vessel()).put("pieces", f.pieces()));
    }
    ArrayNode pours = root.putArray("pours");
    for (PourJob pour : plan.make().pours()) {
      ObjectNode node = pours.addObject();
      node.put("key", pour.key()).put("pour", pour.pour()).put("wax_g", pour.waxG());
      node.put("fragrance_g", pour.fragranceG()).put("total_g", pour.totalG());
      ArrayNode fills = node.putArray("fills");
      pour.fills()
          .forEach(
              f ->
                  fills
                      .addObject()
                      .put("design", f.design())
                      .put("candles", f.candles())
                      .put("net_g", f.netG()));
    }
    picks(plan, root.putArray("materials"));
    if (plan.outcome() instanceof Planner.Planned planned) {
      root.put("late_min", planned.plan().tardiness(plan.problem()));
      root.put("late_bound_min", planned.boundMin()).put("late_proven", planned.proven());
    }
    steps(plan, root.putArray("steps"));
    plan.reasons().forEach(root.putArray("not_planned")::add);
    return root;
  }

  private static void picks(WorkPlan plan, ArrayNode all) {
    for (MakePlan.Pick pick : plan.make().picks()) {
      ObjectNode node = all.addObject();
      String unit = pick.unit().unit();
      node.put("batch", pick.batch()).put("material", pick.material()).put("unit", unit);
      node.put("need", pick.unit().fromSmall(pick.needUnits()));
      node.put("short", pick.unit().fromSmall(pick.shortUnits()));
      ArrayNode draws = node.putArray("draws");
      pick.draws()
          .forEach(
              d ->
                  draws
                      .addObject()
                      .put("lot", d.code())
                      .put("amount", pick.unit().fromSmall(d.units())));
    }
  }

  private static void steps(WorkPlan plan, ArrayNode all) {
    Plan work = plan.plan();
    Map<String, Step> steps = plan.problem().stepsByKey();
    if (work == null) {
      return;
    }
    for (Placed placed : work.placed()) {
      Step step = steps.get(placed.step());
      if (step != null) {
        all.addObject()
            .put("step", step.key())
            .put("kind", step.kind().words())
            .put("words", step.words())
            .put("from", "" + plan.problem().clock(placed.startMin()).toOffsetDateTime())
            .put("to", "" + plan.problem().clock(placed.endMin()).toOffsetDateTime())
            .put("person", placed.person());
      }
    }
  }
}
