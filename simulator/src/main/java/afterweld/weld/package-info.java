/**
 * A weld as somebody would make it: the parts, how they meet, the filler, the passes and what
 * follows. SI units and kelvin.
 *
 * <p>A {@link afterweld.weld.WeldCase} holds all of it and every other package starts from one. Its
 * {@link afterweld.weld.Side}s are the parts, {@link afterweld.weld.Joint} and {@link
 * afterweld.weld.Preparation} how they meet, {@link afterweld.weld.Ring} or {@link
 * afterweld.weld.Seam} where the weld ends; {@link afterweld.weld.FillerChoice} is what goes into
 * it. A {@link afterweld.weld.Warning} is a limit of validity that travels with a result.
 *
 * <pre>{@code
 * Side plate = new Side(alloy, temper, 0.006, OptionalDouble.empty(), alloy.composition());
 * plate.alloy().heatTreatable();   // true for 6061
 * }</pre>
 */
package afterweld.weld;
