package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.FormElement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.material.UnitKind;
import pourwright.page.OpenStudio;
import pourwright.page.RunningProgram;
import pourwright.page.Visitor;
import pourwright.stock.Amount;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;
import pourwright.work.ReceiveLot;

/**
 * The program itself, used by four people over HTTP who take deliveries in, write off, begin casts
 * and record their steps; killed at a random moment and started again. Whatever a page told one of
 * them was done is in the books afterwards, nothing is there by half, and the file is sound. {@code
 * dev/killloop} runs it for long, {@code KILL_ROUNDS} says how often otherwise.
 */
class ServerKillLoopTest {
  private static final int CLIENTS = 4;
  private static final Duration PATIENCE = Duration.ofSeconds(300);

  @TempDir Path corner;
  private final Set<String> acknowledged = ConcurrentHashMap.newKeySet();
  private final List<Throwable> surprises = Collections.synchronizedList(new ArrayList<>());
  private volatile boolean killing;
  private final List<Long> startsMs = new ArrayList<>();

  @Test
  void whatAPageSaidWasDoneIsThereAfterEveryKill() throws Exception {
    String inCi = System.getenv().getOrDefault("KILL_ROUNDS", "2");
    int rounds = Integer.getInteger("kill.rounds", Integer.parseInt(inCi));
    long seed = Long.getLong("kill.seed", System.nanoTime());
    Random random = new Random(seed);
    fillTheShelves();
    StudioFolder folder = new StudioFolder(corner.resolve("data"));
    for (int round = 1; round <= rounds; round++) {
      int before = acknowledged.size();
      runAndKill(folder.root(), random, round);
      String what = "round " + round + ", seed " + seed;
      assertThat(acknowledged).as(what + ": something was acknowledged").hasSizeGreaterThan(before);
      try (SqliteStore store = SqliteStore.open(folder)) {
        assertThat(store.unsound()).as(what).isEmpty();
        Set<String> there =
            new HashSet<>(
                store.look(
                    h -> h.createQuery("SELECT request_key FROM deed").mapTo(String.class).list()));
        assertThat(there).as(what).containsAll(acknowledged);
        assertThat(halves(store)).as(what).isEmpty();
      }
    }
    startsMs.sort(null);
    System.err.printf(
        "kill loop over HTTP: %d kills, %d clients, %d acknowledged, 0 missing, 0 half; start to"
            + " ready %d ms in the middle, %d ms at most%n",
        rounds,
        CLIENTS,
        acknowledged.size(),
        startsMs.get(startsMs.size() / 2),
        startsMs.get(startsMs.size() - 1));
  }

  private void fillTheShelves() {
    try (OpenStudio open = new OpenStudio(corner).withDemoCards()) {
      for (var material :
          open.studio.look(books -> books.cards().all(Drawers.MATERIAL)).stream()
              .map(CardVersion::body)
              .toList()) {
        if (material.unit() == UnitKind.MASS) {
          assertThat(
                  open.studio.receiveLot.run(
                      open.act(),
                      ReceiveLot.Request.of(
                          material.code(), "START-" + material.code(), Amount.ofGrams(9e6))))
              .matches(outcome -> outcome.isDone());
        }
      }
    }
  }

  private void runAndKill(Path data, Random random, int round) throws Exception {
    killing = false;
    long began = System.nanoTime();
    RunningProgram program = RunningProgram.start(data, 0, corner.resolve("said"));
    List<Thread> clients = new ArrayList<>();
    try {
      int port = program.awaitPort();
      startsMs.add((System.nanoTime() - began) / 1_000_000);
      int before = acknowledged.size();
      for (int i = 0; i < CLIENTS; i++) {
        Client client = new Client(new Visitor(port), "r" + round + "c" + i);
        Thread thread = new Thread(client::work, "client-" + i);
        thread.start();
        clients.add(thread);
      }
      Instant patience = Instant.now().plus(PATIENCE);
      while (acknowledged.size() == before
          && surprises.isEmpty()
          && Instant.now().isBefore(patience)) {
        Thread.sleep(5);
      }
      Thread.sleep(random.nextInt(1_500));
      assertThat(program.isAlive()).as("it runs until it is killed").isTrue();
      assertThat(surprises).isEmpty();
    } finally {
      killing = true;
      program.kill();
    }
    program.assertKilled();
    for (Thread client : clients) {
      client.join(20_000);
      assertThat(client.isAlive()).as("a client noticed the end").isFalse();
    }
  }

  /** Somebody at a phone: reads a page, fills its form in, reads what came of it. */
  private final class Client {
    private final Visitor visitor;
    private final String name;

    Client(Visitor visitor, String name) {
      this.visitor = visitor;
      this.name = name;
    }

    void work() {
      try {
        for (int i = 0; ; i++) {
          deliver(i);
          cast();
        }
      } catch (IllegalStateException | AssertionError e) {
        // A program that was killed under a request acknowledges nothing.
        if (!killing) {
          surprises.add(e);
        }
      }
    }

    private void deliver(int i) {
      Map<String, String> delivery =
          Map.of("material", "rapid-grey", "amount", "5 kg", "lot", name + "-" + i, "by", "MB");
      String lot = send("/stockroom/receive", "/stockroom/receive", delivery);
      if (lot.startsWith("/stockroom/lot/")) {
        send(lot, lot + "/off", Map.of("off", "1 g", "off-why", "spilt", "by", "MB"));
      }
    }

    private void cast() {
      String sheet = "/casting/sheet?mix=grey&vessel1=bollard&count1=1&water_c=20&room_c=20&step=1";
      String batch = send(sheet, "/casting/start", Map.of("by", "MB"));
      for (int step = 0; step < 12; step++) {
        Document page = visitor.page(batch);
        if (page.selectFirst("form[action=" + batch + "/step]") == null) {
          return;
        }
        send(batch, batch + "/step", Map.of("by", "MB"));
      }
    }

    /** Sends a form; what the next page says was done counts as acknowledged. */
    private String send(String path, String action, Map<String, String> typed) {
      Element found = visitor.page(path).selectFirst("form[action=" + action + "]");
      if (!(found instanceof FormElement form)) {
        throw new AssertionError(path + " has no form for " + action);
      }
      Map<String, String> fields = new LinkedHashMap<>();
      form.formData().forEach(kv -> fields.put(kv.key(), kv.value()));
      fields.putAll(typed);
      HttpResponse<String> answer = visitor.post(action, fields);
      String next = answer.headers().firstValue("Location").orElse("");
      if (answer.statusCode() != 303 || next.isEmpty()) {
        throw new AssertionError(
            action
                + " was answered "
                + answer.statusCode()
                + Jsoup.parse(answer.body()).select(".wrong, .complaints, h1").text());
      }
      Document said = Jsoup.parse(visitor.get(next).body());
      if (said.selectFirst(".said-done") != null) {
        acknowledged.add(fields.getOrDefault("request_key", "none"));
      } else if (said.selectFirst(".said-refused") != null) {
        throw new AssertionError(said.select(".said").text());
      }
      return next;
    }
  }

  /** Deeds of which only a part is there. */
  private static List<String> halves(SqliteStore store) {
    return store.look(
        h ->
            h.createQuery(
                    """
                    SELECT d.verb || ' ' || d.id FROM deed d
                    WHERE (d.verb = 'recorded a step' AND (
                        (SELECT COUNT(*) FROM batch_step s WHERE s.deed_id = d.id) <> 1
                        OR (SELECT COUNT(*) FROM movement m WHERE m.deed_id = d.id) <>
                          (SELECT COUNT(*) FROM batch_step_amount a
                            JOIN batch_step s ON s.id = a.step_id
                            WHERE s.deed_id = d.id AND a.lot_id IS NOT NULL)))
                      OR (d.verb IN ('received a lot', 'wrote off') AND
                        (SELECT COUNT(*) FROM movement m WHERE m.deed_id = d.id) <> 1)
                      OR (d.verb LIKE 'began%' AND
                        (SELECT COUNT(*) FROM batch b WHERE b.deed_id = d.id) <> 1)
                    """)
                .mapTo(String.class)
                .list());
  }
}
