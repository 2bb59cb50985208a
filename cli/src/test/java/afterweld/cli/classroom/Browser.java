package afterweld.cli.classroom;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/** A headless Chromium with one page, driven over its DevTools protocol. */
public final class Browser implements AutoCloseable {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  private final Process process;
  private final HttpClient client = HttpClient.newHttpClient();
  private final AtomicInteger lastId = new AtomicInteger();
  private final Map<Integer, CompletableFuture<JsonNode>> waiting = new ConcurrentHashMap<>();
  private final List<String> complaints = new CopyOnWriteArrayList<>();
  private final List<String> requests = new CopyOnWriteArrayList<>();
  private final WebSocket socket;

  /** Where a Chromium is on this machine, if there is one. */
  public static Optional<Path> installed() {
    Stream<String> folders =
        Stream.concat(Stream.of("/usr/bin"), Arrays.stream(System.getenv("PATH").split(":", -1)));
    return folders
        .flatMap(
            folder ->
                Stream.of("chromium", "chromium-browser", "google-chrome")
                    .map(name -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /**
   * Starts it.
   *
   * @param folder for its own files
   */
  Browser(Path program, Path folder) throws Exception {
    process =
        new ProcessBuilder(
                program.toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--hide-scrollbars",
                "--remote-debugging-port=0",
                "--user-data-dir=" + folder,
                "about:blank")
            .redirectOutput(folder.resolveSibling("browser.out").toFile())
            .redirectError(folder.resolveSibling("browser.err").toFile())
            .start();
    socket =
        client
            .newWebSocketBuilder()
            .buildAsync(URI.create(pageSocket(port(folder))), new Listener())
            .get(PATIENCE.toSeconds(), TimeUnit.SECONDS);
    for (String domain : List.of("Page", "Runtime", "Log", "Network")) {
      send(domain + ".enable", Map.of());
    }
  }

  private static String port(Path folder) throws Exception {
    Path file = folder.resolve("DevToolsActivePort");
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (System.nanoTime() < end) {
      if (Files.exists(file) && Files.size(file) > 0) {
        return Files.readAllLines(file).get(0);
      }
      Thread.sleep(50);
    }
    throw new IllegalStateException("the browser does not start");
  }

  private String pageSocket(String port) throws Exception {
    URI list = URI.create("http://127.0.0.1:" + port + "/json/list");
    String answer =
        client.send(HttpRequest.newBuilder(list).build(), BodyHandlers.ofString()).body();
    for (JsonNode target : JSON.readTree(answer)) {
      if (target.get("type").asText().equals("page")) {
        return target.get("webSocketDebuggerUrl").asText();
      }
    }
    throw new IllegalStateException("the browser has no page");
  }

  private final class Listener implements WebSocket.Listener {
    private final StringBuilder text = new StringBuilder();

    @Override
    public CompletionStage<?> onText(WebSocket from, CharSequence part, boolean last) {
      text.append(part);
      if (last) {
        take(text.toString());
        text.setLength(0);
      }
      from.request(1);
      return null;
    }
  }

  private void take(String message) {
    try {
      JsonNode node = JSON.readTree(message);
      if (node.has("id")) {
        waiting.remove(node.get("id").asInt()).complete(node);
      } else {
        note(node.get("method").asText(), node.get("params"));
      }
    } catch (IOException broken) {
      complaints.add("unreadable message " + broken.getMessage());
    }
  }

  private void note(String method, JsonNode params) {
    switch (method) {
      case "Runtime.exceptionThrown" -> complaints.add(params.toString());
      case "Runtime.consoleAPICalled" -> complaints.add(params.toString());
      case "Log.entryAdded" -> {
        if (params.get("entry").get("level").asText().equals("error")) {
          complaints.add(params.toString());
        }
      }
      case "Network.requestWillBeSent" -> requests.add(params.get("request").get("url").asText());
      default -> {}
    }
  }

  /** What the page said on its console, and errors that nobody caught. */
  List<String> complaints() {
    return complaints;
  }

  /** Every address that was asked for. */
  List<String> requests() {
    return requests;
  }

  /** Sends a command of the protocol and returns its result. */
  JsonNode send(String method, Map<String, ?> params) throws Exception {
    int id = lastId.incrementAndGet();
    CompletableFuture<JsonNode> answer = new CompletableFuture<>();
    waiting.put(id, answer);
    String text = JSON.writeValueAsString(Map.of("id", id, "method", method, "params", params));
    synchronized (this) {
      socket.sendText(text, true).get(PATIENCE.toSeconds(), TimeUnit.SECONDS);
    }
    JsonNode node = answer.get(PATIENCE.toSeconds(), TimeUnit.SECONDS);
    if (node.has("error")) {
      throw new IllegalStateException(method + ": " + node.get("error"));
    }
    return node.get("result");
  }

  /** Goes to an address and waits until the page says it is ready. */
  void open(String address) throws Exception {
    send("Page.navigate", Map.of("url", "about:blank"));
    send("Page.navigate", Map.of("url", address));
    until("document.body && document.body.dataset.ready === 'true'");
  }

  /** Size of the window in pixels. */
  void size(int width, int height) throws Exception {
    send(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  /** A preference of the reader, such as {@code prefers-color-scheme} {@code dark}. */
  void prefer(String feature, String value) throws Exception {
    emulate("", List.of(Map.of("name", feature, "value", value)));
  }

  /** Lays the page out as for printing. */
  void asOnPaper() throws Exception {
    emulate("print", List.of());
  }

  /** On a screen, with no preferences. */
  void asUsual() throws Exception {
    emulate("", List.of());
  }

  private void emulate(String media, List<Map<String, String>> features) throws Exception {
    send("Emulation.setEmulatedMedia", Map.of("media", media, "features", features));
  }

  /** What a screen reader gets: the nodes of the accessibility tree that count. */
  List<JsonNode> spoken() throws Exception {
    List<JsonNode> nodes = new ArrayList<>();
    for (JsonNode node : send("Accessibility.getFullAXTree", Map.of()).get("nodes")) {
      if (!node.get("ignored").asBoolean()) {
        nodes.add(node);
      }
    }
    return nodes;
  }

  /** Where files go that the page saves. */
  void downloadTo(Path folder) throws Exception {
    send(
        "Browser.setDownloadBehavior",
        Map.of("behavior", "allow", "downloadPath", folder.toString()));
  }

  /** The value of an expression; promises are waited for. */
  JsonNode value(String expression) throws Exception {
    JsonNode result =
        send(
            "Runtime.evaluate",
            Map.of("expression", expression, "awaitPromise", true, "returnByValue", true));
    if (result.has("exceptionDetails")) {
      throw new IllegalStateException(expression + ": " + result.get("exceptionDetails"));
    }
    return result.get("result").path("value");
  }

  /** Waits until an expression is true. */
  void until(String expression) throws Exception {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (!value(expression).asBoolean()) {
      if (System.nanoTime() > end) {
        throw new IllegalStateException("waited in vain for " + expression);
      }
      Thread.sleep(25);
    }
  }

  /** Presses and releases a key; Enter types a line as well, which is what works a button. */
  void press(String key, int code) throws Exception {
    for (String type : List.of("keyDown", "keyUp")) {
      send(
          "Input.dispatchKeyEvent",
          Map.of(
              "type",
              type,
              "key",
              key,
              "code",
              key,
              "windowsVirtualKeyCode",
              code,
              "text",
              key.equals("Enter") ? "\r" : ""));
    }
  }

  /** The page as it prints, PDF. */
  byte[] print() throws Exception {
    JsonNode result = send("Page.printToPDF", Map.of("printBackground", true));
    return Base64.getDecoder().decode(result.get("data").asText());
  }

  @Override
  public void close() {
    socket.abort();
    process.descendants().forEach(ProcessHandle::destroyForcibly);
    process.destroyForcibly().onExit().join();
  }
}
