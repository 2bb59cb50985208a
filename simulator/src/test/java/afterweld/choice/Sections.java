package afterweld.choice;

import afterweld.material.Alloy;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.material.Source;
import afterweld.material.Status;
import afterweld.material.Temper;
import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import afterweld.section.Softening;
import afterweld.section.Station;
import afterweld.section.Zone;
import afterweld.section.soundness.Soundness;
import afterweld.strength.Strength;
import afterweld.thermal.Pass;
import afterweld.thermal.WeldingProcess;
import afterweld.weld.FillerChoice;
import afterweld.weld.Joint;
import afterweld.weld.Preparation;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.WeldMetal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;

/** Hand-made sections for tests: stations every half millimetre over 20 mm on either side. */
final class Sections {
  static final double MPA = 1e6;
  static final double MM = 1e-3;

  private Sections() {}

  /** A band of 10 % around a yield in MPa; tensile 1.2 times, hardness 0.4 HV per MPa. */
  static Estimate band(double yield) {
    Strength middle = new Strength(yield * MPA, 1.2 * yield * MPA, 0.4 * yield);
    return new Estimate(middle, middle.times(0.9), middle.times(1.1));
  }

  /** A section of 4 mm plate welded without filler; its last state is given by distance in mm. */
  static SectionProfile of(DoubleFunction<Estimate> lastState) {
    return of(lastState, Map.of(Element.MG, 0.4, Element.SI, 3.4));
  }

  static SectionProfile of(DoubleFunction<Estimate> lastState, Map<Element, Double> weldMetal) {
    List<Station> stations =
        IntStream.rangeClosed(-40, 40).mapToObj(i -> station(i * 0.5, lastState)).toList();
    Composition metal = Composition.of(weldMetal);
    return new SectionProfile(
        weldCase(),
        Soundness.SOUND,
        List.of("before welding", "as welded"),
        stations,
        List.of(stations),
        List.of(),
        new WeldMetal("none", 1, 1, 1, metal, 850),
        List.of(),
        List.of(),
        Softening.both(520),
        List.of(),
        List.of());
  }

  private static Station station(double mm, DoubleFunction<Estimate> lastState) {
    Station.Place place = mm < 0 ? Station.Place.LEFT : Station.Place.RIGHT;
    List<Estimate> estimates = List.of(band(276), lastState.apply(mm));
    return new Station(mm * MM, place, Zone.BASE, 400, estimates);
  }

  private static WeldCase weldCase() {
    Composition base = Composition.of(Map.of(Element.MG, 1.0, Element.SI, 0.6));
    Source source = new Source("made by hand", Status.ASSUMED);
    Alloy alloy =
        new Alloy(
            "6061",
            Alloy.Family.WROUGHT_HEAT_TREATABLE,
            List.of(Alloy.Use.BASE),
            base,
            Map.of(),
            855,
            925,
            2700,
            380e3,
            Map.of("all", 167.0),
            4e-4,
            List.of(),
            Optional.empty(),
            List.of());
    Temper temper = new Temper("T6", Optional.empty(), Optional.empty(), source);
    Side side = new Side(alloy, temper, 4 * MM, OptionalDouble.empty(), base);
    OptionalDouble none = OptionalDouble.empty();
    Pass pass = new Pass(WeldingProcess.GTAW_AC, 120, 14, 0.003, 293, none, none, none, 0, none);
    return WeldCase.of(side, side)
        .title("hand-made")
        .joint(Joint.BEAD, Preparation.SQUARE)
        .filler(new FillerChoice(Optional.empty(), 1, 1, 1, true, 0.5))
        .passes(List.of(pass))
        .reinforcement(0)
        .ambient(293)
        .depth(2 * MM)
        .naturalAge(0)
        .done();
  }
}
