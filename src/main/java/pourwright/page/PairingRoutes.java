package pourwright.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import pourwright.page.guard.Door;
import pourwright.page.guard.Pairing;

/**
 * A phone is let in by pointing its camera at a code on the laptop: a plain address with a word
 * that is good once. Opening the address does not use the word up, the tap after it does; so a
 * messenger or a browser that looks ahead spends nothing.
 */
public final class PairingRoutes {
  private final Door door;
  private final Clock clock;
  private final ServerSettings settings;
  private final Pairing pairing = new Pairing();

  PairingRoutes(Door door, Clock clock, ServerSettings settings) {
    this.door = door;
    this.clock = clock;
    this.settings = settings;
  }

  /**
   * The page with the code.
   *
   * @param address the address as text, empty when this studio cannot be reached by a phone
   * @param picture the same as a QR code
   * @param others the address by the machine's other names, if the first cannot be reached
   */
  public record CodePage(String address, String picture, List<String> others) {}

  void addTo(RoutesConfig routes) {
    routes.post("/devices/code", this::code);
    routes.get("/pair/{code}", this::ask);
    routes.post("/pair/{code}", this::letIn);
  }

  private void code(Context http) {
    if (settings.loopbackOnly()) {
      Show.page(http, "desk/code.jte", new CodePage("", "", List.of()));
      return;
    }
    String code = pairing.code(clock.instant());
    List<String> addresses =
        hosts(http).stream()
            .map(h -> http.scheme() + "://" + h + ":" + http.req().getLocalPort() + "/pair/" + code)
            .toList();
    String first = addresses.get(0);
    Show.page(
        http,
        "desk/code.jte",
        new CodePage(
            first,
            QrPicture.of(first, "Code to let a phone in"),
            addresses.subList(1, addresses.size())));
  }

  /** The machine's addresses on its networks, then names it was given; else the name in use. */
  private List<String> hosts(Context http) {
    List<String> hosts = new ArrayList<>();
    try {
      for (NetworkInterface card : Collections.list(NetworkInterface.getNetworkInterfaces())) {
        for (InetAddress address : Collections.list(card.getInetAddresses())) {
          if (address instanceof Inet4Address && !address.isLoopbackAddress()) {
            hosts.add(address.getHostAddress());
          }
        }
      }
    } catch (SocketException e) {
      hosts.clear();
    }
    hosts.addAll(settings.names());
    if (hosts.isEmpty()) {
      hosts.add(java.net.URI.create(http.url()).getHost());
    }
    return hosts;
  }

  private void ask(Context http) {
    Show.page(http, "desk/pair.jte", pairing.good(http.pathParam("code"), now()));
  }

  private void letIn(Context http) {
    if (!pairing.use(http.pathParam("code"), now())) {
      http.status(HttpStatus.FORBIDDEN);
      Show.page(http, "desk/pair.jte", false);
      return;
    }
    door.signIn(http);
    http.redirect("/", HttpStatus.SEE_OTHER);
  }

  private Instant now() {
    return clock.instant();
  }
}
