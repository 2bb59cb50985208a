package afterweld.cli.study;

import afterweld.cli.terminal.Paragraph;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.study.Aim;
import afterweld.study.GridInput;
import afterweld.study.GridStudy;
import afterweld.study.GridStudy.Node;
import afterweld.study.JointPlace;
import afterweld.study.Ranking;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Which place of a map is best, from where to where others are as good, and what is blank. */
final class GridAnswer {
  private final GridStudy study;
  private final Ranking ranking;
  private final UnitSystem units;

  GridAnswer(GridStudy study, UnitSystem units) {
    this.study = study;
    this.ranking = study.ranking();
    this.units = units;
  }

  /** The sentences. */
  String text() {
    return Paragraph.of(rankedBy())
        + Paragraph.of("The case as written: " + joint(study.asWritten()) + ".")
        + best()
        + left("Blank", node -> !node.joint().blank().isEmpty())
        + left("Never best", node -> !node.joint().objections().isEmpty());
  }

  private String rankedBy() {
    String end = study.aim().required() ? "." : ", since the case requires no strength.";
    return "Ranked by "
        + study.aim().name()
        + study
            .aim()
            .asked()
            .map(asked -> ": the case requires " + asked.text(units) + ".")
            .orElse(end);
  }

  private String best() {
    if (ranking.best().isEmpty()) {
      return Paragraph.of("Best: none of these places can be recommended.");
    }
    Node best = study.nodes().get(ranking.best().getAsInt());
    Node worst = study.nodes().get(ranking.worst().orElseThrow());
    if (ranking.even()) {
      return Paragraph.of(
          "Best: none more than another, every place that is ranked is as good within 1 %: "
              + range(ranking.asGood())
              + ". For instance "
              + place(best)
              + ".");
    }
    return Paragraph.of("Best: " + place(best) + ".")
        + Paragraph.of("As good within 1 %: " + range(ranking.asGood()) + ".")
        + Paragraph.of(withinError())
        + (ranking.best().equals(ranking.worst())
            ? ""
            : Paragraph.of("Lowest that is ranked: " + place(worst) + "."));
  }

  private String withinError() {
    return ranking.insideError()
        ? "All places that are ranked lie within the model's own error of the best: they show which"
            + " way it tends, not that one place is stronger."
        : "Within the model's own error of the best: " + range(ranking.withinError()) + ".";
  }

  /** From where to where a set of places reaches. */
  private String range(List<Integer> places) {
    if (places.size() == 1) {
      return "no other place";
    }
    List<String> ends =
        IntStream.range(0, study.axes().size()).mapToObj(axis -> ends(places, axis)).toList();
    boolean all = places.size() == box(places);
    return String.join(", ", ends)
        + (all ? "" : " (" + places.size() + " places, not every one between)")
        + (study.axes().size() == 1 ? beyond(places) : "");
  }

  private int box(List<Integer> places) {
    return IntStream.range(0, study.axes().size())
        .map(
            axis -> {
              TreeSet<Integer> steps =
                  places.stream()
                      .map(place -> step(place, axis))
                      .collect(Collectors.toCollection(TreeSet::new));
              return steps.last() - steps.first() + 1;
            })
        .reduce(1, (a, b) -> a * b);
  }

  private int step(int place, int axis) {
    int steps = GridStudy.steps(study.axes().size());
    return axis == 0 ? place % steps : place / steps;
  }

  private String ends(List<Integer> places, int axis) {
    GridInput input = study.axes().get(axis).input();
    double low = places.stream().mapToDouble(place -> value(place, axis)).min().orElseThrow();
    double high = places.stream().mapToDouble(place -> value(place, axis)).max().orElseThrow();
    String from = figure(input, low);
    return words(input)
        + " "
        + (low == high ? from : from + " to " + figure(input, high))
        + " "
        + input.kind().unit(units);
  }

  private double value(int place, int axis) {
    return study.nodes().get(place).values().get(axis);
  }

  /** What ends a range along one input. */
  private String beyond(List<Integer> places) {
    int first = places.get(0);
    int last = places.get(places.size() - 1);
    String below = border(first - 1, "below it ");
    String above = border(last + 1, "above it ");
    String both = below + (below.isEmpty() || above.isEmpty() ? "" : ", ") + above;
    return both.isEmpty() ? "" : " (" + both + ")";
  }

  private String border(int place, String side) {
    if (place < 0 || place >= study.nodes().size()) {
      return side + "the map ends";
    }
    JointPlace joint = study.nodes().get(place).joint();
    return joint.ranked()
        ? ""
        : side + (joint.blank().isEmpty() ? "it is objected to" : "it is blank");
  }

  private String left(String head, Predicate<Node> which) {
    List<Integer> places =
        IntStream.range(0, study.nodes().size())
            .filter(i -> which.test(study.nodes().get(i)))
            .boxed()
            .toList();
    if (places.isEmpty()) {
      return "";
    }
    List<String> ends =
        IntStream.range(0, study.axes().size()).mapToObj(axis -> ends(places, axis)).toList();
    return Paragraph.of(
        head
            + ", "
            + places.size()
            + (places.size() == 1 ? " place, " : " places, ")
            + String.join(", ", ends)
            + (places.size() == box(places) ? "" : " (not every one between)")
            + ": "
            + study.nodes().get(places.get(0)).joint().against());
  }

  private String place(Node node) {
    List<String> at = new ArrayList<>();
    for (int i = 0; i < study.axes().size(); i++) {
      GridInput input = study.axes().get(i).input();
      at.add(
          words(input)
              + " "
              + figure(input, node.values().get(i))
              + " "
              + input.kind().unit(units));
    }
    return String.join(", ", at)
        + ": "
        + joint(node.joint())
        + ", over 2 % below the base on "
        + OutputQuantity.DISTANCE.text(units, node.softenedWidth())
        + " "
        + units.lengthUnit();
  }

  private String joint(JointPlace joint) {
    return joint(study.aim(), joint, units);
  }

  /** A joint in words: what it is ranked by and how it stands, or why it is blank. */
  static String joint(Aim aim, JointPlace joint, UnitSystem units) {
    if (!joint.blank().isEmpty()) {
      return "nothing is claimed. " + joint.blank().replaceFirst("\\.$", "");
    }
    return aim.name()
        + " "
        + aim.text(units, joint.value())
        + (aim.required() ? ", " + standing(joint) : "");
  }

  private static String standing(JointPlace joint) {
    String verdict = joint.judgement().verdict().label();
    return joint.judgement().beside() ? "all that is required " + verdict : verdict;
  }

  private static String words(GridInput input) {
    return input.key().replace('_', ' ');
  }

  private String figure(GridInput input, double si) {
    return String.format(Locale.ROOT, "%.3g", input.kind().in(units, si));
  }
}
