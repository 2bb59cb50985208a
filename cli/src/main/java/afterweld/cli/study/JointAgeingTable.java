package afterweld.cli.study;

import afterweld.cli.terminal.Paragraph;
import afterweld.cli.terminal.TextTable;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.study.JointAgeing;
import afterweld.study.JointAgeing.Trial;
import afterweld.study.JointPlace;
import afterweld.study.Ranking;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The joint with other temperatures and times of its ageing, for a person. */
final class JointAgeingTable {
  private final JointAgeing study;
  private final Ranking ranking;
  private final boolean ownAgeing;
  private final UnitSystem units;

  /**
   * Of a study.
   *
   * @param ownAgeing whether the case as written is aged
   */
  JointAgeingTable(JointAgeing study, boolean ownAgeing, UnitSystem units) {
    this.study = study;
    this.ownAgeing = ownAgeing;
    this.ranking = study.ranking();
    this.units = units;
  }

  private Map<Double, List<Trial>> byTemperature(List<Trial> trials) {
    return trials.stream()
        .collect(
            Collectors.groupingBy(Trial::temperature, LinkedHashMap::new, Collectors.toList()));
  }

  /** A row for each time. */
  String table() {
    if (study.trials().isEmpty()) {
      return "";
    }
    Map<Double, List<Trial>> columns = byTemperature(study.trials());
    List<String> head = new ArrayList<>(List.of("joint"));
    columns.keySet().forEach(temperature -> head.add(temperature(temperature)));
    TextTable table = new TextTable(head.toArray(String[]::new));
    int rows = columns.values().iterator().next().size();
    for (int row = 0; row < rows; row++) {
      List<String> cells = new ArrayList<>();
      for (List<Trial> column : columns.values()) {
        if (cells.isEmpty()) {
          cells.add(hours(column.get(row)));
        }
        cells.add(value(column.get(row).joint()));
      }
      table.row(cells.toArray(String[]::new));
    }
    return Paragraph.of("After other ageings, flush: " + study.aim().name() + " in " + unit())
        + table.text()
        + objected();
  }

  private String objected() {
    return study.trials().stream()
        .flatMap(trial -> trial.joint().objections().stream())
        .findFirst()
        .map(text -> Paragraph.hanging("* ", "Not ranked, such as: " + text))
        .orElse("");
  }

  private String unit() {
    return study.aim().unit(units);
  }

  private String value(JointPlace joint) {
    String text = joint.blank().isEmpty() ? study.aim().text(units, joint.value()) : "–";
    String mark = joint.objections().isEmpty() || !joint.blank().isEmpty() ? "" : "*";
    return text.replace(" " + unit(), "") + mark;
  }

  /** The sentences. */
  String answer() {
    String written =
        Paragraph.of(
            "The case as written: "
                + GridAnswer.joint(study.aim(), study.asWritten(), units)
                + study.aim().asked().map(asked -> "; required: " + asked.text(units)).orElse("")
                + ".");
    if (study.trials().isEmpty()) {
      return written;
    }
    return written + best() + good();
  }

  private String best() {
    if (ranking.best().isEmpty()) {
      return Paragraph.of(noneTried() + ": " + whyNone() + ".");
    }
    if (!study.gains()) {
      return Paragraph.of(
          "As welded, after the same natural ageing: "
              + GridAnswer.joint(study.aim(), study.asWelded(), units)
              + ". No ageing that was tried makes the joint over 1 % better than that.");
    }
    Trial best = study.trials().get(ranking.best().getAsInt());
    if (ranking.even()) {
      return Paragraph.of(
          "No ageing that was tried is better than another by over 1 %: "
              + study.aim().name()
              + " "
              + study.aim().text(units, best.joint().value())
              + " after "
              + times(i -> ranking.asGood().contains(i))
              + ".");
    }
    return Paragraph.of(
        "Best ageing of those tried: "
            + temperature(best.temperature())
            + " for "
            + hours(best)
            + ", "
            + study.aim().name()
            + " "
            + study.aim().text(units, best.joint().value())
            + ". As good within 1 %: "
            + times(i -> ranking.asGood().contains(i))
            + (ranking.insideError() ? ". All of them lie within the model's own error" : "")
            + ".");
  }

  /** What nothing stands against is not taken back because the others cannot be ranked. */
  private String noneTried() {
    JointPlace written = study.asWritten();
    return ownAgeing && written.blank().isEmpty() && written.objections().isEmpty()
        ? "None of the ageings tried is put before the case's own"
        : "No ageing that was tried can be recommended";
  }

  /** Of the reasons the one that stands against most of them. */
  private String whyNone() {
    Map<String, Long> reasons =
        study.trials().stream()
            .flatMap(trial -> trial.joint().objections().stream())
            .collect(
                Collectors.groupingBy(text -> text, LinkedHashMap::new, Collectors.counting()));
    return reasons.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(most -> most.getKey().replaceFirst("\\.$", ""))
        .orElseGet(() -> study.trials().get(0).joint().against().replaceFirst("\\.$", ""));
  }

  private String good() {
    if (!study.aim().required()) {
      return "";
    }
    if (ranking.best().isEmpty()) {
      return "";
    }
    boolean any = study.trials().stream().anyMatch(Trial::good);
    return Paragraph.of(
        any
            ? "What is required is met or likely met after: "
                + times(i -> study.trials().get(i).good())
                + "."
            : "None of the ageings tried makes what is required met or likely met.");
  }

  /** For each temperature the shortest and the longest of the chosen times. */
  private String times(Predicate<Integer> chosen) {
    List<Trial> trials = new ArrayList<>();
    for (int i = 0; i < study.trials().size(); i++) {
      if (chosen.test(i)) {
        trials.add(study.trials().get(i));
      }
    }
    return byTemperature(trials).entrySet().stream()
        .map(entry -> temperature(entry.getKey()) + " " + ends(entry.getValue()))
        .collect(Collectors.joining(", "));
  }

  private static String ends(List<Trial> trials) {
    Trial first = trials.get(0);
    Trial last = trials.get(trials.size() - 1);
    return first.equals(last)
        ? hours(first)
        : hours(first).replace(" h", "") + " to " + hours(last);
  }

  private String temperature(double kelvin) {
    return OutputQuantity.PEAK_TEMPERATURE.text(units, kelvin) + " " + units.temperatureUnit();
  }

  private static String hours(Trial trial) {
    return String.format(Locale.ROOT, "%.3g h", trial.time() / 3600)
        .replace(".00", "")
        .replace(".0", "");
  }
}
