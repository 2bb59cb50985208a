package afterweld.joint;

import afterweld.quantity.BothUnits;
import afterweld.quantity.Check;
import afterweld.section.SectionProfile;
import afterweld.weld.Side;
import afterweld.weld.Warning;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A flat member with the weld along its middle, pulled along it: in every state what the predicted
 * strengths add up to, and beside it what the codes give. The columns must not be mixed.
 *
 * @param width of the whole plate, m
 * @param states the states whose strength is predicted, in order
 * @param codes what the codes give; empty where one of their values is missing
 * @param warnings what sets the columns apart, and why one is missing
 */
public record MemberReport(
    double width, List<State> states, Optional<Codes> codes, List<Warning> warnings) {

  /** What stands over the columns. */
  public static final String NOTE =
      "Predicted forces are means and not code. The code columns are characteristic minima: the US"
          + " one is its weighted form with the EN strengths. A code's welded value governs unless"
          + " the code allows the heat-treated one.";

  private static final String EN = "EN 1999-1-1";
  private static final String PLATE = ", sheet and plate";

  /** Copies the lists. */
  public MemberReport {
    Check.positive("width", width, "m");
    states = List.copyOf(states);
    warnings = List.copyOf(warnings);
  }

  /**
   * Predicted, not code.
   *
   * @param state place in the profile's list of states
   * @param proofForce proof stress summed over the section, N
   * @param greatestForce with one strain for all fibres, N
   * @param equivalentReach width each side of the weld over which the lowest proof would do the
   *     same harm, m
   */
  public record State(int state, double proofForce, double greatestForce, double equivalentReach) {
    /** Refuses what it cannot be. */
    public State {
      Check.notNegative("state", state, "");
      Check.positive("proof force", proofForce, "N");
      Check.positive("greatest force", greatestForce, "N");
      Check.notNegative("reach", equivalentReach, "m");
    }
  }

  /**
   * By the codes, characteristic.
   *
   * @param unwelded proof of the base on the whole section, N
   * @param en along the weld, EN, N
   * @param us along the weld, US weighted form with the EN strengths, N
   * @param reach of the EN heat-affected zone each side of the weld, m; the wider of the sides
   */
  public record Codes(double unwelded, double en, double us, double reach) {
    /** Refuses what it cannot be. */
    public Codes {
      Check.positive("force", unwelded, "N");
      Check.positive("force", en, "N");
      Check.positive("force", us, "N");
      Check.notNegative("reach", reach, "m");
    }

    /** EN force for design, N. */
    public double enDesign() {
      return en / MemberCode.YIELD_FACTOR;
    }
  }

  /** The report on a plate of that width (m). */
  static MemberReport of(SectionProfile profile, double width, List<DesignCodeValue> values) {
    List<State> states = new ArrayList<>();
    for (int state = 0; state < profile.states().size(); state++) {
      int index = state;
      ProfileSlices.flush(profile, state, ProfileSlices.End.MIDDLE, width)
          .map(line -> state(index, line.over(width)))
          .ifPresent(states::add);
    }
    Optional<Codes> codes = codes(profile, width, values);
    List<Warning> warnings = new ArrayList<>();
    if (codes.isEmpty()) {
      warnings.add(
          new Warning(
              "member-without-code",
              "Member along the weld: no code column, since " + missing(profile, values) + "."));
    }
    if (states.size() < profile.states().size()) {
      warnings.add(
          new Warning(
              "member-not-predicted",
              "Member along the weld: no force for a state in which the strength of some metal is"
                  + " not predicted."));
    }
    return new MemberReport(width, states, codes, warnings);
  }

  private static State state(int state, SliceLine plate) {
    return new State(
        state,
        WeldedMember.proofForce(plate),
        WeldedMember.greatestForce(plate, PowerLaw.DEFAULT_MODULUS),
        WeldedMember.equivalentReach(plate));
  }

  private static String missing(SectionProfile profile, List<DesignCodeValue> values) {
    boolean same = profile.weldCase().left().equals(profile.weldCase().right());
    Side left = profile.weldCase().left();
    boolean known = strength(values, same ? "" : " (left)").isPresent();
    Side bare = known ? profile.weldCase().right() : left;
    boolean strengths = known && (same || strength(values, " (right)").isPresent());
    return strengths
        ? "the width of the heat-affected zone by the code is not known (for TIG above 6 mm it has"
            + " none)"
        : "no EN strengths of "
            + bare.alloy().name()
            + "-"
            + bare.temper().name()
            + " of "
            + BothUnits.length(bare.thickness())
            + " are known here";
  }

  /** Each side counts with half of a plate of its own metal. */
  private static Optional<Codes> codes(
      SectionProfile profile, double width, List<DesignCodeValue> values) {
    boolean same = profile.weldCase().left().equals(profile.weldCase().right());
    Optional<Codes> left = codes(profile.weldCase().left(), width, values, same ? "" : " (left)");
    Optional<Codes> right =
        codes(profile.weldCase().right(), width, values, same ? "" : " (right)");
    return left.flatMap(one -> right.map(other -> mean(one, other)));
  }

  private static Codes mean(Codes left, Codes right) {
    return new Codes(
        (left.unwelded() + right.unwelded()) / 2,
        (left.en() + right.en()) / 2,
        (left.us() + right.us()) / 2,
        Math.max(left.reach(), right.reach()));
  }

  private static Optional<Codes> codes(
      Side side, double width, List<DesignCodeValue> values, String name) {
    return strength(values, name)
        .flatMap(
            strength ->
                value(values, "HAZ half width", "", name)
                    .map(reach -> codes(side.thickness(), width, strength, reach * 1e-3)));
  }

  private static Codes codes(double thickness, double width, CodeStrength strength, double reach) {
    double area = width * thickness;
    return new Codes(
        area * strength.proof(),
        MemberCode.alongWeld(width, thickness, strength, reach),
        area * MemberCode.weighted(width, strength.proof(), strength.hazProof()),
        reach);
  }

  /** EN strengths of sheet and plate, else of the form that is tabulated. */
  private static Optional<CodeStrength> strength(List<DesignCodeValue> values, String name) {
    return strength(values, PLATE, name).or(() -> strength(values, "", name));
  }

  private static Optional<CodeStrength> strength(
      List<DesignCodeValue> values, String form, String name) {
    Optional<Double> proof = value(values, "proof of the base", form, name);
    Optional<Double> tensile = value(values, "tensile strength of the base", form, name);
    Optional<Double> hazProof = value(values, "proof in the HAZ", form, name);
    Optional<Double> hazTensile = value(values, "tensile strength in the HAZ", form, name);
    boolean known =
        proof.isPresent() && tensile.isPresent() && hazProof.isPresent() && hazTensile.isPresent();
    return known
        ? Optional.of(
            new CodeStrength(
                proof.get() * 1e6,
                tensile.get() * 1e6,
                hazProof.get() * 1e6,
                hazTensile.get() * 1e6))
        : Optional.empty();
  }

  private static boolean shared(String item, String form) {
    return item.endsWith(form) && !item.endsWith(" (left)") && !item.endsWith(" (right)");
  }

  /** The value of a side; where it holds for both sides it stands without a name. */
  private static Optional<Double> value(
      List<DesignCodeValue> values, String item, String form, String name) {
    return values.stream()
        .filter(value -> value.code().equals(EN) && value.item().startsWith(item))
        .filter(value -> value.item().endsWith(form + name) || shared(value.item(), form))
        .map(DesignCodeValue::value)
        .findFirst();
  }

  /** What the codes give for a state: before welding the base on the whole section. */
  public Optional<Codes> codesFor(State state) {
    return state.state() > 0
        ? codes
        : codes.map(
            welded -> new Codes(welded.unwelded(), welded.unwelded(), welded.unwelded(), 0));
  }
}
