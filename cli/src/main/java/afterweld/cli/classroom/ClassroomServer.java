package afterweld.cli.classroom;

import com.fasterxml.jackson.databind.JsonNode;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;

/**
 * Serves the classroom page and what it asks for, on the loopback address only. What has no path,
 * such as {@code GET a:b}, and what is no URI never gets here: the server of the JDK hangs up on
 * the first and answers the second itself.
 */
public final class ClassroomServer {
  private static final int OK = 200;
  private static final int BROKEN = 500;
  private static final String JSON = "application/json; charset=utf-8";
  private static final Map<String, String> ALWAYS =
      Map.of(
          "Content-Security-Policy",
          "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self';"
              + " img-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none';"
              + " frame-ancestors 'none'",
          "X-Content-Type-Options",
          "nosniff",
          "Referrer-Policy",
          "no-referrer",
          "Cross-Origin-Opener-Policy",
          "same-origin",
          "Cross-Origin-Resource-Policy",
          "same-origin",
          "Cache-Control",
          "no-store");

  private final HttpServer http;
  private final Workers workers = new Workers();
  private final Classroom classroom = new Classroom();
  private final PageFiles files = new PageFiles();
  private final Door door;
  private final CountDownLatch stopped = new CountDownLatch(1);
  private final Map<String, Function<JsonNode, Map<String, Object>>> questions =
      Map.of(
          "/api/section", classroom::section,
          "/api/save", classroom::saved,
          "/api/open", classroom::opened);

  private ClassroomServer(HttpServer http) {
    this.http = http;
    this.door = new Door(http.getAddress().getPort());
    http.setExecutor(workers);
    http.createContext("/", this::handle);
  }

  /**
   * Starts a server.
   *
   * @param port 0 for any that is free
   * @throws IOException if the port is taken or not allowed
   */
  public static ClassroomServer start(int port) throws IOException {
    tuneServer();
    InetAddress loopback = InetAddress.getByAddress(new byte[] {127, 0, 0, 1});
    ClassroomServer server =
        new ClassroomServer(HttpServer.create(new InetSocketAddress(loopback, port), 0));
    server.http.start();
    server.workers.execute(server::warmUp);
    return server;
  }

  private void warmUp() {
    try {
      JsonNode lessons = Json.object(files.at("/lessons.json").orElseThrow().content());
      List<JsonNode> trees = new ArrayList<>();
      trees.add(lessons.get("start"));
      lessons.get("warm_up").forEach(trees::add);
      classroom.warmUp(trees);
    } catch (InterruptedException stopping) {
      Thread.currentThread().interrupt();
    }
  }

  /**
   * The server of the JDK reads these once: seconds for a request to arrive, idle connections, and
   * that an answer's body does not wait for its head to be acknowledged, which takes 40 ms.
   */
  private static void tuneServer() {
    System.setProperty("sun.net.httpserver.nodelay", "true");
    System.setProperty("sun.net.httpserver.maxReqTime", "20");
    System.setProperty("sun.net.httpserver.maxRspTime", "60");
    System.setProperty("sun.net.httpserver.maxIdleConnections", "40");
  }

  /** Where the page is. */
  public String address() {
    return "http://127.0.0.1:" + http.getAddress().getPort() + "/";
  }

  /** Ends all work and gives the port back. */
  public void stop() {
    classroom.close();
    http.stop(0);
    workers.stop();
    stopped.countDown();
  }

  /** Waits until somebody stops it. */
  public void await() throws InterruptedException {
    stopped.await();
  }

  private void handle(HttpExchange exchange) throws IOException {
    try (exchange) {
      answer(exchange);
    }
  }

  private void answer(HttpExchange exchange) throws IOException {
    ALWAYS.forEach(exchange.getResponseHeaders()::set);
    try {
      Workers.checkTime();
      door.checkAddress(exchange);
      found(exchange).send(exchange, OK);
    } catch (Refusal refusal) {
      refusal.headers().forEach(exchange.getResponseHeaders()::set);
      problems(refusal.lines()).send(exchange, refusal.status());
    } catch (RuntimeException | StackOverflowError fault) {
      String name = fault.getClass().getSimpleName();
      problems(List.of("Something inside went wrong (" + name + ").")).send(exchange, BROKEN);
    }
  }

  private static PageFile problems(List<String> lines) {
    return json(Map.of("problems", lines));
  }

  private PageFile found(HttpExchange exchange) throws IOException {
    String path = exchange.getRequestURI().getPath();
    Function<JsonNode, Map<String, Object>> question = questions.get(path);
    if (question != null) {
      requireMethod(exchange, "POST");
      door.checkSender(exchange);
      return json(question.apply(Json.object(Door.body(exchange))));
    }
    requireMethod(exchange, "GET", "HEAD");
    return path.equals("/api/library")
        ? json(classroom.library())
        : files
            .at(path)
            .orElseThrow(() -> new Refusal(Refusal.NOT_FOUND, "There is nothing at this address."));
  }

  private static PageFile json(Map<String, Object> keys) {
    return new PageFile(JSON, Json.bytes(keys));
  }

  private static void requireMethod(HttpExchange exchange, String... allowed) {
    if (!List.of(allowed).contains(exchange.getRequestMethod())) {
      throw Refusal.wrongMethod(List.of(allowed));
    }
  }
}
