/**
 * Whether a heat treatment is one that a furnace shop should do: the order of its steps ({@code
 * StepOrder}), its temperatures, times, delays and baths ({@code FurnaceObjections} within {@code
 * FurnaceLimits}), what it does to an unlike pair ({@code SharedTreatment}).
 *
 * <pre>{@code
 * ScheduleCheck.of(weldCase, requirement);   // one list of objections, for every command
 * }</pre>
 */
package afterweld.choice.schedule;
