package afterweld.joint;

import afterweld.quantity.Check;
import java.util.Optional;

/**
 * What the joint is judged on beside its profile. SI units.
 *
 * @param gauge gauge length of the cross-weld tension test, m
 * @param bend strip and bend
 * @param fillet fillet to check, if any
 * @param tube tube under pressure, if any
 * @param member flat member with the weld along it, if any
 */
public record JointSettings(
    double gauge,
    BendSettings bend,
    Optional<Fillet> fillet,
    Optional<Tube> tube,
    Optional<Member> member) {
  /** Refuses what it cannot be. */
  public JointSettings {
    Check.positive("gauge", gauge, "m");
  }

  /** A 50 mm gauge, a strip of 150 by 25 mm bent by 90 degrees, no fillet and no tube. */
  public static final JointSettings DEFAULT =
      new JointSettings(0.050, BendSettings.DEFAULT, Optional.empty(), Optional.empty());

  /** Settings without a member. */
  public JointSettings(
      double gauge, BendSettings bend, Optional<Fillet> fillet, Optional<Tube> tube) {
    this(gauge, bend, fillet, tube, Optional.empty());
  }

  /**
   * A strip across the weld in a bend.
   *
   * @param angle total angle under load, rad
   * @param length of the strip, m
   * @param width of the strip, m
   * @param load how it is bent
   */
  public record BendSettings(double angle, double length, double width, BendLoad load) {
    /** Refuses what it cannot be. */
    public BendSettings {
      Check.within("bend angle", angle, 0, Math.PI, "rad");
      Check.positive("strip length", length, "m");
      Check.positive("strip width", width, "m");
    }

    /** 90 degrees, 150 by 25 mm, end couples. */
    public static final BendSettings DEFAULT =
        new BendSettings(Math.PI / 2, 0.150, 0.025, BendLoad.COUPLES);
  }

  /** How a strip is bent. */
  public enum BendLoad {
    COUPLES("couples"),
    EDGE("edge");

    private final String label;

    BendLoad(String label) {
      this.label = label;
    }

    /** The name used in case files. */
    public String label() {
      return label;
    }
  }

  /**
   * A fillet weld to check.
   *
   * @param leg m
   * @param secondLeg m, equal to {@code leg} unless given
   * @param length m
   * @param load along or across the weld
   * @param sides whether the other side of the part has one like it; empty if nobody says
   */
  public record Fillet(
      double leg, double secondLeg, double length, FilletLoad load, Optional<FilletSides> sides) {
    /** Refuses what it cannot be. */
    public Fillet {
      Check.positive("leg", leg, "m");
      Check.positive("second leg", secondLeg, "m");
      Check.positive("fillet length", length, "m");
    }

    /** Nobody says whether the other side has one. */
    public Fillet(double leg, double secondLeg, double length, FilletLoad load) {
      this(leg, secondLeg, length, load, Optional.empty());
    }

    /** The same, said to be on one side or on both. */
    public Fillet on(FilletSides where) {
      return new Fillet(leg, secondLeg, length, load, Optional.of(where));
    }
  }

  /** Where a part has its fillets. */
  public enum FilletSides {
    ONE("one"),
    BOTH("both");

    private final String label;

    FilletSides(String label) {
      this.label = label;
    }

    /** The name used in case files. */
    public String label() {
      return label;
    }
  }

  /** Direction of the load on a fillet. */
  public enum FilletLoad {
    ALONG("along"),
    ACROSS("across");

    private final String label;

    FilletLoad(String label) {
      this.label = label;
    }

    /** The name used in case files. */
    public String label() {
      return label;
    }
  }

  /**
   * A tube under pressure, for information only.
   *
   * @param diameter m
   * @param pressure Pa
   */
  public record Tube(double diameter, double pressure) {
    /** Refuses what it cannot be. */
    public Tube {
      Check.positive("tube diameter", diameter, "m");
      Check.notNegative("pressure", pressure, "Pa");
    }
  }

  /**
   * A flat member pulled along the weld in its middle.
   *
   * @param width of the whole plate, m
   */
  public record Member(double width) {
    /** Refuses what it cannot be. */
    public Member {
      Check.positive("member width", width, "m");
    }
  }
}
