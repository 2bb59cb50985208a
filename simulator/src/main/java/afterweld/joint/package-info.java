/**
 * What a joint with a softened zone does under load: from strengths along a line across the weld to
 * the readings of a tension test, the shape of a bent strip, the force of a welded member, a tube
 * or a fillet. SI units throughout: m, Pa, N, rad; forces of a line are per metre of width.
 *
 * <p>Tour: a {@link afterweld.joint.SliceLine} cuts the line into slices of one metal each ({@link
 * afterweld.joint.SliceMetal}), whose {@link afterweld.joint.PowerLaw} follows from proof and
 * tensile strength. {@link afterweld.joint.CrossWeldTension} puts the slices in series, {@link
 * afterweld.joint.WeldedMember} in parallel, {@link afterweld.joint.bend.StripBend} bends them.
 * {@link afterweld.joint.ThinCylinder}, {@link afterweld.joint.FilletWeld} and {@link
 * afterweld.joint.bend.GuidedBend} are closed formulae; {@link afterweld.joint.MemberCode} has code
 * values that stand beside predicted ones. {@link afterweld.joint.JointReport} and {@link
 * afterweld.joint.bend.BendReport} put all of it to a computed profile, state by state.
 *
 * <p>Worked example: 20 mm of metal with 115 / 186 MPa (proof / tensile) between a base of 276 /
 * 310 MPa, pulled over 50 mm. The joint breaks at 186 MPa, 60 % of the base. Its proof stress reads
 * 127 MPa rather than 115, because only 40 % of the gauge yields; and the elongation at the
 * greatest force reads 7.5 %, though the soft metal itself has stretched by 18 %. Over 100 mm both
 * readings change, so a gauge length belongs to each.
 *
 * <pre>
 * SliceLine line = new SliceLine(List.of(
 *     Slice.sound(-0.05, -0.01, 0.006, "base", new SliceMetal(276e6, 310e6)),
 *     Slice.sound(-0.01, 0.01, 0.006, "annealed", new SliceMetal(115e6, 186e6)),
 *     Slice.sound(0.01, 0.05, 0.006, "base", new SliceMetal(276e6, 310e6))));
 * CrossWeldTension result = CrossWeldTension.pull(line, TensionCoupon.DEFAULT);
 * </pre>
 *
 * <p>Not covered: cracks, fatigue, buckling, fast loading, temperatures above 100 °C, thick walls.
 * Estimates for sound metal: the qualified procedure, the coupon and the governing code decide.
 */
package afterweld.joint;
