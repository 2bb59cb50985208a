/**
 * What metal is made of and what the trade knows about it: elements, compositions, alloys, tempers
 * and fillers, and the {@linkplain afterweld.material.MaterialLibrary library} of them.
 *
 * <p>Inside, everything is in SI units and kelvin; composition alone stays in weight percent, the
 * unit of every certificate. The numbers stand in CSV files beside the classes, one value a line
 * with its unit, its source and how well that source supports it ({@link
 * afterweld.material.Status}):
 *
 * <pre>
 * alloy,property,qualifier,value,unit,source,status
 * 6061,solidus,,582,°C,"supplier's data page ...",read
 * 6061,recipe,T4,dissolved at 530 °C; hold 1 h; 300 K/s to 25 °C; hold 30 d,,"...",common practice
 * </pre>
 *
 * <p>{@code alloys.csv} names the alloys and gives their order; {@code composition.csv} holds
 * limits, nominal values and the composition that the simulator computes with; {@code thermal.csv}
 * melting range, density, heat of fusion and conductivity; {@code tempers.csv} how each temper is
 * made and its handbook strength; {@code schedules.csv} the heat treatment that makes T6; {@code
 * filler_selection.csv} what the filler guides say; {@code design_codes.csv} strengths that design
 * codes allow at welds.
 *
 * <p>A worked example: 6061 welded with 4043 at 40 % dilution makes weld metal with 0.41 % Mg.
 *
 * <pre>{@code
 * MaterialLibrary library = MaterialLibrary.standard();
 * Alloy base = library.base("AA6061").orElseThrow();
 * Alloy filler = library.filler("ER4043").orElseThrow();
 * Composition weld = base.composition().mixedWith(filler.composition(), 0.4);
 * weld.of(Element.MG);                                   // 0.4 x 1.00 + 0.6 x 0.02 = 0.412 wt%
 * base.temper("T651").orElseThrow().recipe();            // solution, quench, 175 °C 8 h
 * library.guidance("6061", "4043").orElseThrow().response(); // WITH_DILUTION
 * }</pre>
 */
package afterweld.material;
