/**
 * The decisions that a section profile allows, each with its reasons.
 *
 * <p>Everything here takes results and returns values; nothing is computed again. A decision never
 * hides a doubt: what the error band does not settle is {@link
 * afterweld.choice.answer.Verdict#OPEN}, and a test coupon decides.
 *
 * <p>Example: a drawing asks for 28 ksi yield (193 MPa). The weakest place after heat treatment is
 * predicted at 236 MPa with a band of 15 %, so the low end is 201 MPa:
 *
 * <pre>{@code
 * Judgement judgement =
 *     RequirementCheck.of(profile, joint, requirement).judgement(UnitSystem.METRIC);
 * judgement.verdict(); // MET, since 201 is not below 193
 * judgement.reasons(); // "Yield strength: 193 MPa asked, 236 MPa predicted, low end 201 MPa: met."
 * }</pre>
 */
package afterweld.choice;
