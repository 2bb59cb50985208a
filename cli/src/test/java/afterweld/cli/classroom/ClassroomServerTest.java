package afterweld.cli.classroom;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The server towards its page, and towards everybody else. */
class ClassroomServerTest {
  private static ClassroomServer server;
  private static Visitor visitor;
  private static String host;

  @BeforeAll
  static void start() throws IOException {
    server = ClassroomServer.start(0);
    visitor = new Visitor(server.address());
    host = "127.0.0.1:" + URI.create(server.address()).getPort();
  }

  @AfterAll
  static void stop() {
    server.stop();
  }

  private static void assertPolite(String answer) {
    assertFalse(answer.contains("Exception in"), answer);
    assertFalse(answer.contains("\tat "), answer);
    assertFalse(answer.contains("afterweld.cli.classroom."), answer);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"/", "/app.js", "/style.css", "/lessons.json", "/icon.svg", "/api/library"})
  void thePageComesWithAStrictPolicy(String path) throws Exception {
    HttpResponse<String> answer = visitor.get(path);
    assertEquals(200, answer.statusCode());
    String policy = answer.headers().firstValue("Content-Security-Policy").orElseThrow();
    assertTrue(policy.startsWith("default-src 'none'; script-src 'self'"), policy);
    assertFalse(policy.contains("unsafe"), policy);
    assertEquals("nosniff", answer.headers().firstValue("X-Content-Type-Options").orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/nothing",
        "/../pom.xml",
        "/%2e%2e/pom.xml",
        "/app.js/",
        "//app.js",
        "/API/section"
      })
  void nothingElseIsServed(String path) throws Exception {
    String answer =
        visitor.raw("GET " + path + " HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n");
    assertTrue(answer.startsWith("HTTP/1.1 404"), answer);
    assertPolite(answer);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Host: example.org",
        "Host: 127.0.0.1",
        "Host: 127.0.0.1:1",
        "Host: localhost.example.org:80",
        "Host:",
        "X-Nothing: 1"
      })
  void anotherHostIsRefused(String line) throws IOException {
    String answer = visitor.raw("GET / HTTP/1.1\r\n" + line + "\r\nConnection: close\r\n\r\n");
    assertTrue(answer.startsWith("HTTP/1.1 403") || answer.startsWith("HTTP/1.1 400"), answer);
    assertFalse(answer.contains("<html"), answer);
  }

  @ParameterizedTest
  @CsvSource({
    "Origin, http://example.org",
    "Origin, null",
    "Origin, http://127.0.0.1:1",
    "Sec-Fetch-Site, cross-site",
    "Sec-Fetch-Site, same-site",
    "Sec-Fetch-Site, none"
  })
  void aPostFromAnotherPlaceIsRefused(String name, String value) throws Exception {
    HttpResponse<String> answer = visitor.post("/api/save", "{}", name, value);
    assertEquals(403, answer.statusCode());
    assertTrue(answer.body().contains("Only the classroom page"), answer.body());
  }

  @Test
  void aFormOfAnotherPageCannotEvenLookLikeJson() throws Exception {
    String answer =
        visitor.raw(
            "POST /api/save HTTP/1.1\r\nHost: "
                + host
                + "\r\nContent-Type: text/plain\r\nContent-Length: 2\r\nConnection: close\r\n\r\n{}");
    assertTrue(answer.startsWith("HTTP/1.1 415"), answer);
  }

  @ParameterizedTest
  @ValueSource(strings = {"PUT", "DELETE", "OPTIONS", "GET"})
  void questionsAreAskedWithPostOnly(String method) throws IOException {
    String answer =
        visitor.raw(
            method + " /api/section HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n");
    assertTrue(answer.startsWith("HTTP/1.1 405"), answer);
    assertTrue(answer.contains("\r\nAllow: POST\r\n"), answer);
  }

  @Test
  void filesAreOnlyRead() throws Exception {
    HttpResponse<String> answer = visitor.post("/app.js", "{}");
    assertEquals(405, answer.statusCode());
    assertEquals("GET, HEAD", answer.headers().firstValue("Allow").orElseThrow());
  }

  /** The server of the JDK looks for a path before it asks anybody. */
  @ParameterizedTest
  @CsvSource({"a:b, ''", "/%zz, HTTP/1.1 400"})
  void whatHasNoPathNeverGetsHere(String target, String answer) throws IOException {
    String raw =
        visitor.raw(
            "GET " + target + " HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n");
    assertEquals(answer, raw.lines().findFirst().orElse("").replaceFirst(" Bad Request.*", ""));
    assertPolite(raw);
  }

  /** Requests that never end hold all threads, and others the whole queue. */
  @Test
  void whoComesWhenAllAreTakenIsToldSo() throws Exception {
    ClassroomServer other = ClassroomServer.start(0);
    int port = URI.create(other.address()).getPort();
    List<Socket> crowd = new ArrayList<>();
    try {
      for (int i = 0; i < Workers.THREADS + Workers.WAITING; i++) {
        crowd.add(new Socket(InetAddress.getLoopbackAddress(), port));
        crowd.get(i).getOutputStream().write("GET / HTTP/1.1\r\n".getBytes(US_ASCII));
      }
      Thread.sleep(300);
      HttpResponse<String> answer = new Visitor(other.address()).get("/");
      assertEquals(503, answer.statusCode());
      assertTrue(answer.headers().firstValue("Retry-After").isPresent());
    } finally {
      for (Socket one : crowd) {
        one.close();
      }
      other.stop();
    }
  }

  @Test
  void aRequestThatIsTooLongIsRefused() throws Exception {
    HttpResponse<String> answer = visitor.post("/api/section", " ".repeat(200_000));
    assertEquals(413, answer.statusCode());
    assertTrue(answer.body().contains("96 KiB"), answer.body());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '~',
      value = {
        "{;not JSON",
        "[];a JSON object",
        "{\"a\":1,\"a\":2};Duplicate",
        "{\"a\":NaN};token 'NaN'.",
        "{};page: expected text",
        "{\"page\":\"p\"};turn: expected a whole number",
        "{\"page\":\"p\",\"turn\":1.5};turn: expected a whole number",
        "{\"page\":\"p\",\"turn\":1};want: expected text",
        "{\"page\":\"p\",\"turn\":1,\"want\":\"settled\"};case: expected an object",
        "{\"page\":\"p\",\"turn\":1,\"want\":\"settled\",\"case\":{}};left"
      })
  void aBadQuestionGetsAClearAnswer(String body, String words) throws Exception {
    HttpResponse<String> answer = visitor.post("/api/section", body);
    assertEquals(words.equals("left") ? 200 : 400, answer.statusCode(), answer.body());
    assertTrue(answer.body().startsWith("{\"problems\":["), answer.body());
    assertTrue(answer.body().contains(words), answer.body());
    assertPolite(answer.body());
  }

  private static String opened(String text) throws Exception {
    ObjectNode question = Visitor.tree("{}").put("name", "trick.yaml").put("text", text);
    HttpResponse<String> answer = visitor.post("/api/open", question.toString());
    assertTrue(answer.statusCode() == 200 || answer.statusCode() == 400, answer.body());
    assertPolite(answer.body());
    return answer.body();
  }

  @Test
  void filesThatAreTricksAreToldTheirFault() throws Exception {
    assertTrue(opened("[".repeat(40_000)).contains("nested more than"));
    assertTrue(opened("\u0000").contains("invisible character"));
    StringBuilder growing = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
    for (int i = 1; i < 12; i++) {
      String ten = String.join(", ", Collections.nCopies(10, "*a" + (i - 1)));
      growing.append("a" + i + ": &a" + i + " [" + ten + "]\n");
    }
    assertTrue(opened(growing.toString()).contains("unknown key 'a0'"));
    String passes = "{process: GTAW-AC, current: 1 A}, ".repeat(1_500);
    assertTrue(opened("passes: [" + passes + "]\n").contains("1 to 50"));
  }

  @Test
  void aWeldThatDoesNotMeltIsToldInAClearSentence() throws Exception {
    ObjectNode cold = visitor.startCase();
    ((ObjectNode) cold.get("passes").get(0)).put("current", "10 A");
    HttpResponse<String> answer =
        visitor.post("/api/section", Visitor.question("cold", 1, "settled", cold).toString());
    assertTrue(answer.body().contains("Pass 1: "), answer.body());
    assertPolite(answer.body());
  }

  /** Seeded, so that what fails fails again. */
  @Test
  void noiseIsAnsweredPolitelyAndTheServerGoesOn() throws Exception {
    Random random = new Random(20_261_125);
    String good = Visitor.question("noise", 1, "preview", visitor.startCase()).toString();
    for (int round = 0; round < 300; round++) {
      String body = spoiled(good, random).replace("\"noise\"", "\"noise" + round + "\"");
      HttpResponse<String> answer = visitor.post("/api/section", body);
      assertTrue(List.of(200, 400).contains(answer.statusCode()), body + answer.body());
      assertPolite(answer.body());
    }
    for (int round = 0; round < 60; round++) {
      assertPolite(visitor.raw(noise(random)));
    }
    assertEquals(200, visitor.post("/api/section", good).statusCode());
  }

  private static String spoiled(String good, Random random) {
    StringBuilder text = new StringBuilder(good);
    for (int change = random.nextInt(3); change >= 0; change--) {
      int at = random.nextInt(text.length());
      switch (random.nextInt(4)) {
        case 0 -> text.deleteCharAt(at);
        case 1 -> text.setCharAt(at, (char) (32 + random.nextInt(95)));
        case 2 -> text.insert(at, "{}[]\",:-9e\\\u0000\u00B0".charAt(random.nextInt(13)));
        default -> text.insert(at, text.substring(at, Math.min(text.length(), at + 12)));
      }
    }
    return text.toString();
  }

  private static String noise(Random random) {
    StringBuilder text = new StringBuilder(random.nextBoolean() ? "POST /api/section " : "");
    for (int i = random.nextInt(200); i >= 0; i--) {
      text.append((char) random.nextInt(256));
    }
    return text + "\r\n\r\n";
  }

  /** Thirty passes on two unlike plates with everything left to defaults. */
  private static ObjectNode slow() throws Exception {
    ObjectNode slow = visitor.startCase();
    slow.set(
        "right", Visitor.tree("{\"alloy\":\"6082\",\"temper\":\"T6\",\"thickness\":\"8 mm\"}"));
    ((ObjectNode) slow.get("filler")).remove("dilution");
    ArrayNode passes = (ArrayNode) slow.get("passes");
    ObjectNode pass = (ObjectNode) passes.get(0);
    pass.remove("efficiency");
    for (int i = 1; i < 30; i++) {
      ObjectNode later = pass.deepCopy();
      later.remove("preheat");
      passes.add(later);
    }
    return slow;
  }

  @Test
  void aSlowQuestionHoldsNobodyUpAndEndsWhenItIsOutdated() throws Exception {
    String slow = Visitor.question("slow", 1, "settled", slow()).toString();
    CompletableFuture<HttpResponse<String>> waiting =
        CompletableFuture.supplyAsync(() -> posted(slow));
    Thread.sleep(200);
    JsonNode quick =
        visitor.asked("/api/section", Visitor.question("quick", 1, "settled", visitor.startCase()));
    assertTrue(quick.get("settled").asBoolean());
    assertFalse(waiting.isDone(), "the slow question is no longer slow: make it slower");
    visitor.asked("/api/section", Visitor.question("slow", 2, "settled", visitor.startCase()));
    assertEquals(409, waiting.get(10, TimeUnit.SECONDS).statusCode());
    assertEquals(409, posted(slow).statusCode(), "an earlier turn that arrives late");
  }

  private static ObjectNode ring(int millimetres) throws Exception {
    ObjectNode ring = visitor.startCase();
    ring.set(
        "ring", Visitor.tree("{}").put("diameter", millimetres + " mm").put("position", "worst"));
    return ring.put("heat_flow", "shell");
  }

  private static CompletableFuture<HttpResponse<String>> asking(
      String page, int turn, JsonNode tree) {
    String body = Visitor.question(page, turn, "preview", tree).toString();
    return CompletableFuture.supplyAsync(() -> posted(body));
  }

  /** The heat round a big ring is followed for long, without asking whether anybody waits. */
  @Test
  void heatThatIsFollowedRoundARingEndsWhenItIsOutdated() throws Exception {
    CompletableFuture<HttpResponse<String>> waiting = asking("ring", 1, ring(280));
    Thread.sleep(500);
    assertFalse(waiting.isDone(), "the ring is no longer slow: make it bigger");
    visitor.asked("/api/section", Visitor.question("ring", 2, "preview", visitor.startCase()));
    assertEquals(409, waiting.get(10, TimeUnit.SECONDS).statusCode());
  }

  @Test
  void threeSlowRingsHoldNobodyUp() throws Exception {
    List<CompletableFuture<HttpResponse<String>>> rings = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      rings.add(asking("ring " + i, 1, ring(281 + i)));
    }
    Thread.sleep(300);
    JsonNode quick =
        visitor.asked(
            "/api/section", Visitor.question("fourth", 1, "settled", visitor.startCase()));
    assertTrue(quick.get("settled").asBoolean());
    for (int i = 0; i < 3; i++) {
      assertFalse(rings.get(i).isDone(), "the rings are no longer slow: make them bigger");
      visitor.asked(
          "/api/section", Visitor.question("ring " + i, 2, "preview", visitor.startCase()));
      assertEquals(409, rings.get(i).get(10, TimeUnit.SECONDS).statusCode());
    }
  }

  /** One page goes on waiting for the heat that another page began to follow and gave up. */
  @Test
  void aRingThatWasGivenUpIsFollowedAgain() throws Exception {
    CompletableFuture<HttpResponse<String>> first = asking("gives up", 1, ring(60));
    Thread.sleep(100);
    CompletableFuture<HttpResponse<String>> second = asking("goes on", 1, ring(60));
    Thread.sleep(100);
    visitor.asked("/api/section", Visitor.question("gives up", 2, "preview", visitor.startCase()));
    assertEquals(409, first.get(10, TimeUnit.SECONDS).statusCode());
    assertEquals(200, second.get(20, TimeUnit.SECONDS).statusCode());
    assertEquals(200, asking("gives up", 3, ring(60)).get(20, TimeUnit.SECONDS).statusCode());
  }

  private static HttpResponse<String> posted(String body) {
    try {
      return visitor.post("/api/section", body);
    } catch (Exception fault) {
      throw new IllegalStateException(fault);
    }
  }

  @Test
  void itListensOnTheLoopbackAddressOnlyAndGivesItsPortBack() throws Exception {
    ClassroomServer other = ClassroomServer.start(0);
    int port = URI.create(other.address()).getPort();
    assertThrows(IOException.class, () -> ClassroomServer.start(port).stop());
    for (InetAddress address : InetAddress.getAllByName(InetAddress.getLocalHost().getHostName())) {
      if (!address.isLoopbackAddress()) {
        assertThrows(ConnectException.class, () -> new Socket(address, port).close());
      }
    }
    other.stop();
    other.await();
    ClassroomServer.start(port).stop();
  }
}
