package afterweld.cli.classroom;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;

/** Content to be sent, with its type as HTTP names it. */
final class PageFile {
  private final String type;
  private final byte[] content;

  /** Content that nobody changes afterwards. */
  PageFile(String type, byte[] content) {
    this.type = type;
    this.content = content;
  }

  /** Its bytes. */
  byte[] content() {
    return content.clone();
  }

  /** Sends it; the answer to HEAD is its head alone. */
  void send(HttpExchange exchange, int status) throws IOException {
    exchange.getResponseHeaders().set("Content-Type", type);
    if (exchange.getRequestMethod().equals("HEAD")) {
      exchange.sendResponseHeaders(status, -1);
      return;
    }
    exchange.sendResponseHeaders(status, content.length);
    exchange.getResponseBody().write(content);
  }
}
