package pourwright.page.guard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A name of somebody else's that points at this machine opens nothing. */
class HostRuleTest {
  private static final int PORT = 27687;
  private final HostRule alone = HostRule.loopbackOnly();

  @ParameterizedTest
  @ValueSource(strings = {"localhost:27687", "127.0.0.1:27687", "[::1]:27687", "LOCALHOST:27687"})
  void theNamesOfLoopbackAreAnswered(String host) {
    alone.check(host, 1, PORT);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "evil.example",
        "evil.example:27687",
        "localhost",
        "localhost:80",
        "localhost:27688",
        "localhost:",
        "localhost:27687:27687",
        "localhost.evil.example:27687",
        "evil.localhost:27687",
        "localhost.:27687",
        "127.0.0.1",
        "127.0.0.1:8080",
        "127.0.0.1.evil.example:27687",
        "127.0.0.2:27687",
        "127.1:27687",
        "2130706433:27687",
        "0x7f000001:27687",
        "0.0.0.0:27687",
        "[::]:27687",
        "[::1]",
        "[::1]:1",
        "[::ffff:127.0.0.1]:27687",
        "::1:27687",
        "192.168.1.20:27687",
        "10.0.0.1:27687",
        "studio.local:27687",
        "localhost@evil.example:27687",
        "evil.example#localhost:27687",
        "evil.example/localhost:27687",
        " localhost:27687",
        "localhost:27687 ",
        "localhost:+27687",
        "localhost:027687",
        "l\u00f6calhost:27687",
        "*:27687"
      })
  void anyOtherNameIsMisdirected(String host) {
    Assertions.assertThatThrownBy(() -> alone.check(host, 1, PORT))
        .isInstanceOfSatisfying(TurnedAway.class, e -> assertThat(e.status()).isEqualTo(421));
  }

  @Test
  void aMissingEmptyOrDoubleHostIsABadRequest() {
    for (Runnable attempt :
        new Runnable[] {
          () -> alone.check(null, 0, PORT),
          () -> alone.check("", 1, PORT),
          () -> alone.check("localhost:27687", 2, PORT)
        }) {
      Assertions.assertThatThrownBy(attempt::run)
          .isInstanceOfSatisfying(TurnedAway.class, e -> assertThat(e.status()).isEqualTo(400));
    }
  }

  @Test
  void aSharedStudioAlsoAnswersToTheNamesItWasGiven() {
    HostRule shared = HostRule.alsoKnownAs(Set.of("192.168.1.20", "Undercroft.local"));
    shared.check("192.168.1.20:27687", 1, PORT);
    shared.check("undercroft.local:27687", 1, PORT);
    Assertions.assertThatThrownBy(() -> shared.check("192.168.1.21:27687", 1, PORT))
        .isInstanceOf(TurnedAway.class);
  }

  @Test
  void onPort80TheNameAloneWillDo() {
    alone.check("localhost", 1, 80);
  }

  @Test
  void thisMachineKnowsItsOwnLoopbackAddress() {
    assertThat(HostRule.namesOfThisMachine()).contains("127.0.0.1");
  }
}
