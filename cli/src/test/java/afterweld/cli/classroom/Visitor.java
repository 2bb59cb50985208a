package afterweld.cli.classroom;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;

/** Talks to a classroom as its page does, and as nobody should. */
public final class Visitor {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final HttpClient client = HttpClient.newHttpClient();
  private final URI address;

  /** A visitor of a server's address. */
  public Visitor(String address) {
    this.address = URI.create(address);
  }

  /** JSON text as a tree. */
  public static ObjectNode tree(String text) throws IOException {
    return (ObjectNode) JSON.readTree(text);
  }

  /** What the page comes with: the case it starts with and the lessons. */
  public JsonNode lessons() throws Exception {
    return JSON.readTree(get("/lessons.json").body());
  }

  /** The case that the page starts with. */
  public ObjectNode startCase() throws Exception {
    return (ObjectNode) lessons().get("start");
  }

  /** A question for a section. */
  public static ObjectNode question(String page, long turn, String want, JsonNode caseTree) {
    ObjectNode question = JSON.createObjectNode();
    question.put("page", page).put("turn", turn).put("want", want).set("case", caseTree);
    return question;
  }

  /** Gets a file of the page. */
  public HttpResponse<String> get(String path) throws Exception {
    return client.send(
        HttpRequest.newBuilder(address.resolve(path)).build(), BodyHandlers.ofString());
  }

  /** Sends JSON with headers of the page's own kind. */
  public HttpResponse<String> post(String path, String body, String... headers) throws Exception {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(address.resolve(path))
            .header("Content-Type", "application/json")
            .POST(BodyPublishers.ofString(body));
    if (headers.length > 0) {
      request.headers(headers);
    }
    return client.send(request.build(), BodyHandlers.ofString());
  }

  /** Sends a question that is answered with a result, and returns that. */
  public JsonNode asked(String path, JsonNode question) throws Exception {
    HttpResponse<String> answer = post(path, question.toString());
    JsonNode json = JSON.readTree(answer.body());
    if (answer.statusCode() != 200 || json.has("problems")) {
      throw new IllegalStateException(answer.statusCode() + ": " + answer.body());
    }
    return json;
  }

  /** Sends raw text and returns everything that comes back before the server hangs up. */
  public String raw(String text) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), address.getPort())) {
      socket.setSoTimeout(15_000);
      socket.getOutputStream().write(text.getBytes(StandardCharsets.ISO_8859_1));
      socket.shutdownOutput();
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
