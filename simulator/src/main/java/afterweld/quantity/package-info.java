/**
 * What a number of a case or a result can be: values check themselves where they are made, so that
 * whoever gets one need not ask again.
 *
 * <pre>{@code
 * Check.positive("thickness", -0.003, "m");
 *   // IllegalArgumentException: thickness -0.003 m: must be above 0 and finite
 * }</pre>
 */
package afterweld.quantity;
