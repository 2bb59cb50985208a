package afterweld.cli.classroom;

import java.util.List;

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

  private final int status;
  private final List<String> lines;

  Refusal(int status, List<String> lines) {
    super(String.join("\n", lines));
    this.status = status;
    this.lines = List.copyOf(lines);
  }

  Refusal(int status, String line) {
    this(status, List.of(line));
  }

  int status() {
    return status;
  }

  List<String> lines() {
    return lines;
  }
}
