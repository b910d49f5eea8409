package pourwright.page.guard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.page.Desk;
import pourwright.page.PassphraseMissing;
import pourwright.page.Server;
import pourwright.page.ServerSettings;
import pourwright.page.TestStudio;
import pourwright.page.Visitor;
import pourwright.work.Act;
import pourwright.work.Subject;

/** A studio that other devices may reach asks each of them for the passphrase. */
class SharedStudioTest {
  private static final String PASSPHRASE = "slate tide lantern wick";

  private Path folder;
  private Desk desk;
  private Server server;

  @BeforeEach
  void share(@TempDir Path dir) {
    folder = dir;
    desk = TestStudio.desk(folder);
    server = TestStudio.share(TestStudio.site(desk), folder, PASSPHRASE);
  }

  @AfterEach
  void close() {
    server.close();
  }

  @Test
  void withoutAPassphraseTheStudioIsNotShared(@TempDir Path fresh) {
    ServerSettings open = new ServerSettings("0.0.0.0", 0, 0, Set.of(), "Test studio");
    assertThatThrownBy(
            () -> new Server(TestStudio.site(TestStudio.desk(fresh)), open, new SecretsFile(fresh)))
        .isInstanceOf(PassphraseMissing.class)
        .hasMessageContaining("pourwright passphrase");
  }

  @Test
  void aStrangerSeesTheSignInPageAndNothingElse() {
    Visitor stranger = new Visitor(server.port());
    for (String path : new String[] {"/", "/stockroom", "/bells", "/devices", "/readyz"}) {
      HttpResponse<String> answer = stranger.get(path);
      assertThat(answer.statusCode()).as(path).isEqualTo(303);
      assertThat(answer.headers().firstValue("Location")).hasValue("/sign-in");
    }
    assertThat(stranger.get("/healthz").statusCode()).isEqualTo(200);
    assertThat(stranger.get("/sign-in").statusCode()).isEqualTo(200);
    assertThat(stranger.post("/sign-in", "/look", Map.of()).statusCode()).isEqualTo(401);
  }

  @Test
  void theSignInPageTellsAStrangerNothingOfTheStudio() {
    desk.studio()
        .timers
        .start(
            Act.of("MK", "a timer"),
            "Demold the secret shape",
            new Subject(Subject.Kind.STUDIO, "studio"),
            Duration.ofMinutes(5));
    String page = new Visitor(server.port()).get("/sign-in").body();
    assertThat(page).contains("Passphrase").doesNotContain("secret shape", "set a timer");
  }

  @Test
  void thePassphraseLetsADeviceInUnderANewNameUntilItIsSignedOut() {
    Visitor phone = new Visitor(server.port());
    HttpResponse<String> before = phone.get("/sign-in");
    HttpResponse<String> in = phone.post("/sign-in", "/sign-in", Map.of("passphrase", PASSPHRASE));
    assertThat(in.statusCode()).isEqualTo(303);
    assertThat(cookie(in)).isNotEmpty().isNotEqualTo(cookie(before));
    assertThat(phone.get("/stockroom").statusCode()).isEqualTo(200);

    Visitor laptop = new Visitor(server.port());
    laptop.post("/sign-in", "/sign-in", Map.of("passphrase", PASSPHRASE));
    String first = laptop.page("/devices").select("input[name=device]").get(1).val();
    laptop.post("/devices", "/devices/end", Map.of("device", first));
    assertThat(phone.get("/stockroom").statusCode()).isEqualTo(303);
    assertThat(laptop.get("/stockroom").statusCode()).isEqualTo(200);
  }

  @Test
  void aCookieFromBeforeTheSignInIsWorthNothingAfterIt() {
    Visitor thief = new Visitor(server.port());
    thief.get("/sign-in");
    Visitor victim = new Visitor(server.port());
    victim.post("/sign-in", "/sign-in", Map.of("passphrase", PASSPHRASE));
    assertThat(thief.get("/").statusCode()).isEqualTo(303);
  }

  @Test
  void guessingIsSlowedDownAfterFiveAttempts() {
    Visitor guesser = new Visitor(server.port());
    for (int i = 0; i < 5; i++) {
      assertThat(guess(guesser, "wrong guess " + i)).isEqualTo(422);
    }
    assertThat(guess(guesser, "wrong guess 6")).isEqualTo(429);
    assertThat(guess(guesser, PASSPHRASE)).isEqualTo(429);
  }

  private static int guess(Visitor guesser, String passphrase) {
    return guesser.post("/sign-in", "/sign-in", Map.of("passphrase", passphrase)).statusCode();
  }

  @Test
  void waitsDoubleUpToAQuarterOfAnHour() {
    Attempts attempts = new Attempts();
    Instant now = Instant.parse("2026-03-02T08:00:00Z");
    Duration last = Duration.ZERO;
    for (int i = 0; i < 20; i++) {
      attempts.wrong("10.0.0.9", now);
      Duration wait = attempts.waitFor("10.0.0.9", now);
      assertThat(wait).isGreaterThanOrEqualTo(last).isLessThanOrEqualTo(Duration.ofMinutes(15));
      last = wait;
    }
    assertThat(last).isEqualTo(Duration.ofMinutes(15));
    assertThat(attempts.waitFor("10.0.0.8", now)).isZero();
  }

  @Test
  void thePassphraseIsKeptAsAnArgon2idHashOfTheStrengthThatIsAskedFor() throws Exception {
    String kept = Files.readString(folder.resolve(SecretsFile.NAME));
    assertThat(kept).contains("$argon2id$v=19$m=19456,t=2,p=1$").doesNotContain(PASSPHRASE);
  }

  @Test
  void shortAndCommonPassphrasesAreTalkedOutOf() {
    assertThat(Passphrase.complaint("wick")).isPresent();
    assertThat(Passphrase.complaint("Password1")).isPresent();
    assertThat(Passphrase.complaint(PASSPHRASE)).isEmpty();
    assertThat(Passphrase.complaint("x".repeat(300))).isPresent();
  }

  private static String cookie(HttpResponse<String> answer) {
    return answer.headers().allValues("Set-Cookie").stream()
        .filter(c -> c.startsWith("pourwright-"))
        .map(c -> c.substring(0, c.indexOf(';')))
        .findFirst()
        .orElse("");
  }
}
