package afterweld.joint.bend;

import afterweld.joint.JointSettings.BendLoad;
import afterweld.joint.JointSettings.BendSettings;
import afterweld.joint.SliceLine;
import afterweld.joint.bend.BentState.EvenStretch;

/**
 * The part of a guided bend's specimen that lies round the former, {@code π/2 (D + t)} long for
 * former diameter D and specimen thickness t, bent by 180 degrees. Wrapped round it every metal
 * gets the same radius; under a plunger it is taken to bend as under end couples, so the soft metal
 * takes more than its share (model definition). It is the same for every length of strip that is
 * bent otherwise.
 *
 * @param asked outer strain that the test asks on average
 * @param least the least that any metal round the former stretches evenly
 * @param sharpest what the metal at the sharpest place under a plunger stretches evenly
 * @param kink how many times its share that place takes, at least 1
 */
record SpecimenBend(double asked, EvenStretch least, EvenStretch sharpest, double kink) {
  /**
   * Bends a specimen.
   *
   * @param line across the weld, dressed flush
   * @param plate thickness of the plate, m
   */
  static SpecimenBend of(BendTest test, SliceLine line, double plate) {
    double thickness = test.specimenThickness(plate);
    double arc = Math.PI / 2 * (test.formerDiameter(plate) + thickness);
    SliceLine specimen = line.cutTo(thickness).over(arc);
    BendSettings bent =
        new BendSettings(Math.PI, arc, BendSettings.DEFAULT.width(), BendLoad.COUPLES);
    BendCoupon coupon = BendCoupon.of(bent);
    StripBend plunged = StripBend.whole(specimen, coupon);
    return new SpecimenBend(
        test.strain(plate),
        EvenStretch.least(specimen, coupon.modulus()),
        EvenStretch.sharpest(specimen, plunged, coupon.modulus()),
        Math.max(1, plunged.averagedKinkFactor()));
  }
}
