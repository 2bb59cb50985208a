/**
 * What a furnace and a bath do: the {@link afterweld.thermal.furnace.FurnaceStep}s of a heat
 * treatment and the temperature of the part through them.
 *
 * <p>A part is one lump ({@code LumpedPlate}): {@code d rho c dT/dt = -2 h (T - bath)}, with {@code
 * h} of the bath by surface temperature ({@code QuenchFilm}).
 *
 * <pre>{@code
 * List<TemperatureHistory> cooled =
 *     new FurnaceHistory(alloy, "T6", 0.006).of(List.of(solution, quench));
 * FurnaceHistory.coolingRate(cooled.get(1));   // K/s between 450 and 250 °C
 * }</pre>
 */
package afterweld.thermal.furnace;
