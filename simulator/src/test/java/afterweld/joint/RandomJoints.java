package afterweld.joint;

import static afterweld.joint.Profiles.MM;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;

/** Joints for the laws. */
public class RandomJoints extends DomainContextBase {
  private static final String[] ZONES = {"base", "overaged", "weld", "annealed", "far base"};

  /** A joint whose strength only rises away from the weld centre, all of one hardening. */
  public record Softened(SliceLine line) {}

  /** Five zones of any strengths between two ends of base. */
  @Provide
  Arbitrary<SliceLine> anyJoint() {
    Arbitrary<SliceMetal> metal =
        Combinators.combine(number(40, 350), number(1.02, 2)).as(RandomJoints::metal);
    return Combinators.combine(
            metal.list().ofSize(5), number(2, 18).list().ofSize(3), number(1, 12))
        .as(RandomJoints::fiveZones);
  }

  /** A soft plateau with straight flanks, strengths all in one proportion. */
  @Provide
  Arbitrary<Softened> softened() {
    return Combinators.combine(
            number(100, 350), number(1.05, 2), number(0.3, 1), number(0, 15), number(1, 15))
        .as(
            (proof, ratio, softening, plateau, flank) ->
                new Softened(
                    Profiles.plateauAndRamp(
                        plateau,
                        plateau + flank,
                        3,
                        metal(softening * proof, ratio),
                        metal(proof, ratio),
                        0.5)));
  }

  private static Arbitrary<Double> number(double low, double high) {
    return Arbitraries.doubles().between(low, high).ofScale(4);
  }

  private static SliceMetal metal(double proof, double ratio) {
    return Profiles.metal(proof, ratio * proof);
  }

  private static SliceLine fiveZones(
      List<SliceMetal> metals, List<Double> widths, double thickness) {
    double[] faces = {-80, -widths.get(0) - widths.get(1), -widths.get(1), widths.get(1), 0, 80};
    faces[4] = widths.get(1) + widths.get(2);
    List<Slice> slices = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      slices.add(
          Slice.sound(faces[i] * MM, faces[i + 1] * MM, thickness * MM, ZONES[i], metals.get(i)));
    }
    return new SliceLine(slices).refined(1 * MM);
  }

  public static SliceLine mirrored(SliceLine line) {
    List<Slice> slices = new ArrayList<>();
    for (int i = line.slices().size() - 1; i >= 0; i--) {
      Slice s = line.slices().get(i);
      slices.add(new Slice(-s.to(), -s.from(), s.thickness(), s.zone(), s.metal(), s.lostArea()));
    }
    return new SliceLine(slices);
  }
}
