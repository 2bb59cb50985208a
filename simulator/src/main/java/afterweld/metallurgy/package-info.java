/**
 * What heat does inside the metal: precipitates that dissolve, coarsen and form again, clusters of
 * natural ageing, eutectic silicon. SI units and kelvin; composition in weight percent.
 *
 * <p>A {@link afterweld.metallurgy.Metallurgy} makes an immutable {@link
 * afterweld.metallurgy.State} and carries it along temperature histories. {@link
 * afterweld.metallurgy.PrecipitationModel} does so for heat-treatable base metal, castings and weld
 * metal. For instance 6061 through solution treatment, quench, a day on the shelf and eight hours
 * at 175 °C:
 *
 * <pre>{@code
 * PrecipitationModel metal = PrecipitationModel.wrought(composition);
 * TemperatureHistory t6 =
 *     TemperatureHistory.hold(803.15, 3600)   // 530 °C for an hour
 *         .thenTo(298.15, 1.7)                // water quench to 25 °C
 *         .thenTo(298.15, 86400)              // one day
 *         .thenTo(448.15, 300)                // up to 175 °C
 *         .thenTo(448.15, 8 * 3600)           // eight hours
 *         .thenTo(298.15, 75);                // cooled in air
 * PrecipitateState state = metal.follow(t6);
 * state.meanNeedleRadius();                   // 4.0e-9 m
 * PrecipitateState welded = metal.advance(state, cycle);   // and on from there
 * }</pre>
 *
 * <p>How the parts hang together: {@code SoluteBudget} says what a composition can give, {@code
 * Solvus} and {@code Diffusion} what temperature does to it. {@code NeedlePopulation} (β″, in
 * classes of size) and {@code CoarsePopulations} (β′ and β, one mean size each) share one matrix;
 * {@code MassBalance} finds the matrix after each step of time and {@code StepControl} the length
 * of the step. {@code Clusters}, {@code SiliconPhase} and {@code Spheroidisation} follow. {@code
 * Precipitation} marches them all. Every constant stands in {@link
 * afterweld.metallurgy.PrecipitationParameters}.
 *
 * <p>Known limits: the strength after ageing without solution treatment is the least certain at the
 * bottom of the softened zone (375 to 450 °C peak), where finer classes or steps shift it by 3 to 5
 * %; onset of softening comes about 30 K late; natural ageing does not remember the quench.
 */
package afterweld.metallurgy;
