package afterweld.cli.classroom;

import afterweld.casefile.CaseFile;
import afterweld.joint.JointReport;
import afterweld.material.MaterialLibrary;
import afterweld.section.SectionProfile;
import afterweld.section.SectionRun;
import afterweld.section.WeldSession;
import afterweld.thermal.HeatInputException;
import afterweld.weld.Warning;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ForkJoinPool;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/** What the page asks for and gets, without the network: JSON trees in, keys and values out. */
final class Classroom {
  private static final int LONGEST_NAME = 200;
  private static final int WARM_UPS = 12;
  private static final long PAUSE_MS = 50;

  private final MaterialLibrary library = MaterialLibrary.standard();
  private final CaseText cases = new CaseText(library);
  private final WeldSession session = new WeldSession();
  private final Turns turns = new Turns();
  private volatile boolean closed;

  /** What may be chosen. */
  Map<String, Object> library() {
    return new LibraryAnswer(library).keys();
  }

  /** The request's case as the text of a case file. */
  Map<String, Object> saved(JsonNode request) {
    JsonNode tree = part(request, "case");
    CaseFile asked = cases.read(tree);
    Map<String, Object> answer = new LinkedHashMap<>();
    answer.put("title", asked.weld().title());
    answer.put("text", cases.text(tree));
    return answer;
  }

  /** A case file's text as a case for the page. */
  Map<String, Object> opened(JsonNode request) {
    return Map.of("case", cases.open(text(request, "name"), text(request, "text")));
  }

  /**
   * The section of the request's case, or its replay.
   *
   * @throws Refusal if the case is at fault or outdated
   */
  Map<String, Object> section(JsonNode request) {
    String page = text(request, "page");
    long turn = turn(request);
    String wanted = text(request, "want");
    CaseFile asked = cases.read(part(request, "case"));
    SectionRun run = session.weld(asked.weld());
    try {
      Optional<SectionRun> near =
          wanted.equals("preview") && !run.isSolved() ? near(asked) : Optional.empty();
      if (near.isPresent()) {
        SectionRun known = near.get();
        return turns.take(
            page, turn, false, outdated -> preview(known.previewNear(asked.weld(), outdated)));
      }
      boolean isLong = run.takesLong(wanted.equals("settled"));
      return turns.take(page, turn, isLong, outdated -> computed(wanted, run, asked, outdated));
    } catch (CancellationException ended) {
      throw turns.ended(page, turn);
    } catch (HeatInputException fault) {
      throw new Refusal(
          Refusal.FAULTY_CASE, "Pass " + (fault.pass() + 1) + ": " + fault.getMessage() + ".");
    }
  }

  private Map<String, Object> computed(
      String wanted, SectionRun run, CaseFile asked, BooleanSupplier outdated) {
    return switch (wanted) {
      case "preview" -> preview(run.preview(asked.weld(), outdated));
      case "settled" -> {
        SectionProfile profile = run.profile(asked.weld(), outdated);
        near(asked)
            .filter(near -> !near.isReadyNear())
            .ifPresent(near -> ForkJoinPool.commonPool().execute(near::readyNear));
        yield settled(profile, asked);
      }
      case "replay" -> new ReplayAnswer(run.replay(asked.weld(), outdated), asked.weld()).keys();
      default ->
          throw new Refusal(
              Refusal.BAD_REQUEST, "want: expected 'preview', 'settled' or 'replay'.");
    };
  }

  /** A weld near which the case's preview may be had: one that is ready for it, if there is one. */
  private Optional<SectionRun> near(CaseFile asked) {
    List<SectionRun> near = session.welds().filter(run -> run.isNear(asked.weld())).toList();
    return near.stream()
        .filter(SectionRun::isReadyNear)
        .findFirst()
        .or(() -> near.stream().findFirst());
  }

  private static Map<String, Object> preview(SectionProfile profile) {
    Map<String, Object> json = new SectionAnswer(profile).keys();
    json.put("settled", false);
    return json;
  }

  /** The bend takes as long as all the rest that follows from the profile, so both go at once. */
  private static Map<String, Object> settled(SectionProfile profile, CaseFile asked) {
    CompletableFuture<Map<String, Object>> bend =
        CompletableFuture.supplyAsync(() -> new BendAnswer(profile, asked.joint().bend()).keys());
    JointReport joint = JointReport.of(profile, asked.joint());
    Map<String, Object> json = new LinkedHashMap<>(new SectionAnswer(profile).keys());
    json.put("settled", true);
    json.put("numbers", new KeyNumbers(profile, joint).rows());
    json.put("bend", bend.join());
    json.put("warnings", warnings(profile, joint));
    json.put("cautions", profile.cautions());
    return json;
  }

  private static List<Map<String, Object>> warnings(SectionProfile profile, JointReport joint) {
    Stream<Warning> all =
        Stream.of(profile.warnings(), profile.weldCase().notes(), joint.warnings())
            .flatMap(List::stream);
    return all.distinct().map(SectionAnswer::warning).toList();
  }

  /**
   * Computes a few welds that nobody asked for, so that the first one who moves a control does not
   * wait for a program that has just been started. Gives way to whoever asks.
   *
   * @param trees cases
   */
  void warmUp(List<JsonNode> trees) throws InterruptedException {
    for (int round = 0; round < WARM_UPS; round++) {
      for (JsonNode tree : trees) {
        while (!turns.idle()) {
          Thread.sleep(PAUSE_MS);
        }
        if (closed) {
          return;
        }
        warm(cases.read(tree));
      }
    }
  }

  private void warm(CaseFile asked) {
    BooleanSupplier wanted = () -> closed || !turns.idle();
    try {
      SectionRun run = new WeldSession().weld(asked.weld());
      Json.bytes(preview(run.preview(asked.weld(), wanted)));
      Json.bytes(settled(run.profile(asked.weld(), wanted), asked));
    } catch (CancellationException early) {
      // Somebody asks, which warms as well, or all work ends.
    }
  }

  /** Ends all work. */
  void close() {
    closed = true;
    turns.close();
  }

  private static JsonNode part(JsonNode request, String key) {
    JsonNode part = request.get(key);
    if (part == null || !part.isObject()) {
      throw new Refusal(Refusal.BAD_REQUEST, key + ": expected an object.");
    }
    return part;
  }

  private static String text(JsonNode request, String key) {
    JsonNode part = request.get(key);
    if (part == null || !part.isTextual()) {
      throw new Refusal(Refusal.BAD_REQUEST, key + ": expected text.");
    }
    if (!key.equals("text") && part.textValue().length() > LONGEST_NAME) {
      throw new Refusal(Refusal.BAD_REQUEST, key + ": expected at most 200 characters.");
    }
    return part.textValue();
  }

  private static long turn(JsonNode request) {
    JsonNode turn = request.get("turn");
    if (turn == null || !turn.isIntegralNumber() || !turn.canConvertToLong()) {
      throw new Refusal(Refusal.BAD_REQUEST, "turn: expected a whole number.");
    }
    return turn.longValue();
  }
}
