package pourwright.page.guard;

import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.Enumeration;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Which names this server answers to. A page on the internet can make its own name point at this
 * machine; the browser then sends that name as Host, and this rule is what keeps it out. A name
 * without a port is meant for port 80.
 */
public final class HostRule {
  private static final Set<String> LOOPBACK = Set.of("localhost", "127.0.0.1", "[::1]");

  private final Set<String> names;

  private HostRule(Set<String> names) {
    this.names = Set.copyOf(names);
  }

  /** Answers to the names of this machine's loopback alone. */
  public static HostRule loopbackOnly() {
    return new HostRule(LOOPBACK);
  }

  /** Answers to loopback and to what is given besides, such as {@code 192.168.1.20}. */
  public static HostRule alsoKnownAs(Set<String> more) {
    Set<String> names = new LinkedHashSet<>(LOOPBACK);
    more.forEach(name -> names.add(name.toLowerCase(Locale.ROOT)));
    return new HostRule(names);
  }

  /**
   * The address literals of this machine's interfaces, its host name and its {@code .local} name.
   */
  public static Set<String> namesOfThisMachine() {
    Set<String> names = new LinkedHashSet<>();
    try {
      Enumeration<NetworkInterface> cards = NetworkInterface.getNetworkInterfaces();
      while (cards.hasMoreElements()) {
        cards.nextElement().inetAddresses().forEach(a -> names.add(literal(a)));
      }
      String host = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
      names.add(host);
      names.add(host + ".local");
    } catch (SocketException | UnknownHostException e) {
      // a machine without a name still answers to its addresses
      names.remove("");
    }
    return names;
  }

  private static String literal(InetAddress address) {
    String text = address.getHostAddress();
    int zone = text.indexOf('%');
    String plain = zone < 0 ? text : text.substring(0, zone);
    return plain.contains(":") ? "[" + plain + "]" : plain;
  }

  /** The names answered to, for the page that shows how a phone reaches the studio. */
  public Set<String> names() {
    return names;
  }

  /**
   * Lets a request in or turns it away.
   *
   * @param host the Host header, null when there was none
   * @param headers how many Host headers there were
   * @param port the port this server listens on
   */
  public void check(@Nullable String host, int headers, int port) {
    if (host == null || host.isEmpty() || headers != 1) {
      throw new TurnedAway(
          400, "The request does not say which host it is for", "Open the address shown at start.");
    }
    if (!answersTo(host, port)) {
      throw new TurnedAway(
          421,
          "This studio does not answer to that name",
          "Open the address that Pourwright printed when it started. If the machine has another"
              + " name on your network, add it with --name.");
    }
  }

  private boolean answersTo(String host, int port) {
    String lower = host.toLowerCase(Locale.ROOT);
    int colon = lower.startsWith("[") ? lower.indexOf(':', lower.indexOf(']')) : lower.indexOf(':');
    String name = colon < 0 ? lower : lower.substring(0, colon);
    String wanted = colon < 0 ? "80" : lower.substring(colon + 1);
    return names.contains(name) && wanted.equals(String.valueOf(port));
  }
}
