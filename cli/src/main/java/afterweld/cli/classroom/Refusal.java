package afterweld.cli.classroom;

import java.util.List;
import java.util.Map;

/**
 * A request that is not answered with a result: a status of HTTP, and why in sentences. A case that
 * cannot be computed is no fault of the request: that is the answer to it.
 */
final class Refusal extends RuntimeException {
  static final int FAULTY_CASE = 200;
  static final int BAD_REQUEST = 400;
  static final int FORBIDDEN = 403;
  static final int NOT_FOUND = 404;
  static final int WRONG_METHOD = 405;
  static final int OUTDATED = 409;
  static final int TOO_LONG = 413;
  static final int WRONG_TYPE = 415;
  static final int BUSY = 503;

  private static final String SOON_S = "2";

  private final int status;
  private final List<String> lines;
  private final Map<String, String> headers;

  private Refusal(int status, List<String> lines, Map<String, String> headers) {
    super(String.join("\n", lines));
    this.status = status;
    this.lines = List.copyOf(lines);
    this.headers = Map.copyOf(headers);
  }

  Refusal(int status, List<String> lines) {
    this(status, lines, Map.of());
  }

  Refusal(int status, String line) {
    this(status, List.of(line));
  }

  /** Too many ask; it is worth while to ask again. */
  static Refusal busy() {
    return new Refusal(
        BUSY,
        List.of("Too much is being computed at once; try again."),
        Map.of("Retry-After", SOON_S));
  }

  /** Only some methods fit the address. */
  static Refusal wrongMethod(List<String> allowed) {
    return new Refusal(
        WRONG_METHOD,
        List.of("Expected the method " + String.join(" or ", allowed) + "."),
        Map.of("Allow", String.join(", ", allowed)));
  }

  int status() {
    return status;
  }

  List<String> lines() {
    return lines;
  }

  /** What HTTP wants said beside it. */
  Map<String, String> headers() {
    return headers;
  }
}
