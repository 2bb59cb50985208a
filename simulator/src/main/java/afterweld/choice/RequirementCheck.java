package afterweld.choice;

import afterweld.material.Alloy;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.section.Estimate;
import afterweld.section.OutputQuantity;
import afterweld.section.SectionProfile;
import afterweld.section.UnitSystem;
import afterweld.section.WeldCase;
import afterweld.strength.Strength;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Holds a section profile against what the drawing asks, in the last state.
 *
 * <p>Yield, tensile strength and hardness are judged on the lowest station, averaged over one
 * thickness. Met: the low end of the error band is not below the asked value. Not met: the best
 * estimate is below it. Between, or where no strength is predicted: unclear, a test coupon decides.
 * For yield and tensile strength this stands on the low side of a joint's reading over a gauge,
 * since the stronger metal beside the lowest place does not count.
 *
 * <p>Service temperature: metal with more than 3 % Mg is not for service above 65 °C (usual rule of
 * the trade, from memory of the Aluminum Association's filler guidance); above 100 °C strength at
 * room temperature says nothing, so the answer is unclear. Colour after anodizing: a weld much
 * richer in silicon than its base turns grey (common practice, limit assumed), any other needs a
 * test piece.
 */
public final class RequirementCheck {
  private static final double MOST_MAGNESIUM = 3.0;
  private static final double WARM_SERVICE = 273.15 + 65;
  private static final double HOT_SERVICE = 273.15 + 100;
  private static final double GREY_SILICON = 1.5;

  private final SectionProfile profile;
  private final Requirement requirement;
  private final UnitSystem units;

  private RequirementCheck(SectionProfile profile, Requirement requirement, UnitSystem units) {
    this.profile = profile;
    this.requirement = requirement;
    this.units = units;
  }

  /** One thing asked, and how it stands. */
  private record Finding(Verdict verdict, String reason) {}

  /**
   * Judges a profile.
   *
   * @param units what the reasons are written in
   */
  public static Judgement judge(SectionProfile profile, Requirement requirement, UnitSystem units) {
    return new RequirementCheck(profile, requirement, units).judge();
  }

  private Judgement judge() {
    List<Finding> findings = new ArrayList<>(strengths());
    if (!findings.isEmpty()) {
      findings.add(new Finding(Verdict.MET, basis()));
    }
    requirement.serviceTemperature().ifPresent(asked -> findings.add(service(asked)));
    requirement.anodizedMatch().filter(asked -> asked).ifPresent(asked -> findings.add(colour()));
    if (findings.isEmpty()) {
      return Judgement.NOTHING_ASKED;
    }
    Verdict verdict = findings.stream().map(Finding::verdict).reduce(Verdict.MET, Verdict::and);
    return new Judgement(verdict, findings.stream().map(Finding::reason).toList());
  }

  private List<Finding> strengths() {
    return Stream.of(
            strength(OutputQuantity.YIELD, requirement.yield(), Strength::yield),
            strength(OutputQuantity.TENSILE, requirement.tensile(), Strength::tensile),
            strength(OutputQuantity.HARDNESS, requirement.hardness(), Strength::hardness))
        .flatMap(Optional::stream)
        .toList();
  }

  private String basis() {
    return "Judged on the lowest station, averaged over one thickness, "
        + profile.states().get(lastState())
        + "; the joint model is not applied, so the stronger metal inside a gauge length does not"
        + " count.";
  }

  private Optional<Finding> strength(
      OutputQuantity quantity, OptionalDouble asked, ToDoubleFunction<Strength> value) {
    if (asked.isEmpty()) {
      return Optional.empty();
    }
    LowestAverage lowest = new LowestAverage(profile, lastState());
    double low = lowest.of(Estimate::low, value);
    double middle = lowest.of(Estimate::middle, value);
    Verdict verdict = compare(low, middle, asked.getAsDouble());
    String found =
        Double.isNaN(middle)
            ? "not predicted at every station"
            : with(quantity, middle) + " predicted, low end " + with(quantity, low);
    String asks = quantity.title() + ": " + with(quantity, asked.getAsDouble()) + " asked, ";
    return Optional.of(new Finding(verdict, capital(asks) + found + ": " + answer(verdict)));
  }

  private static Verdict compare(double low, double middle, double asked) {
    if (middle < asked) {
      return Verdict.NOT_MET;
    }
    return low >= asked ? Verdict.MET : Verdict.UNCLEAR;
  }

  private static String answer(Verdict verdict) {
    return verdict == Verdict.UNCLEAR ? "unclear, needs a test coupon." : verdict.label() + ".";
  }

  private Finding service(double asked) {
    String head = "Service at " + with(OutputQuantity.PEAK_TEMPERATURE, asked) + ": ";
    String limit = with(OutputQuantity.PEAK_TEMPERATURE, WARM_SERVICE);
    if (asked <= WARM_SERVICE) {
      return new Finding(Verdict.MET, head + "met, not above " + limit + ".");
    }
    if (mostMagnesium() > MOST_MAGNESIUM) {
      String why = "not met, metal with more than 3 % Mg is not for service above ";
      return new Finding(Verdict.NOT_MET, head + why + limit + ".");
    }
    if (asked > HOT_SERVICE) {
      String why = "unclear, strength is predicted for room temperature only; needs a test coupon.";
      return new Finding(Verdict.UNCLEAR, head + why);
    }
    return new Finding(Verdict.MET, head + "met, no metal of the joint has more than 3 % Mg.");
  }

  private double mostMagnesium() {
    WeldCase weld = profile.weldCase();
    Stream<Composition> metals =
        Stream.of(
            weld.left().composition(),
            weld.right().composition(),
            profile.weldMetal().composition());
    return Stream.concat(metals, weld.filler().alloy().map(Alloy::composition).stream())
        .mapToDouble(metal -> metal.of(Element.MG))
        .max()
        .orElseThrow();
  }

  private Finding colour() {
    WeldCase weld = profile.weldCase();
    double base =
        Math.max(
            weld.left().composition().of(Element.SI), weld.right().composition().of(Element.SI));
    if (profile.weldMetal().composition().of(Element.SI) > base + GREY_SILICON) {
      String why = "Colour after anodizing: not met, a weld rich in silicon turns grey.";
      return new Finding(Verdict.NOT_MET, why);
    }
    String why = "Colour after anodizing: unclear, needs an anodized test piece.";
    return new Finding(Verdict.UNCLEAR, why);
  }

  private int lastState() {
    return profile.states().size() - 1;
  }

  private String with(OutputQuantity quantity, double si) {
    return quantity.text(units, si) + " " + quantity.unit(units);
  }

  private static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
