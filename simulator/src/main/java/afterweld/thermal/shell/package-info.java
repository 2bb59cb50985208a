/**
 * The heat of a weld on a small part, followed in time: rings, seams, strips and passes that follow
 * soon. The walls are thin, so that the temperature varies along and across them and not through
 * them.
 *
 * <pre>
 * c dT/dt = div(k d grad T) + arc - losses at both faces        per area of wall of thickness d
 * </pre>
 *
 * <p>{@link afterweld.thermal.shell.HeatFlowRule} says when a weld needs it. {@link
 * afterweld.thermal.shell.ShellSolver} makes the net ({@code ShellGrid}), goes through the passes
 * ({@code ShellProcedure}) and through time ({@code ShellRun}); a step is solved line by line
 * ({@code ShellSweep}). {@code ShellLocalRise} adds what differs with depth near the arc and {@link
 * afterweld.thermal.shell.ShellTimeline} reads the stations off. {@link
 * afterweld.thermal.shell.ShellVariants} stands in for welds that differ a little.
 *
 * <pre>{@code
 * ShellWeld weld = ShellSolver.of(tube, air, course).weld(List.of(pass));
 * weld.timeline(1, 1.5e-3).at(12e-3).peakTemperature();   // K
 * }</pre>
 */
package afterweld.thermal.shell;
