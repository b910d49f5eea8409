package pourwright.page;

import java.util.Set;

/**
 * Where the server listens and how far it looks for a free port.
 *
 * @param host the address to listen on, {@code 127.0.0.1} unless she shares the studio
 * @param port the port wanted; 0 for any
 * @param probe how many ports after it are tried when it is taken; 0 for none
 * @param names names besides the machine's own that the server answers to when shared
 * @param studio the studio's name for the head of the page
 */
public record ServerSettings(String host, int port, int probe, Set<String> names, String studio) {
  /** The port of a studio that has not chosen another. */
  public static final int PORT = 27687;

  /** How many further ports are tried. */
  public static final int PROBE = 9;

  /** On this machine alone, on any free port: what tests use. */
  public static ServerSettings onAnyPort(String studio) {
    return new ServerSettings("127.0.0.1", 0, 0, Set.of(), studio);
  }

  /** Whether only this machine can reach the server. */
  public boolean loopbackOnly() {
    return host.equals("localhost") || host.equals("::1") || host.startsWith("127.");
  }
}
