/**
 * Bending: where a strip across the weld curves most when it is bent, and what former a guided bend
 * takes.
 *
 * <p>Each slice follows its own moment against curvature ({@code BendSection}); under one moment
 * the softest curves most ({@link afterweld.joint.bend.StripBend}). {@link
 * afterweld.joint.bend.GuidedBend} is the closed formula for a former, {@link
 * afterweld.joint.bend.BendTest} what the test standards ask, {@link
 * afterweld.joint.bend.BendReport} puts them to a computed profile.
 *
 * <pre>{@code
 * GuidedBend.outerStrain(0.006, 0.024);   // 0.2: outer fibre of 6 mm round a former of 4 t
 * }</pre>
 */
package afterweld.joint.bend;
