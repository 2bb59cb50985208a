package afterweld.cli.classroom;

import afterweld.casefile.CaseFile;
import afterweld.casefile.CaseReader;
import afterweld.casefile.CaseReading;
import afterweld.casefile.text.Fault;
import afterweld.material.MaterialLibrary;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;

/**
 * The case on the page: a tree with the keys of a case file, read by the same reader as every case
 * file. So a saved case gives the commands exactly what the page shows.
 */
final class CaseText {
  private static final String ON_THE_PAGE = "case.json";
  private static final String HEAD =
      "# Saved from the classroom page. 'afterweld profile' on this file gives the same numbers.\n";
  private static final YAMLMapper YAML =
      YAMLMapper.builder()
          .disable(YAMLGenerator.Feature.WRITE_DOC_START_MARKER)
          .disable(YAMLGenerator.Feature.SPLIT_LINES)
          .build();

  private final CaseReader reader;

  CaseText(MaterialLibrary library) {
    this.reader = new CaseReader(library.bases(), library.fillers());
  }

  /**
   * The case of a tree.
   *
   * @throws Refusal with every fault
   */
  CaseFile read(JsonNode tree) {
    CaseReading reading = reader.read(ON_THE_PAGE, Json.bytes(tree));
    return reading.caseFile().orElseThrow(() -> faulty(reading, Fault::message));
  }

  /** A tree as the text of a case file. */
  String text(JsonNode tree) {
    try {
      return HEAD + YAML.writeValueAsString(tree);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /**
   * A case file as a tree for the page.
   *
   * @param name of the file
   * @param text what is in it
   * @throws Refusal with every fault and its place
   */
  JsonNode open(String name, String text) {
    CaseReading reading = reader.read(name, text.getBytes(StandardCharsets.UTF_8));
    CaseFile asked = reading.caseFile().orElseThrow(() -> faulty(reading, Fault::toString));
    ObjectNode tree = tree(text);
    if (!tree.has("title")) {
      tree.put("title", asked.weld().title());
    }
    if (!read(tree).equals(asked)) {
      throw new Refusal(
          Refusal.FAULTY_CASE,
          name + ": the page cannot keep this case as it is written; write its numbers as text.");
    }
    return tree;
  }

  /** JSON is YAML too. */
  private static ObjectNode tree(String text) {
    try {
      return (ObjectNode) YAML.readTree(text);
    } catch (IOException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static Refusal faulty(CaseReading reading, Function<Fault, String> words) {
    List<String> lines = reading.faults().stream().map(words).toList();
    return new Refusal(Refusal.FAULTY_CASE, lines);
  }
}
