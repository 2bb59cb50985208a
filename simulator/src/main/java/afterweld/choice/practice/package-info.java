/**
 * What the trade does: the standard heat treatment of each alloy ({@link
 * afterweld.choice.practice.StandardTreatment}), where and how long it ages ({@link
 * afterweld.choice.practice.AgeingTime}) and the figures a furnace shop works by ({@link
 * afterweld.choice.practice.FurnacePractice}), each with its source in the tables beside the
 * classes.
 *
 * <pre>{@code
 * AgeingTime.least(false, 177);   // 4 h in s: wrought metal at 177 °C
 * }</pre>
 */
package afterweld.choice.practice;
