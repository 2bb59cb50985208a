package afterweld.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Whole case files that are valid, as YAML, drawn from a seed: alloys in their tempers, joints,
 * fillers, procedures, schedules and units. Most are welds a shop would make, some are odd but
 * readable: too cold, too hot, a schedule that makes no sense. The same seed gives the same files,
 * and the first cases of a longer list are those of a shorter one.
 */
final class GeneratedCases {
  private static final Map<String, List<String>> TEMPERS =
      Map.ofEntries(
          Map.entry("6061", List.of("T6", "T6", "T6", "T4", "T5", "O", "T651")),
          Map.entry("6063", List.of("T6", "T5", "T4", "T1", "O")),
          Map.entry("6060", List.of("T6", "T5", "T4")),
          Map.entry("6082", List.of("T6", "T6", "T4", "O")),
          Map.entry("6005A", List.of("T6", "T5", "T4")),
          Map.entry("6351", List.of("T6", "T4", "T5")),
          Map.entry("A356", List.of("T6")),
          Map.entry("A357", List.of("T6")),
          Map.entry("1100", List.of("O", "H12", "H14", "H18")),
          Map.entry("3003", List.of("O", "H14", "H16")),
          Map.entry("5052", List.of("O", "H32", "H34", "H38")),
          Map.entry("5083", List.of("O", "H116", "H321")),
          Map.entry("5086", List.of("O", "H116", "H32", "H112")),
          Map.entry("5454", List.of("O", "H32", "H111", "H34")));

  private static final List<String> BASES =
      List.of(
          "6061", "6061", "6061", "6061", "6063", "6060", "6082", "6082", "6005A", "6351", "A356",
          "A357", "1100", "3003", "5052", "5083", "5086", "5454");
  private static final List<String> FOR_SILICON_BASES =
      List.of("4043", "4643", "4943", "4047", "5356", "5183", "5554", "none");
  private static final List<String> FOR_CASTINGS =
      List.of("4043", "4008", "4010", "4011", "4643", "4943", "4145");
  private static final List<String> FOR_SOFT_BASES = List.of("1100", "4043", "5356", "none");
  private static final List<String> FOR_MAGNESIUM_BASES =
      List.of("5356", "5183", "5556", "5554", "5654", "4043");
  private static final List<String> ANY_FILLER =
      List.of("2319", "4047", "4145", "5356", "4643", "1100", "5654", "4011");

  /** Fillers whose weld metal begins to melt below the usual solution temperature. */
  private static final List<String> MELTING_LOW = List.of("2319", "4145");

  /** Fillers that take part in no solution treatment. */
  private static final List<String> MUCH_MAGNESIUM = List.of("5356", "5183", "5556", "5654");

  private final Random random;

  private GeneratedCases(long seed) {
    this.random = new Random(seed);
  }

  /** As many case files as asked, each the whole text of one. */
  static List<String> yaml(int count, long seed) {
    return IntStream.range(0, count)
        .mapToObj(i -> new GeneratedCases(seed * 1_000_003 + i).caseFile(i))
        .toList();
  }

  /** What a joint is made of, as far as other keys depend on it. */
  private record Parts(String left, String right, double leftThickness, double rightThickness) {
    double thickest() {
      return Math.max(leftThickness, rightThickness);
    }

    double thinnest() {
      return Math.min(leftThickness, rightThickness);
    }

    boolean heatTreatable() {
      return left.startsWith("6") || left.startsWith("A") || right.startsWith("6");
    }

    boolean cast() {
      return left.startsWith("A") || right.startsWith("A");
    }
  }

  private String caseFile(int number) {
    List<String> lines = new ArrayList<>();
    lines.add("title: Made-up joint " + (number + 1));
    String joint =
        among("butt", "butt", "butt", "butt", "lap", "tee", "tee", "corner", "socket", "bead");
    Parts parts = sides(lines, joint);
    lines.add("joint: " + joint);
    preparation(lines, joint);
    boolean ring = course(lines, joint, parts);
    String filler = filler(lines, parts);
    passes(lines, parts, ring);
    small(lines, parts);
    treatment(lines, parts, filler);
    requirement(lines, parts);
    settings(lines, parts);
    return String.join("\n", lines) + "\n";
  }

  private Parts sides(List<String> lines, String joint) {
    String left = oneOf(BASES);
    String right = chance(0.7) || joint.equals("bead") ? left : oneOf(BASES);
    double thickness = thickness();
    boolean uneven = !joint.equals("bead") && chance(0.2);
    double other = uneven ? Math.max(0.5, Math.round(5 * thickness) / 10.0) : thickness;
    String leftTemper = oneOf(TEMPERS.get(left));
    lines.add("left: " + side(left, leftTemper, thickness));
    if (!right.equals(left)) {
      lines.add("right: " + side(right, oneOf(TEMPERS.get(right)), other));
    } else if (uneven) {
      lines.add("right: {thickness: " + length(other) + "}");
    }
    return new Parts(left, right, thickness, right.equals(left) && !uneven ? thickness : other);
  }

  private double thickness() {
    return chance(0.9)
        ? among(1.5, 2.0, 3.0, 3.2, 4.0, 5.0, 6.0, 6.35, 8.0, 10.0, 12.0)
        : among(0.5, 0.8, 1.0, 15.0, 20.0, 25.0, 40.0);
  }

  private String side(String alloy, String temper, double thickness) {
    String width = chance(0.12) ? ", width: " + length(thickness * among(5, 8, 15, 40)) : "";
    String certificate =
        chance(0.06) && alloy.startsWith("6") ? ", composition: {Mg: 0.85 %, Si: 0.62 %}" : "";
    return String.format(
        Locale.ROOT,
        "{alloy: \"%s\", temper: %s, thickness: %s%s%s}",
        alloy,
        temper,
        length(thickness),
        width,
        certificate);
  }

  private void preparation(List<String> lines, String joint) {
    if (joint.equals("butt") && chance(0.4)) {
      lines.add("preparation: " + among("square", "single-v", "double-v"));
    }
  }

  private boolean course(List<String> lines, String joint, Parts parts) {
    boolean round = joint.equals("socket") || joint.equals("tee");
    if (chance(round ? 0.25 : 0.03)) {
      double diameter = Math.max(parts.rightThickness() * among(6, 12, 25, 60), 20);
      String place = among("worst", "start", "half lap", "lap end");
      lines.add("ring: {diameter: " + length(diameter) + ", position: " + place + "}");
      return true;
    }
    if (joint.equals("butt") && chance(0.03)) {
      lines.add("seam: {length: " + length(among(80, 150, 300)) + "}");
      return true;
    }
    return false;
  }

  private String filler(List<String> lines, Parts parts) {
    String filler = chance(0.9) ? oneOf(fillersFor(parts)) : oneOf(ANY_FILLER);
    if (filler.equals("none")) {
      lines.add("filler: none");
      return filler;
    }
    String share = chance(0.6) ? ", dilution: " + among(20, 30, 35, 40, 50, 60, 75) + " %" : "";
    if (share.isEmpty() && chance(0.15)) {
      share = ", melted_area: 20 mm², deposit_area: " + among(10, 20, 45) + " mm²";
    }
    String odd = chance(0.03) ? ", dilution: " + among("0 %", "100 %", "0.5 %") : "";
    String amount = odd.isEmpty() ? share : odd;
    String fromLeft = parts.left().equals(parts.right()) || chance(0.7) ? "" : ", from_left: 60 %";
    lines.add("filler: {alloy: \"" + filler + "\"" + amount + fromLeft + "}");
    return filler;
  }

  private static List<String> fillersFor(Parts parts) {
    if (parts.cast()) {
      return FOR_CASTINGS;
    }
    if (parts.left().startsWith("5") || parts.right().startsWith("5")) {
      return FOR_MAGNESIUM_BASES;
    }
    return parts.heatTreatable() ? FOR_SILICON_BASES : FOR_SOFT_BASES;
  }

  private void passes(List<String> lines, Parts parts, boolean followed) {
    boolean gas = chance(0.5) && parts.thickest() >= 2;
    int count =
        followed || parts.thickest() <= 4
            ? 1
            : parts.thickest() <= 8 ? among(1, 1, 2) : among(1, 2, 3, 4);
    boolean measured = chance(0.35);
    lines.add("passes:");
    for (int i = 0; i < count; i++) {
      lines.add("  - " + pass(parts, gas, i == 0, measured));
    }
  }

  private String pass(Parts parts, boolean gas, boolean first, boolean measured) {
    String process =
        gas ? among("GMAW", "GMAW-pulsed") : among("GTAW-AC", "GTAW-AC", "GTAW-AC", "GTAW-DCEN");
    double thickness = Math.min(parts.thickest(), 12);
    double speed = gas ? among(7.0, 8.0, 9.0, 11.0) : among(2.0, 2.5, 3.0, 3.5);
    double fair = gas ? 80 + 18 * thickness : 40 + 22 * thickness;
    double current = Math.rint(fair * among(0.6, 0.85, 0.95, 1.0, 1.0, 1.1, 1.3));
    double voltage = gas ? among(20.0, 22.0, 24.0) : among(12.0, 14.0, 15.0);
    StringBuilder text = new StringBuilder("{process: " + process);
    text.append(", current: ").append(plain(current)).append(" A");
    text.append(", voltage: ").append(plain(voltage)).append(" V");
    text.append(", travel_speed: ").append(speed(speed));
    if (chance(0.3)) {
      text.append(first ? ", preheat: " : ", interpass: ");
      text.append(temperature(among(30, 60, 90, 120, first ? 150 : 200)));
    }
    if (measured) {
      text.append(", bead_width: ").append(length(Math.rint(4 + 1.1 * thickness)));
    }
    return text.append("}").toString();
  }

  private void small(List<String> lines, Parts parts) {
    if (chance(0.1)) {
      lines.add("reinforcement: " + among("0 mm", "1 mm", "1/16 in", "2.5 mm"));
    }
    if (chance(0.05)) {
      lines.add("ambient: " + temperature(among(-5, 5, 35)));
    }
    if (chance(0.05)) {
      lines.add("depth: " + length(parts.thinnest() * among(0.25, 0.75)));
    }
    if (chance(0.3)) {
      lines.add("natural_age: " + among("1 day", "3 days", "30 days", "4 h", "0 s", "365 days"));
    }
  }

  private void treatment(List<String> lines, Parts parts, String filler) {
    double draw = random.nextDouble();
    double likely = parts.heatTreatable() ? 0.6 : 0.15;
    if (draw > likely) {
      return;
    }
    lines.add("after_weld:");
    if (draw < 0.06) {
      oddSteps(lines, MELTING_LOW.contains(filler) ? 490 : 525);
    } else if (draw < 0.1) {
      lines.add(
          "  - anneal: {temperature: 415 °C, time: 2 h" + among("", ", cooling: 50 °F/h") + "}");
    } else if (draw < 0.3 || MUCH_MAGNESIUM.contains(filler)) {
      lines.add(ageing(parts));
    } else {
      fullTreatment(lines, parts, MELTING_LOW.contains(filler) ? 500 : 530);
    }
  }

  private void fullTreatment(List<String> lines, Parts parts, int highest) {
    double hot = highest - (parts.cast() ? 0 : among(0, 5, 10));
    String soak = parts.cast() ? "8 h" : among("40 min", "60 min", "90 min", "2 h");
    lines.add("  - solution_treat: {temperature: " + temperature(hot) + ", soak: " + soak + "}");
    String bath = temperature(parts.cast() ? 65 : among(20, 25, 30));
    String delay = among("5 s", "7 s", "10 s", "14 s");
    lines.add(
        among(
            "  - quench: {medium: water, temperature: " + bath + ", delay: " + delay + "}",
            "  - quench: {medium: water, temperature: " + bath + ", delay: " + delay + "}",
            "  - quench: {medium: polymer}",
            "  - quench: {}",
            "  - quench: {rate: 20 K/s}"));
    if (chance(0.4)) {
      lines.add("  - natural_age: " + among("2 h", "1 day", "7 days"));
    }
    if (chance(0.85)) {
      lines.add(ageing(parts));
    }
  }

  private String ageing(Parts parts) {
    double warm = parts.cast() ? among(155, 160) : among(160, 170, 175, 177, 190);
    String ramp = chance(0.2) ? ", ramp: " + among("60 min", "90 min", "2 K/min") : "";
    String time = among("4 h", "6 h", "8 h", "10 h", "18 h");
    return "  - age: {temperature: " + temperature(warm) + ", time: " + time + ramp + "}";
  }

  private void oddSteps(List<String> lines, int hot) {
    String solution = "  - solution_treat: {temperature: " + hot + " °C, soak: 60 min}";
    String quench = "  - quench: {medium: water, temperature: 25 °C, delay: 8 s}";
    String age = "  - age: {temperature: 175 °C, time: 8 h}";
    lines.addAll(
        among(
            List.of(age, solution, quench),
            List.of(solution, quench, solution, quench, age),
            List.of(age, age),
            List.of("  - natural_age: 10 days"),
            List.of("  - solution_treat: {temperature: 460 °C, soak: 2 min}", quench, age),
            List.of(solution, "  - quench: {medium: still-air}", age),
            List.of(solution, "  - quench: {medium: water, delay: 90 s}", age),
            List.of("  - age: {temperature: 120 °C, time: 20 min}"),
            List.of("  - age: {temperature: 300 °C, time: 2 h, overage: true}")));
  }

  private void requirement(List<String> lines, Parts parts) {
    if (!chance(0.55)) {
      return;
    }
    boolean soft = !parts.heatTreatable();
    List<String> asked = new ArrayList<>();
    if (chance(0.7)) {
      asked.add("tensile: " + stress(soft ? among(80, 150, 214, 276) : among(120, 165, 200, 260)));
    }
    if (chance(0.35)) {
      asked.add("yield: " + stress(soft ? among(30, 60, 75) : among(55, 90, 110)));
    }
    if (chance(0.15)) {
      asked.add("hardness: " + among("45 HV", "60 HV", "70 HB", "85 HV"));
    }
    if (chance(0.06)) {
      asked.add("anodized_match: " + among("true", "false"));
    }
    if (chance(0.08)) {
      asked.add("service_temperature: " + temperature(among(40, 65, 90)));
    }
    if (!asked.isEmpty()) {
      lines.add("require: {" + String.join(", ", asked) + "}");
    }
  }

  /** With a leg that fits on the edge of a lap, on both sides of a part that is pulled across. */
  private static void fillet(List<String> lines, Parts parts, String load) {
    double leg = Math.floor(Math.min(5, parts.thickest()));
    if (leg >= 2) {
      String sides = load.equals("across") ? ", sides: both" : "";
      lines.add("fillet: {leg: " + leg + " mm, length: 120 mm, load: " + load + sides + "}");
    }
  }

  private void settings(List<String> lines, Parts parts) {
    if (chance(0.06)) {
      lines.add("gauge: " + among("25 mm", "2 in", "80 mm"));
    }
    if (chance(0.1)) {
      String strip = length(Math.max(150, 5 * parts.thickest()));
      String load = among("couples", "edge");
      lines.add("bend: {angle: 60 deg, length: " + strip + ", width: 20 mm, load: " + load + "}");
    }
    if (chance(0.06)) {
      fillet(lines, parts, among("along", "across"));
    }
    if (chance(0.05)) {
      lines.add("member: {width: 200 mm}");
    }
    if (chance(0.04)) {
      lines.add("routes: {distortion_allowance: 0.5 mm, expected_movement: 1 mm, target: 0.9}");
    }
    if (chance(0.08)) {
      lines.add("spread: {dilution: 10 %, travel_speed: 5 %, furnace_temperature: 6 K}");
    }
  }

  private String length(double mm) {
    return chance(0.25)
        ? String.format(Locale.ROOT, "%.4f in", mm / 25.4)
        : plain(Math.rint(mm * 100) / 100) + " mm";
  }

  private String temperature(double celsius) {
    return chance(0.3) ? plain(Math.rint(celsius * 1.8 + 32)) + " °F" : plain(celsius) + " °C";
  }

  private String speed(double mmPerSecond) {
    return chance(0.3)
        ? String.format(Locale.ROOT, "%.1f in/min", mmPerSecond * 60 / 25.4)
        : plain(mmPerSecond) + " mm/s";
  }

  private String stress(double mpa) {
    return chance(0.35) ? plain(Math.rint(mpa / 6.894757)) + " ksi" : plain(mpa) + " MPa";
  }

  private static String plain(double value) {
    String text = String.format(Locale.ROOT, "%.2f", value);
    return text.replaceAll("\\.?0+$", "");
  }

  private boolean chance(double share) {
    return random.nextDouble() < share;
  }

  @SafeVarargs
  private <T> T among(T... choices) {
    return choices[random.nextInt(choices.length)];
  }

  private <T> T oneOf(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }
}
