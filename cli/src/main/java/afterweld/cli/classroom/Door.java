package afterweld.cli.classroom;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Lets in what the page itself sends, and nothing from another place: a page of another site that
 * guesses the port, or a name that another machine points at this one.
 */
final class Door {
  /** A case is a page of text; with JSON round it, this is ample. */
  static final int LONGEST_BODY = 96 * 1024;

  /** Who still sends when the answer comes may not see it: this much more is let pass first. */
  private static final int SWALLOWED = 1 << 20;

  private final Set<String> hosts;
  private final Set<String> origins;

  Door(int port) {
    this.hosts = Set.of("127.0.0.1:" + port, "localhost:" + port);
    this.origins = Set.of("http://127.0.0.1:" + port, "http://localhost:" + port);
  }

  /**
   * Checks that a request is meant for this server.
   *
   * @throws Refusal if it is not
   */
  void checkAddress(HttpExchange exchange) {
    List<String> host = all(exchange.getRequestHeaders(), "Host");
    if (host.size() != 1 || !hosts.contains(host.get(0).toLowerCase(Locale.ROOT))) {
      throw new Refusal(Refusal.FORBIDDEN, "This server answers on its own address only.");
    }
  }

  /**
   * Checks that a request with a body comes from the page.
   *
   * @throws Refusal if it does not
   */
  void checkSender(HttpExchange exchange) {
    Headers headers = exchange.getRequestHeaders();
    boolean otherOrigin = all(headers, "Origin").stream().anyMatch(o -> !origins.contains(o));
    boolean otherSite =
        all(headers, "Sec-Fetch-Site").stream().anyMatch(site -> !site.equals("same-origin"));
    if (otherOrigin || otherSite) {
      throw new Refusal(Refusal.FORBIDDEN, "Only the classroom page may ask this.");
    }
    List<String> type = all(headers, "Content-Type");
    if (type.size() != 1 || !isJson(type.get(0))) {
      throw new Refusal(Refusal.WRONG_TYPE, "Expected Content-Type: application/json.");
    }
  }

  private static boolean isJson(String type) {
    String bare = type.split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
    return bare.equals("application/json");
  }

  private static List<String> all(Headers headers, String name) {
    List<String> values = headers.get(name);
    return values == null ? List.of() : values;
  }

  /**
   * The body of a request.
   *
   * @throws Refusal if it is too long
   */
  static byte[] body(HttpExchange exchange) throws IOException {
    byte[] body = exchange.getRequestBody().readNBytes(LONGEST_BODY + 1);
    if (body.length > LONGEST_BODY) {
      exchange.getRequestBody().readNBytes(SWALLOWED);
      throw new Refusal(Refusal.TOO_LONG, "Expected at most 96 KiB.");
    }
    return body;
  }
}
