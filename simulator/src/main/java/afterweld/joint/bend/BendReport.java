package afterweld.joint.bend;

import afterweld.joint.JointSettings.BendLoad;
import afterweld.joint.JointSettings.BendSettings;
import afterweld.joint.ProfileSlices;
import afterweld.joint.SliceLine;
import afterweld.material.Alloy;
import afterweld.quantity.BothUnits;
import afterweld.quantity.Check;
import afterweld.section.SectionProfile;
import afterweld.weld.Joint;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What a strip cut across the weld does in a bend, in every state, bead dressed flush. Before
 * welding it is the unwelded strip that the others are held against. A weld that is not sound is
 * not bent.
 *
 * @param strip angle, length, width and load that the case asks for
 * @param thickness of the thinner side, m
 * @param states the states that could be bent, in order
 * @param joint how the parts meet
 * @param test the qualification test of this weld; empty where none is known, or where the codes
 *     ask for none
 * @param testedFrom the first state that the test is for
 * @param warnings limits of what the numbers mean, and what could not be bent
 */
public record BendReport(
    BendSettings strip,
    double thickness,
    List<BentState> states,
    Joint joint,
    Optional<BendTest> test,
    int testedFrom,
    List<Warning> warnings) {

  /** The code of the warning that a state could not be bent, and why. */
  public static final String NOT_BENT = "not-bent";

  /** Why the load matters. */
  public static final String EDGE_NOTE =
      "In a three-point bend, or by hand over an edge, the moment has its peak under the edge: even"
          + " an unwelded strip folds there. Only end couples, with one moment over the whole strip,"
          + " show what the weld does.";

  /** What the model leaves open. */
  public static final String DUCTILITY_NOTE =
      "Whether the surface cracks is not predicted: that takes the metal's ductility, and a bend"
          + " test. Even stretch is what a tension test reaches before it necks; a sound bend stands"
          + " more.";

  private static final String NO_FORMER =
      "No former of a guided bend is known here for this pair of metals; take it from the code.";

  private static final String NO_BUTT_JOINT =
      "No guided bend is judged: the codes bend butt joints. A fillet weld is broken open and a"
          + " section of it etched; a groove weld of another joint is qualified on a butt coupon (AWS"
          + " D1.2, from memory).";

  private static final String HARDENED_BY_HEAT =
      "To form the part: bend it before full treatment, or within an hour of the quench and age it"
          + " afterwards, or annealed and treat it fully afterwards; once aged it stretches least.";

  private static final String CAST =
      "A casting is not formed by bending; bend a wrought part before it is welded to one.";

  private static final String UNLIKE =
      "To form the parts: bend them before they are welded; a treatment that hardens one side"
          + " anneals the other.";

  private static final String HARDENED_BY_WORK =
      "To form the part: annealed metal stretches most, and no heat treatment brings back what"
          + " annealing takes from a work-hardened base.";

  private static final int AS_WELDED = 1;

  /** Warnings that are the same for every state and load. */
  private static final Set<String> OF_THE_STRIP = Set.of("wide-strip", "edge-fold");

  /** Copies the lists. */
  public BendReport {
    Check.positive("thickness", thickness, "m");
    states = List.copyOf(states);
    warnings = List.copyOf(warnings);
  }

  /** Bends the strip of a profile in each of its states. */
  public static BendReport of(SectionProfile profile, BendSettings strip) {
    List<Warning> warnings = new ArrayList<>();
    List<BentState> states = new ArrayList<>();
    int bendable = profile.soundness().sound() ? profile.states().size() : 1;
    if (!profile.soundness().sound()) {
      warnings.add(new Warning(NOT_BENT, sentence("welded", profile.soundness().note())));
    }
    for (int state = 0; state < bendable; state++) {
      bent(profile, state, strip, warnings).ifPresent(states::add);
    }
    sides(profile).ifPresent(warnings::add);
    shape(profile.weldCase()).ifPresent(warnings::add);
    longerThanThePart(profile.weldCase(), strip).ifPresent(warnings::add);
    for (BentState bent : states) {
      String name = profile.states().get(bent.state());
      add(warnings, name + ", end couples", bent.couples());
      add(warnings, name + ", over an edge", bent.edge());
      bent.stretch()
          .flatMap(stretch -> beyondEvenStretch(name, bent.couples(), stretch.sharpest()))
          .ifPresent(warnings::add);
    }
    double thickness =
        Math.min(profile.weldCase().left().thickness(), profile.weldCase().right().thickness());
    Optional<BendTest> test = BendTest.of(profile.weldCase());
    return new BendReport(
        strip,
        thickness,
        states,
        profile.weldCase().joint(),
        test,
        test.equals(BendTest.asWelded(profile.weldCase()))
            ? AS_WELDED
            : profile.states().size() - 1,
        warnings.stream().distinct().toList());
  }

  private static Optional<BentState> bent(
      SectionProfile profile, int state, BendSettings strip, List<Warning> warnings) {
    String name = profile.states().get(state);
    Optional<SliceLine> line =
        ProfileSlices.flush(profile, state, ProfileSlices.End.MIDDLE, strip.length());
    if (line.isEmpty()) {
      warnings.add(
          new Warning(NOT_BENT, sentence(name, "the strength of some metal is not predicted")));
      return Optional.empty();
    }
    try {
      return Optional.of(BentState.of(state, line.get(), strip, UnknownStretch.of(profile, state)));
    } catch (IllegalArgumentException fault) {
      warnings.add(
          new Warning(NOT_BENT, sentence(name, fault.getMessage() + "; take a longer strip")));
      return Optional.empty();
    }
  }

  private static Optional<Warning> sides(SectionProfile profile) {
    boolean same = profile.weldCase().left().equals(profile.weldCase().right());
    return same
        ? Optional.empty()
        : Optional.of(
            new Warning(
                "sides-differ",
                "The sides differ: the strip before welding changes metal or thickness in its"
                    + " middle and doesn't bend evenly either."));
  }

  private static Optional<Warning> shape(WeldCase weldCase) {
    boolean inLine = weldCase.joint() == Joint.BUTT || weldCase.joint() == Joint.BEAD;
    return inLine && weldCase.ring().isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Warning(
                "bent-as-a-butt",
                "The strip is computed flat and its two parts in line: a "
                    + weldCase.joint().label()
                    + " joint or a curved wall bends otherwise."));
  }

  private static Optional<Warning> longerThanThePart(WeldCase weldCase, BendSettings strip) {
    double shorter =
        Math.min(
            weldCase.left().width().orElse(Double.POSITIVE_INFINITY),
            weldCase.right().width().orElse(Double.POSITIVE_INFINITY));
    return strip.length() / 2 <= shorter
        ? Optional.empty()
        : Optional.of(
            new Warning(
                "strip-longer-than-part",
                "The strip of "
                    + BothUnits.length(strip.length())
                    + " reaches beyond a leg of "
                    + BothUnits.length(shorter)
                    + ": the metal at its end is taken to go on."));
  }

  private static void add(List<Warning> warnings, String where, StripBend bend) {
    for (Warning warning : bend.warnings()) {
      String head = OF_THE_STRIP.contains(warning.code()) ? "bend" : where;
      warnings.add(new Warning(warning.code(), sentence(head, warning.text())));
    }
  }

  private static Optional<Warning> beyondEvenStretch(
      String name, StripBend couples, BentState.EvenStretch there) {
    double strain = couples.averagedOuterStrain();
    if (strain <= there.strain()) {
      return Optional.empty();
    }
    String text =
        String.format(
            Locale.ROOT,
            "outer strain %.0f %% under end couples, beyond the %.0f %% that the metal there"
                + " (%s) stretches evenly in tension",
            100 * strain,
            100 * there.strain(),
            there.zone());
    return Optional.of(new Warning("beyond-even-stretch", sentence(name, text)));
  }

  private static String sentence(String head, String text) {
    String stop = text.endsWith(".") ? "" : ".";
    return Character.toUpperCase(head.charAt(0)) + head.substring(1) + ": " + text + stop;
  }

  /** What the test of this weld asks, or why there is none. */
  public String asks() {
    return test.map(one -> "Guided bend by " + BendOutlook.asks(one, thickness) + ".")
        .orElse(BendTest.bends(joint) ? NO_FORMER : NO_BUTT_JOINT);
  }

  /** Thickness of what is bent in the test, m; that of the strip where no test is known. */
  public double specimen() {
    return test.map(one -> one.specimenThickness(thickness)).orElse(thickness);
  }

  /** How the guided bend looks in every state that it is for and that could be bent. */
  public List<BendOutlook> outlooks() {
    return states.stream()
        .filter(bent -> bent.state() >= testedFrom)
        .flatMap(bent -> test.stream().map(one -> BendOutlook.of(one, bent, thickness)))
        .toList();
  }

  /** When to bend the part itself (common practice). */
  public static String forming(WeldCase weldCase) {
    List<Alloy> bases = List.of(weldCase.left().alloy(), weldCase.right().alloy());
    if (bases.stream().anyMatch(Alloy::casting)) {
      return CAST;
    }
    if (bases.stream().allMatch(Alloy::heatTreatable)) {
      return HARDENED_BY_HEAT;
    }
    return bases.stream().anyMatch(Alloy::heatTreatable) ? UNLIKE : HARDENED_BY_WORK;
  }

  /** A state, if it could be bent. */
  public Optional<BentState> state(int state) {
    return states.stream().filter(bent -> bent.state() == state).findFirst();
  }

  /** The strip before welding, if it could be bent. */
  public Optional<BentState> unwelded() {
    return state(0);
  }

  /** Both loads, the one that the case asks for first. */
  public List<BendLoad> loads() {
    return strip.load() == BendLoad.COUPLES
        ? List.of(BendLoad.COUPLES, BendLoad.EDGE)
        : List.of(BendLoad.EDGE, BendLoad.COUPLES);
  }
}
