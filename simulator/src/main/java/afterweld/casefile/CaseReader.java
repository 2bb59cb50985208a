package afterweld.casefile;

import afterweld.casefile.text.FaultCollector;
import afterweld.casefile.text.Node;
import afterweld.casefile.text.Place;
import afterweld.casefile.text.Positions;
import afterweld.casefile.text.SourceText;
import afterweld.casefile.text.TreeReader;
import afterweld.material.Alloy;
import java.util.List;
import java.util.Optional;

/**
 * Reads case files in YAML or JSON: one joint with its procedure, its heat treatment and what is
 * asked of it. Quantities carry their unit, metric or US; the case that comes out is SI and kelvin.
 *
 * <p>All faults of a file are found in one run, each with line and column. Nothing is built from a
 * faulty file. A reader is immutable and may be shared.
 */
public final class CaseReader {
  private static final String EMPTY =
      "found no keys; expected a case with at least left, filler and passes";

  private final Choices<Alloy> bases;
  private final Choices<Alloy> fillers;

  /**
   * A reader that knows these alloys.
   *
   * @param bases alloys that may be welded
   * @param fillers alloys that may be the filler
   */
  public CaseReader(List<Alloy> bases, List<Alloy> fillers) {
    this.bases = AlloyNames.of(bases);
    this.fillers = AlloyNames.of(fillers);
  }

  /**
   * Reads one file. Never throws on what the file contains.
   *
   * @param file its name as the user gave it; one that ends in {@code .json} is read as JSON, every
   *     other one as YAML
   * @param bytes its content, UTF-8, at most 256 000 bytes
   */
  public CaseReading read(String file, byte[] bytes) {
    FaultCollector faults = new FaultCollector(file);
    Optional<Node> root =
        SourceText.decode(bytes, faults).flatMap(text -> TreeReader.read(file, text, faults));
    Positions positions =
        root.map(node -> Positions.of(file, node)).orElseGet(() -> Positions.unknown(file));
    Optional<CaseFile> caseFile = root.flatMap(node -> read(file, node, faults));
    if (root.isEmpty() && faults.count() == 0) {
      faults.add(Place.START, EMPTY);
    }
    return new CaseReading(caseFile, faults.inOrder(), positions);
  }

  private Optional<CaseFile> read(String file, Node root, FaultCollector faults) {
    if (root instanceof Node.Mapping mapping) {
      Section top = new Section("the case", Place.START, mapping, faults);
      return new CaseAssembler(bases, fillers, file, top).read();
    }
    boolean nothing = root instanceof Node.Scalar scalar && scalar.kind() == Node.Kind.NOTHING;
    faults.add(
        root.place(), nothing ? EMPTY : EMPTY.replace("no keys", root.words() + " without keys"));
    return Optional.empty();
  }
}
