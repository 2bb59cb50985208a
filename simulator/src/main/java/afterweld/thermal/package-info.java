/**
 * What welding and a furnace do to the temperature of the metal: the heat of a pass, the field it
 * makes in plates and joints, the thermal cycles of stations, the steps of a heat treatment. SI
 * units and kelvin.
 *
 * <p>A weld is a set of {@linkplain afterweld.thermal.WeldLegs legs} that lead its heat away.
 * {@link afterweld.thermal.HeatInput} finds how much of the arc's power enters them, from the width
 * of the bead if somebody measured it. {@link afterweld.thermal.PlateField} is the temperature that
 * one pass makes in one leg, {@link afterweld.thermal.WeldTimeline} what a station goes through in
 * all passes. A butt in 3 mm 6061-T6, 110 A and 14 V at 3 mm/s, its bead 8 mm wide:
 *
 * <pre>{@code
 * WeldLegs butt = WeldLegs.plate(3e-3, ConductionMaterial.of(alloy, "T6"));
 * SurfaceLoss air = SurfaceLoss.stillAir(293.15);
 * PassHeat heat = HeatInput.into(butt, air).of(pass);
 * heat.efficiency();                                      // 0.61
 * PlateField field = PlateField.of(butt, 1, heat, air, 1.5e-3);
 * field.isotherm(573.15);                                 // 300 °C reaches 22.7e-3 m
 * WeldTimeline timeline = WeldTimeline.of(butt, 1, List.of(heat), air, 1.5e-3);
 * StationHistory station = timeline.at(12e-3);            // 12 mm to the right
 * station.peakTemperature();                              // 688.8 K
 * station.history();                                      // some 45 points, down to 25 °C
 * }</pre>
 *
 * <p>On small parts the heat builds up: round a tube, along narrow strips, between passes that
 * follow soon. {@link afterweld.thermal.shell.HeatFlowRule} says when, and {@link
 * afterweld.thermal.shell.ShellSolver} follows such a weld in time. Both fields give their stations
 * through {@link afterweld.thermal.StationTimeline}:
 *
 * <pre>{@code
 * WeldCourse course = WeldCourse.ring(0.19, WeldCourse.Place.END);
 * ShellWeld weld = ShellSolver.of(tube, air, course).weld(List.of(pass));
 * weld.timeline(1, 1.5e-3).at(12e-3).peakTemperature();
 * weld.peaks().profile(1, WeldCourse.Place.MIDDLE);     // K across the second leg
 * }</pre>
 *
 * <p>How the parts hang together: {@code MovingSource} is the field of one watt, with {@code
 * ScaledBessel} for its terms and {@code PlateEdges} for the ends of narrow plates. {@link
 * afterweld.thermal.ConductionMaterial} turns it into temperature through the {@link
 * afterweld.thermal.HeatPotential}, in which conduction stays linear although the conductivity
 * changes. {@code MissingHeat} takes off the heat of fusion beside the pool, {@code LegCorrection}
 * what unequal legs do. {@code StationPass} is one pass at one place, and {@code ChordCut} cuts its
 * cycle into straight pieces.
 *
 * <p>In the transient field {@code ShellGrid} and {@code ShellLines} are the net, {@code
 * ShellField} and {@code ShellSweep} make a step, {@code ShellSource} puts the heat in, {@code
 * ShellRun} goes through time, {@code ShellProcedure} through the passes. {@code ShellLocalRise}
 * adds what differs with depth near the arc, {@code ShellTimeline} reads the stations off.
 *
 * <p>{@link afterweld.thermal.furnace.FurnaceHistory} does the same for the steps after welding.
 *
 * <p>Known limits: no weave, backing bar or clamp; the arc's two sides alike; the steady field is
 * for long welds, the transient one for a constant current. Only 6061 was compared with fields of
 * variable properties: peaks from 200 to 585 °C within 3 K rms and 8 K at most, at equal width of
 * the bead.
 */
package afterweld.thermal;
