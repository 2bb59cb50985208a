/**
 * What the pool is made of and whether it cracks: base metal mixed with filler by the dilution, in
 * weight percent.
 *
 * <pre>
 * weld metal = dilution * (share * left + (1 - share) * right) + (1 - dilution) * filler
 * </pre>
 *
 * <p>{@link afterweld.weldmetal.PoolMetals} holds the three metals, {@link
 * afterweld.weldmetal.WeldMetal} what they make; {@link afterweld.weldmetal.CrackTendency} judges
 * the mixture by the crack-prone ranges of the binary metals, {@link
 * afterweld.weldmetal.BrittleMix} by silicon filler on much magnesium. {@link
 * afterweld.weldmetal.FurnaceMargin} says how hot it may go.
 */
package afterweld.weldmetal;
