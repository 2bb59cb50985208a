package afterweld.section.heat;

import afterweld.quantity.Check;
import afterweld.weld.Joint;
import afterweld.weld.Preparation;
import afterweld.weld.WeldCase;

/**
 * The prepared edges of a butt or a corner as they are usual where a case gives no more than the
 * kind of preparation; a bead and a fillet have none. SI units.
 *
 * <pre>
 * square     gap 0 (tungsten arc) or 1 mm (metal arc); its root face is the whole thickness
 * single-v   60 degrees, root face 1.5 mm, gap 1.5 mm, 2 mm from 10 mm on
 * double-v   60 degrees from either side, root face 2 mm, gap 2 mm
 * area = gap thickness + tan 30° (depth of the face² + depth of the back²)
 * </pre>
 *
 * <p>Source: common practice; the ranges of ISO 9692-3 from memory (V from 3 to 15 mm, gap and face
 * up to 3 and 2 mm). In thinner plates than usual the root face is at most half the thickness.
 *
 * @param preparation kind, not a fillet
 * @param thickness of the thinner part, m
 * @param rootFace unprepared edge, m: what a pool must melt down through
 * @param area of the open groove, m²
 */
public record Groove(Preparation preparation, double thickness, double rootFace, double area) {
  private static final double MM = 1e-3;
  private static final double WIDER_GAP_FROM = 10 * MM;
  private static final double TAN_OF_HALF_ANGLE = Math.tan(Math.toRadians(30));

  /** Refuses what it cannot be. */
  public Groove {
    Check.positive("thickness", thickness, "m");
    Check.within("root face", rootFace, 0, thickness, "m");
    Check.notNegative("area", area, "m²");
  }

  /** The usual groove of a case. */
  public static Groove of(WeldCase weldCase) {
    double thickness = Math.min(weldCase.left().thickness(), weldCase.right().thickness());
    boolean tungsten = weldCase.passes().get(0).process().tungstenArc();
    Preparation preparation =
        weldCase.joint() == Joint.BEAD ? Preparation.SQUARE : weldCase.preparation();
    return switch (preparation) {
      case SINGLE_V -> singleV(thickness);
      case DOUBLE_V -> doubleV(thickness);
      case SQUARE, FILLET ->
          new Groove(Preparation.SQUARE, thickness, thickness, tungsten ? 0 : MM * thickness);
    };
  }

  private static Groove singleV(double thickness) {
    double face = Math.min(1.5 * MM, thickness / 2);
    double gap = thickness < WIDER_GAP_FROM ? 1.5 * MM : 2 * MM;
    double deep = thickness - face;
    return new Groove(
        Preparation.SINGLE_V, thickness, face, gap * thickness + TAN_OF_HALF_ANGLE * deep * deep);
  }

  private static Groove doubleV(double thickness) {
    double face = Math.min(2 * MM, thickness / 2);
    double deep = (thickness - face) / 2;
    return new Groove(
        Preparation.DOUBLE_V,
        thickness,
        face,
        2 * MM * thickness + 2 * TAN_OF_HALF_ANGLE * deep * deep);
  }

  /** Whether metal has to be laid into it. */
  public boolean open() {
    return preparation != Preparation.SQUARE;
  }
}
