package afterweld.casefile;

import static afterweld.casefile.Dimension.TIME;

import afterweld.casefile.text.FaultCollector;
import afterweld.casefile.text.Names;
import afterweld.casefile.text.Node;
import afterweld.casefile.text.Place;
import afterweld.casefile.text.Quoted;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Quench;
import afterweld.thermal.furnace.FurnaceStep.QuenchAtRate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads {@code after_weld}: the steps of the heat treatment in order. */
final class HeatTreatmentReader {
  /** The key. */
  static final String AFTER_WELD = "after_weld";

  private static final Choices<Kind> KINDS = Choices.of(List.of(Kind.values()), Kind::key);
  private static final Measure REST = Measure.above("natural_age", TIME, 0, 3650, "days");
  private static final String EXPECTED =
      "a list of steps, each with one key: " + String.join(", ", KINDS.names());
  private static final int MOST_STEPS = 30;

  /** Between quench and ageing where the case says nothing, s: common practice. */
  private static final double USUAL_HOLD = 7200;

  /**
   * After a last quench: 6061 comes to T4 in days, and tempers are stated after 30, s (common
   * practice).
   */
  private static final double TO_T4 = 30 * 86_400.0;

  private final StepReader steps;
  private final Notes notes;
  private final FaultCollector faults;

  HeatTreatmentReader(MeltingLimit limit, Notes notes, FaultCollector faults) {
    this.steps = new StepReader(limit, notes);
    this.notes = notes;
    this.faults = faults;
  }

  /** What a step is. */
  private enum Kind {
    SOLUTION_TREAT("solution_treat"),
    QUENCH("quench"),
    NATURAL_AGE("natural_age"),
    AGE("age"),
    ANNEAL("anneal");

    private final String key;

    Kind(String key) {
      this.key = key;
    }

    private String key() {
      return key;
    }
  }

  /** A step in the list: what it is called, if that could be read, and where. */
  private record Listed(Optional<Kind> kind, Place place) {}

  /** The steps; fewer than the file has if some are faulty. */
  List<FurnaceStep> read(Section top) {
    List<Listed> order = new ArrayList<>();
    List<FurnaceStep> treatment = new ArrayList<>();
    for (Node item : top.list(AFTER_WELD, 0, MOST_STEPS, EXPECTED)) {
      if (item instanceof Node.Mapping mapping && mapping.entries().size() == 1) {
        step(mapping, order, order.size() + 1).ifPresent(treatment::add);
      } else {
        order.add(new Listed(Optional.empty(), item.place()));
        faults.add(item.place(), AFTER_WELD + ": found " + words(item) + "; expected " + EXPECTED);
      }
    }
    checkOrder(order);
    return rested(treatment);
  }

  /** The steps with the rests that follow a quench where the case says nothing. */
  private List<FurnaceStep> rested(List<FurnaceStep> treatment) {
    List<FurnaceStep> all = new ArrayList<>();
    for (int i = 0; i < treatment.size(); i++) {
      FurnaceStep step = treatment.get(i);
      all.add(step);
      boolean quench = step instanceof Quench || step instanceof QuenchAtRate;
      if (quench && i == treatment.size() - 1) {
        all.add(new FurnaceStep.NaturalAge(TO_T4));
        notes.add(
            "rest-by-default",
            "30 days at room temperature after the last quench, as nothing else is said: natural"
                + " ageing brings the metal to T4.");
      } else if (quench && treatment.get(i + 1) instanceof FurnaceStep.Age) {
        all.add(new FurnaceStep.NaturalAge(USUAL_HOLD));
        notes.add(
            "rest-by-default",
            "Two hours at room temperature between quench and ageing, as nothing else is said.");
      }
    }
    return all;
  }

  private static String words(Node item) {
    return item instanceof Node.Mapping mapping
        ? mapping.entries().size() + " keys in one step"
        : item.words();
  }

  private Optional<FurnaceStep> step(Node.Mapping item, List<Listed> order, int number) {
    String key = item.entries().keySet().iterator().next();
    Node.Entry entry = item.entries().get(key);
    Optional<Kind> kind = KINDS.find(key).filter(known -> known.key().equals(key));
    order.add(new Listed(kind, entry.key()));
    if (kind.isEmpty()) {
      String hint = Names.hint(key, KINDS.names());
      faults.add(entry.key(), "unknown step " + Quoted.of(key) + "; expected " + EXPECTED + hint);
      return Optional.empty();
    }
    return kind.get() == Kind.NATURAL_AGE
        ? rest(new Section("step " + number, entry.key(), item, faults))
        : inside(kind.get(), entry);
  }

  private static Optional<FurnaceStep> rest(Section section) {
    OptionalDouble time = section.quantity(REST);
    return time.isPresent()
        ? Optional.of(new FurnaceStep.NaturalAge(time.getAsDouble()))
        : Optional.empty();
  }

  private Optional<FurnaceStep> inside(Kind kind, Node.Entry entry) {
    if (!(entry.value() instanceof Node.Mapping mapping)) {
      String found = kind.key() + ": found " + entry.value().words();
      faults.add(entry.value().place(), found + "; expected " + StepReader.expected(kind.key()));
      return Optional.empty();
    }
    Section section = new Section(kind.key(), entry.key(), mapping, faults);
    return switch (kind) {
      case SOLUTION_TREAT -> steps.solutionTreat(section);
      case QUENCH -> steps.quench(section);
      case AGE -> steps.age(section);
      case ANNEAL -> steps.anneal(section);
      case NATURAL_AGE -> throw new IllegalStateException("a rest has no keys");
    };
  }

  private void checkOrder(List<Listed> order) {
    for (int i = 0; i < order.size(); i++) {
      boolean last = i == order.size() - 1;
      boolean quenched = !last && isKindOrUnknown(order.get(i + 1), Kind.QUENCH);
      boolean dissolved = i > 0 && isKindOrUnknown(order.get(i - 1), Kind.SOLUTION_TREAT);
      if (is(order.get(i), Kind.SOLUTION_TREAT) && !quenched) {
        faults.add(order.get(i).place(), "solution_treat: expected a quench as the next step");
      }
      if (is(order.get(i), Kind.QUENCH) && !dissolved) {
        faults.add(order.get(i).place(), "quench: expected a solution_treat as the step before");
      }
    }
  }

  private static boolean is(Listed step, Kind kind) {
    return step.kind().equals(Optional.of(kind));
  }

  private static boolean isKindOrUnknown(Listed step, Kind kind) {
    return step.kind().isEmpty() || is(step, kind);
  }
}
