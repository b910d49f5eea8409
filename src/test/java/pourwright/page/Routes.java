package pourwright.page;

import java.net.http.HttpResponse;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * Every page of a running studio, found by following the links from its places as a visitor would:
 * a few addresses of each route, so that different states of one page are among them.
 */
public final class Routes {
  private static final int OPENED = 3;
  private static final int PATIENCE = 60;

  private final List<String> patterns;
  private final int ofEach;
  private final List<String> pages = new ArrayList<>();
  private final Set<String> reached = new TreeSet<>();
  private final List<String> broken = new ArrayList<>();

  private Routes(Server server, int ofEach) {
    this.ofEach = ofEach;
    this.patterns =
        server.looks().stream()
            .sorted(
                Comparator.comparing((String p) -> p.contains("{"))
                    .thenComparing(Comparator.naturalOrder()))
            .toList();
  }

  /** Walks through the studio from these addresses, to at most so many pages of each route. */
  public static Routes walk(Server server, List<String> from, int ofEach) {
    Routes routes = new Routes(server, ofEach);
    routes.follow(new Visitor(server.port()), from);
    return routes;
  }

  private void follow(Visitor visitor, List<String> from) {
    Deque<String> ahead = new ArrayDeque<>(from);
    Set<String> seen = new HashSet<>(from);
    Map<String, Integer> counts = new HashMap<>();
    while (!ahead.isEmpty()) {
      String address = ahead.remove();
      Optional<String> pattern = pattern(address);
      boolean stream = address.startsWith("/bells/");
      if (stream
          || (pattern.isPresent() && counts.merge(pattern.get(), 1, Integer::sum) > OPENED)) {
        continue;
      }
      HttpResponse<String> answer = settled(visitor, address);
      pattern.ifPresent(reached::add);
      if (answer.statusCode() >= 500) {
        broken.add(address);
      }
      if (!answer.body().stripLeading().startsWith("<!DOCTYPE html>")) {
        continue;
      }
      if (pattern.isEmpty() || counts.getOrDefault(pattern.get(), 0) <= ofEach) {
        pages.add(address);
      }
      Document page = Jsoup.parse(answer.body(), visitor.base());
      for (Element link : page.select("main a[href], main form[method=get][action]")) {
        String to = link.hasAttr("href") ? link.attr("href") : link.attr("action");
        String plain = to.replaceFirst("#.*", "");
        if (plain.startsWith("/") && seen.add(plain)) {
          ahead.add(plain);
        }
      }
    }
  }

  /** A page that is still being worked out asks to be looked at again. */
  private static HttpResponse<String> settled(Visitor visitor, String address) {
    HttpResponse<String> answer = visitor.get(address);
    for (int i = 0; i < PATIENCE && answer.headers().firstValue("Refresh").isPresent(); i++) {
      try {
        Thread.sleep(500);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return answer;
      }
      answer = visitor.get(address);
    }
    return answer;
  }

  /** The route an address belongs to. */
  public Optional<String> pattern(String address) {
    String path = address.replaceFirst("\\?.*", "");
    return patterns.stream().filter(p -> path.matches(regex(p))).findFirst();
  }

  private static String regex(String pattern) {
    return pattern.replace(".", "\\.").replaceAll("\\{[^}]+}", "[^/]+");
  }

  /** Addresses of whole pages. */
  public List<String> pages() {
    return List.copyOf(pages);
  }

  /** Addresses at which the program failed. */
  public List<String> broken() {
    return List.copyOf(broken);
  }

  /** Routes that no link led to. */
  public Set<String> unreached() {
    Set<String> left = new TreeSet<>(patterns);
    left.removeAll(reached);
    return left;
  }
}
