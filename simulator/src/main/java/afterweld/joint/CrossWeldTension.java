package afterweld.joint;

import afterweld.quantity.Check;
import afterweld.section.Zone;
import afterweld.weld.Warning;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/**
 * What a tension test across the weld would read. Every slice carries the same force, so the
 * weakest ends the test, while the reading over the gauge is a mean of slices that stretch very
 * differently: proof stress and elongation of a joint belong to their gauge length and mean nothing
 * without it.
 *
 * <p>Formulae, with F the force, A the section, e the true strain of a slice, L the gauge length:
 *
 * <pre>
 * tensile strength        min over the slices of A x tensile, over the base's section
 * proof stress            F with  sum (exp(e(F)) - 1) dx / L  -  mean of F/(A E)  =  0.002
 * elongation at fracture  plastic strain at the greatest force, up to that + neck x sqrt(section)/L
 * </pre>
 *
 * <p>Validity: sound metal, static pull at room temperature, no bending, lower side of what the
 * harder neighbours do to a narrow soft band. Source: model definition; neck term after Barba (form
 * of ISO 2566, from memory).
 *
 * @param gauge gauge length that the readings belong to, m
 * @param proof 0.2 % proof stress of the joint on the thinner base's section, Pa; empty if the
 *     joint reaches its greatest force first
 * @param tensile tensile strength of the joint on the thinner base's section, Pa
 * @param tensileOfWeakestSlice the same without averaging over one thickness, Pa
 * @param strainAtMaximum mean nominal strain over the gauge at the greatest force
 * @param weakestStrain nominal strain of the slice that fails, at the greatest force
 * @param elongation elongation at fracture over the gauge, without and with the neck's share; empty
 *     where none is claimed
 * @param failure where it breaks
 * @param tensileEfficiency greatest force over that of the base, per side
 * @param proofEfficiency proof force over that of the base, per side; empty without a proof stress
 * @param warnings limits of what the numbers mean
 */
public record CrossWeldTension(
    double gauge,
    OptionalDouble proof,
    double tensile,
    double tensileOfWeakestSlice,
    double strainAtMaximum,
    double weakestStrain,
    Optional<SliceLine.Band> elongation,
    Failure failure,
    Efficiency tensileEfficiency,
    Optional<Efficiency> proofEfficiency,
    List<Warning> warnings) {

  /** Less than this tells no two places apart. */
  private static final double ALIKE = 1e-3;

  /** Slices whose forces differ by less are level but for rounding. */
  private static final double LEVEL = 1e-6;

  /** What stands in place of a proof stress that the test doesn't reach. */
  public static final String NO_PROOF = "no 0.2 % proof: joint reaches its maximum first";

  /** Copies the list. */
  public CrossWeldTension {
    Check.positive("gauge", gauge, "m");
    Check.positive("tensile strength", tensile, "Pa");
    Check.positive("tensile strength", tensileOfWeakestSlice, "Pa");
    Check.notNegative("strain", strainAtMaximum, "");
    Check.notNegative("strain", weakestStrain, "");
    warnings = List.copyOf(warnings);
  }

  /**
   * Pulls a joint.
   *
   * @throws IllegalArgumentException if the line doesn't cover the gauge
   */
  public static CrossWeldTension pull(SliceLine line, TensionCoupon coupon) {
    TensionWarnings.checkCovers(line, coupon.gauge());
    SeriesPull pull = new SeriesPull(line, coupon);
    int weakest = pull.weakest();
    double greatest = pull.force(weakest);
    double plastic = pull.meanPlasticStrain(greatest);
    OptionalDouble proof =
        plastic < PowerLaw.OFFSET
            ? OptionalDouble.empty()
            : OptionalDouble.of(pull.proofForce(greatest));
    double section = line.referenceSection();
    Failure failure = failure(line, pull, weakest);
    return new CrossWeldTension(
        coupon.gauge(),
        over(proof, section),
        greatest / section,
        pull.lowestOwnForce() / section,
        pull.meanStrain(greatest),
        Math.expm1(pull.strain(weakest, greatest)),
        Optional.of(elongation(plastic, coupon, section)),
        failure,
        tensileEfficiency(line, greatest),
        proof.isPresent()
            ? Optional.of(proofEfficiency(line, proof.getAsDouble()))
            : Optional.empty(),
        TensionWarnings.of(line, coupon, pull, failure));
  }

  /**
   * The same without a claim of elongation. Castings break at eutectic silicon, pores and films
   * long before they neck: sound A356-T6 stretches by 3 to 10 % (handbooks, from memory), by the
   * law of ductile metal it would be 20 %.
   */
  CrossWeldTension withoutElongation() {
    return new CrossWeldTension(
        gauge,
        proof,
        tensile,
        tensileOfWeakestSlice,
        strainAtMaximum,
        weakestStrain,
        Optional.empty(),
        failure,
        tensileEfficiency,
        proofEfficiency,
        warnings);
  }

  /** The sentence beside the proof stress: empty, or why there is none. */
  public String proofNote() {
    return proof.isPresent() ? "" : NO_PROOF;
  }

  private static OptionalDouble over(OptionalDouble force, double section) {
    return force.isPresent() ? OptionalDouble.of(force.getAsDouble() / section) : force;
  }

  private static SliceLine.Band elongation(double plastic, TensionCoupon coupon, double section) {
    double neck = coupon.neck() * Math.sqrt(section * coupon.width()) / coupon.gauge();
    return new SliceLine.Band(plastic, plastic + neck);
  }

  private static Failure failure(SliceLine line, SeriesPull pull, int weakest) {
    Map<String, Double> lowest = new LinkedHashMap<>();
    for (int i = 0; i < line.slices().size(); i++) {
      lowest.merge(line.slices().get(i).zone(), pull.force(i), Math::min);
    }
    int named = outermost(line, pull, weakest);
    String zone = line.slices().get(named).zone();
    double greatest = pull.force(weakest);
    lowest.remove(zone);
    return new Failure(
        zone,
        line.slices().get(named).centre(),
        lowest.entrySet().stream()
            .min(Map.Entry.comparingByValue())
            .map(next -> new RunnerUp(next.getKey(), next.getValue() / greatest - 1)));
  }

  /**
   * Of slices that are as weak as the weakest, the one whose zone lies farthest from the weld:
   * metal that is alike throughout breaks no nearer to it, whichever way the joint is turned. Where
   * that zone is level but for rounding, its outer end.
   */
  private static int outermost(SliceLine line, SeriesPull pull, int weakest) {
    List<String> outwards = Arrays.stream(Zone.values()).map(Zone::label).toList();
    ToIntFunction<Integer> zone = i -> outwards.indexOf(line.slices().get(i).zone());
    List<Integer> alike =
        IntStream.range(0, line.slices().size())
            .filter(i -> pull.force(i) <= (1 + ALIKE) * pull.force(weakest))
            .boxed()
            .toList();
    int farthest = alike.stream().mapToInt(zone).max().orElseThrow();
    List<Integer> there = alike.stream().filter(i -> zone.applyAsInt(i) == farthest).toList();
    double least = there.stream().mapToDouble(pull::force).min().orElseThrow();
    return there.stream()
        .filter(i -> pull.force(i) <= (1 + LEVEL) * least)
        .max(Comparator.comparingDouble(i -> Math.abs(line.slices().get(i).centre())))
        .orElseThrow();
  }

  private static Efficiency tensileEfficiency(SliceLine line, double force) {
    return new Efficiency(
        force / (line.left().section() * line.leftBase().tensile()),
        force / (line.right().section() * line.rightBase().tensile()));
  }

  private static Efficiency proofEfficiency(SliceLine line, double force) {
    return new Efficiency(
        force / (line.left().section() * line.leftBase().proof()),
        force / (line.right().section() * line.rightBase().proof()));
  }

  /**
   * Where the joint breaks.
   *
   * @param zone zone of the slice that ends the test
   * @param distance of that slice, m from the weld centre
   * @param runnerUp the next zone, if there is another
   */
  public record Failure(String zone, double distance, Optional<RunnerUp> runnerUp) {
    private static final double TIE = 0.02;

    /** Refuses what it cannot be. */
    public Failure {
      Check.said("zone", zone);
      Check.finite("distance", distance, "m");
    }

    /** Whether the next zone is so close that no single place can be named. */
    public boolean undecided() {
      return runnerUp.filter(next -> next.margin() <= TIE).isPresent();
    }

    /** The zones it may break in: one, or two if undecided. */
    public List<String> zones() {
      return undecided() ? List.of(zone, runnerUp.orElseThrow().zone()) : List.of(zone);
    }
  }

  /**
   * The zone that would break next.
   *
   * @param zone its name
   * @param margin how much more force it takes, as a share of the greatest force
   */
  public record RunnerUp(String zone, double margin) {
    /** Refuses what it cannot be. */
    public RunnerUp {
      Check.said("zone", zone);
      Check.finite("margin", margin, "");
    }
  }

  /**
   * Joint against base.
   *
   * @param left against the left base
   * @param right against the right base
   */
  public record Efficiency(double left, double right) {
    /** Refuses what it cannot be. */
    public Efficiency {
      Check.positive("efficiency", left, "");
      Check.positive("efficiency", right, "");
    }
  }
}
