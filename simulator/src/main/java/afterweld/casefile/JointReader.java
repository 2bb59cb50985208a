package afterweld.casefile;

import afterweld.casefile.text.Node;
import afterweld.thermal.HeatFlow;
import afterweld.weld.Joint;
import afterweld.weld.Preparation;
import java.util.List;
import java.util.Optional;

/** Reads {@code joint}, {@code preparation} and {@code heat_flow}. */
final class JointReader {
  private static final Choices<Joint> JOINTS = Choices.of(List.of(Joint.values()), Joint::label);
  private static final Choices<Preparation> PREPARATIONS =
      Choices.of(List.of(Preparation.values()), Preparation::label);
  private static final Choices<HeatFlow> HEAT_FLOWS =
      Choices.of(List.of(HeatFlow.values()), HeatFlow::label);
  private static final String PREPARATION = "preparation";

  /** Plates are welded without a groove up to this thickness, m (common practice). */
  private static final double THICKEST_SQUARE = 4e-3;

  /** Plates are welded from one side up to this thickness, m (common practice). */
  private static final double THICKEST_V = 12e-3;

  private final Section top;
  private final Plates plates;
  private final Notes notes;

  JointReader(Section top, Plates plates, Notes notes) {
    this.top = top;
    this.plates = plates;
    this.notes = notes;
  }

  /** How the parts meet; a butt joint if the case does not say. */
  Joint joint() {
    return top.choice("joint", JOINTS).orElse(Joint.BUTT);
  }

  /** How the edges are prepared, given or by rule. */
  Preparation preparation(Joint joint) {
    Optional<Preparation> given = top.choice(PREPARATION, PREPARATIONS);
    boolean flat = joint == Joint.BUTT || joint == Joint.BEAD;
    if (flat && given.equals(Optional.of(Preparation.FILLET))) {
      top.fault(
          PREPARATION,
          "found 'fillet' with the joint '"
              + joint.label()
              + "'; expected square, single-v or double-v, or a lap, tee, corner or socket joint");
    }
    return given.orElseGet(() -> byRule(joint));
  }

  private Preparation byRule(Joint joint) {
    Preparation preparation = usual(joint);
    if (!top.has(PREPARATION) && joint != Joint.BEAD) {
      notes.add(
          "preparation-by-rule",
          "No preparation given: computed as "
              + preparation.label()
              + " (fillet for lap, tee and socket, and a corner with a fillet stated; else by the"
              + " thinner part square without filler and up to 4 mm (0.16"
              + " in), single-v to 12 mm (0.47 in), double-v above).");
    }
    return preparation;
  }

  private Preparation usual(Joint joint) {
    return switch (joint) {
      case LAP, TEE, SOCKET -> Preparation.FILLET;
      case CORNER -> top.has("fillet") ? Preparation.FILLET : byThickness(plates.thinnest());
      case BUTT, BEAD -> byThickness(plates.thinnest());
    };
  }

  private Preparation byThickness(double thickness) {
    if (withoutFiller() || !(thickness > THICKEST_SQUARE)) {
      return Preparation.SQUARE;
    }
    return thickness > THICKEST_V ? Preparation.DOUBLE_V : Preparation.SINGLE_V;
  }

  /** Nothing would fill a groove. */
  private boolean withoutFiller() {
    return top.node(FillerReader.FILLER).orElse(null) instanceof Node.Scalar scalar
        && scalar.text().equalsIgnoreCase(FillerReader.NONE);
  }

  /** The temperature field to use, if the case says. */
  Optional<HeatFlow> heatFlow() {
    return top.choice("heat_flow", HEAT_FLOWS);
  }
}
