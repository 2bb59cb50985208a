package afterweld.material;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the filler guides of the trade say about a filler on a base. Ratings run from 1 (best) to 4
 * (poor) and rank the fillers of one base, not bases against each other.
 *
 * @param base name of the base alloy
 * @param filler name of the filler
 * @param crackResistance 1 to 4, resistance to cracking while it solidifies
 * @param strength 1 to 4, as welded
 * @param ductility 1 to 4
 * @param corrosionResistance 1 to 4
 * @param serviceAbove65C whether the weld may serve above 65 °C (not with more than 3 % magnesium)
 * @param anodizedMatch whether the weld matches the base in colour after anodizing
 * @param response whether the weld metal responds to a heat treatment after welding
 * @param note what else a welder should know; empty if nothing
 * @param facts every line of the data file about the pair, with its source
 */
public record FillerGuidance(
    String base,
    String filler,
    int crackResistance,
    int strength,
    int ductility,
    int corrosionResistance,
    boolean serviceAbove65C,
    AnodizedMatch anodizedMatch,
    HeatTreatmentResponse response,
    String note,
    List<Fact> facts) {

  /** Copies the facts. */
  public FillerGuidance {
    facts = List.copyOf(facts);
  }

  /** Whether every rating is 1 or 2. */
  public boolean good() {
    return poor().isEmpty();
  }

  /** What is rated 3 or 4, in words. */
  public List<String> poor() {
    Map<String, Integer> ratings = new LinkedHashMap<>();
    ratings.put("crack resistance", crackResistance);
    ratings.put("strength", strength);
    ratings.put("ductility", ductility);
    ratings.put("resistance to corrosion", corrosionResistance);
    return ratings.entrySet().stream()
        .filter(rating -> rating.getValue() > 2)
        .map(Map.Entry::getKey)
        .toList();
  }

  /** How well the colour of the weld matches the base after anodizing. */
  public enum AnodizedMatch {
    YES("yes"),
    FAIR("fair"),
    NO("no");

    private final String label;

    AnodizedMatch(String label) {
      this.label = label;
    }

    /** The word used on screen and in results. */
    public String label() {
      return label;
    }
  }

  /** Whether weld metal hardens in a heat treatment after welding. */
  public enum HeatTreatmentResponse {
    YES("yes"),
    /** Only as far as the melted base brings magnesium into it. */
    WITH_DILUTION("with dilution"),
    NO("no");

    private final String label;

    HeatTreatmentResponse(String label) {
      this.label = label;
    }

    /** The words used on screen and in results. */
    public String label() {
      return label;
    }
  }

  static FillerGuidance of(Sheet sheet) {
    DataRow first = sheet.rows().get(0);
    String filler = first.qualifier();
    return new FillerGuidance(
        first.alloy(),
        filler,
        rating(sheet, "crack resistance", filler),
        rating(sheet, "strength", filler),
        rating(sheet, "ductility", filler),
        rating(sheet, "corrosion resistance", filler),
        yes(sheet.need("service above 65 °C", filler)),
        sheet.need("anodized colour match", filler).as(AnodizedMatch.class),
        sheet.need("response to heat treatment", filler).as(HeatTreatmentResponse.class),
        sheet.find("note", filler).map(DataRow::value).orElse(""),
        sheet.facts());
  }

  private static int rating(Sheet sheet, String property, String filler) {
    DataRow row = sheet.need(property, filler);
    int rating = (int) row.in(DataUnit.RATING);
    if (rating < 1 || rating > 4) {
      throw new IllegalStateException(row + ": expected 1 to 4");
    }
    return rating;
  }

  private static boolean yes(DataRow row) {
    return switch (row.value()) {
      case "yes" -> true;
      case "no" -> false;
      default -> throw new IllegalStateException(row + ": expected yes or no");
    };
  }
}
