package pourwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import pourwright.card.CardBook;
import pourwright.card.Finish;
import pourwright.card.MixCard;
import pourwright.material.Property;

/** The steps of one cast, from the scale to a vessel that is tight and dry. */
final class CastRoute {
  /** A coat counts as flammable while wet below this flash point; house. */
  private static final double FLAMMABLE_BELOW_C = 60;

  private final CastJob job;
  private final CardBook book;
  private final Habits habits;
  private final MixCard mix;
  private final Finish finish;
  private final String what;
  private final Chain chain;

  CastRoute(CastJob job, CardBook book, Habits habits) {
    this.job = job;
    this.book = book;
    this.habits = habits;
    this.mix = book.mix(job.mix());
    this.finish = book.finish(job.finish());
    this.what =
        job.fills().stream()
            .map(f -> f.pieces() + " " + book.vessel(f.vessel()).name())
            .collect(Collectors.joining(", "));
    this.chain = new Chain(job.key(), habits.hands().stretch());
  }

  private int minutes(double each) {
    return Math.max(1, (int) Math.ceil(each * job.pieces()));
  }

  private Step hands(String name, String words, int minutes) {
    return Step.hands(job.key(), name, words, minutes);
  }

  Route lay() {
    MixCard.Times times = mix.times();
    Habits.Hands hands = habits.hands();
    int cast = (int) Math.ceil(hands.mix() + hands.fill() * job.pieces());
    chain.then(
        hands("cast", "Mix " + mix.name() + " and cast " + what, cast)
            .marked(Set.of("dust"), mix.family()),
        0,
        null,
        "");
    String first = chain.last();
    chain.thenWait(
        "set",
        "Set: " + what,
        times.demoldFromH() * habits.shed().harden(),
        "sets from the pour on");
    int window =
        (int) Math.floor((times.demoldToH() - times.demoldFromH()) * habits.shed().harden() * 60);
    chain.thenHands(
        hands("demold", "Demold " + what, minutes(hands.demold())),
        0,
        window,
        "demold while the mold still comes off");
    String demolded = chain.last();
    chain.thenWait(
        "harden",
        "Harden damp: " + what,
        times.hardenH() * habits.shed().harden(),
        "kept damp at once");
    if (finish.sandMinutesPerPiece() > 0) {
      chain.thenHands(
          hands("sand", "Wet-sand " + what + grits(), minutes(finish.sandMinutesPerPiece())),
          0,
          null,
          "sand after hardening");
    }
    chain.thenWait(
        "dry",
        "Dry to constant mass: " + what,
        times.dryH() * habits.shed().dry(),
        "dries once rinsed");
    String dry = chain.last();
    coats();
    tightness();
    List<Span> spans = new ArrayList<>();
    for (CastJob.Fill fill : job.fills()) {
      spans.add(new Span("mold:" + fill.mold(), fill.pieces(), first, demolded));
    }
    spans.add(new Span(Routing.RACK, job.pieces(), demolded, dry));
    return new Route(job, chain.steps(), chain.links(), spans);
  }

  private String grits() {
    return finish.grits().isEmpty()
        ? ""
        : ": " + finish.grits().stream().map(String::valueOf).collect(Collectors.joining(", "));
  }

  private void coats() {
    int from = 0;
    Integer to = null;
    int nth = 1;
    for (Finish.Coat coat : finish.coats()) {
      String where =
          coat.where() == Finish.Where.BOTH
              ? "inside and outside"
              : coat.where() == Finish.Where.INSIDE ? "inside" : "outside";
      boolean flammable =
          book.materials()
              .get(coat.sealer())
              .property(Property.FLASH_POINT_C)
              .map(c -> c.value() < FLAMMABLE_BELOW_C)
              .orElse(false);
      Set<String> tags = flammable ? Set.of("wet-coat", "solvent") : Set.of("wet-coat");
      double sides = coat.where() == Finish.Where.BOTH ? 2 : 1;
      chain.thenHands(
          hands(
                  "coat" + nth,
                  "Coat " + nth + " " + where + ": " + what,
                  minutes(habits.hands().coat() * sides))
              .marked(tags, null),
          from,
          to,
          nth == 1 ? "coat only what is dry" : "the sealer's recoat window");
      from = (int) Math.ceil(coat.recoatFromH() * 60);
      to = coat.recoatToH() == null ? null : (int) Math.floor(coat.recoatToH() * 60);
      nth++;
    }
    if (!finish.coats().isEmpty()) {
      chain.thenWait(
          "full", "Full-dry of the sealer: " + what, finish.fullDryH(), "from the last coat on");
    }
  }

  private void tightness() {
    if (!finish.tightnessTest()) {
      return;
    }
    Habits.Waits waits = habits.waits();
    chain.thenHands(
        hands("fill", "Weigh, fill with water: " + what, minutes(habits.hands().test())),
        0,
        null,
        "test when the sealer is full-dry");
    chain.thenWait("stand", "Stand full of water: " + what, waits.waterH(), "stands at once");
    chain.thenHands(
        hands("empty", "Look, weigh and empty: " + what, minutes(habits.hands().test())),
        0,
        24 * 60,
        "water is not left standing for days");
    chain.thenWait(
        "dry2",
        "Dry again: " + what,
        waits.dryAgainH() * habits.shed().dry(),
        "wetting takes dry away");
  }
}
