package afterweld.choice.filler;

import afterweld.material.ClassPathTable;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the filler guides of the trade choose for two bases, by purpose.
 *
 * @param base1 one base, in either order
 * @param base2 the other
 * @param welded first choice left as welded, then what else suits; empty where none does
 * @param treated the same for a full heat treatment after welding; empty where the guides have none
 * @param anodized first choice where the colour must match after anodizing
 * @param warm first choice for service above 65 °C
 * @param not what must not be used: fillers, or {@code none} for a weld without filler
 * @param why why not, or what else to know; empty if nothing
 * @param source where the row comes from, with its status
 */
public record FillerPair(
    String base1,
    String base2,
    List<String> welded,
    List<String> treated,
    Optional<String> anodized,
    Optional<String> warm,
    List<String> not,
    String why,
    String source) {
  private static final List<FillerPair> ALL =
      ClassPathTable.rows(FillerPair.class, "filler_pairs.csv").stream()
          .map(FillerPair::of)
          .toList();

  /** Copies the lists. */
  public FillerPair {
    welded = List.copyOf(welded);
    treated = List.copyOf(treated);
    not = List.copyOf(not);
    if (source.isBlank()) {
      throw new IllegalArgumentException(base1 + " to " + base2 + ": no source");
    }
  }

  private static FillerPair of(Map<String, String> row) {
    return new FillerPair(
        row.get("base_1"),
        row.get("base_2"),
        names(row, "as_welded_first", "as_welded_also"),
        names(row, "full_treatment_first", "full_treatment_also"),
        names(row, "colour_after_anodizing_first").stream().findFirst(),
        names(row, "over_65C_first").stream().findFirst(),
        names(row, "not"),
        row.get("why_not"),
        row.get("source") + ", " + row.get("status"));
  }

  private static List<String> names(Map<String, String> row, String... columns) {
    return Stream.of(columns)
        .flatMap(column -> Stream.of(row.get(column).split(" ")))
        .filter(name -> !name.isBlank())
        .toList();
  }

  /** All rows of the guides. */
  static List<FillerPair> all() {
    return ALL;
  }

  /** The row of two bases in either order; empty if there is none. */
  static Optional<FillerPair> of(String one, String other) {
    return ALL.stream()
        .filter(
            pair ->
                (pair.base1.equals(one) && pair.base2.equals(other))
                    || (pair.base1.equals(other) && pair.base2.equals(one)))
        .findFirst();
  }

  /** Both bases, as a sentence names them. */
  public String bases() {
    return base1 + " to " + base2;
  }

  /** Every filler that suits for some purpose, each once. */
  List<String> suiting() {
    return Stream.of(welded.stream(), treated.stream(), anodized.stream(), warm.stream())
        .flatMap(names -> names)
        .distinct()
        .toList();
  }
}
