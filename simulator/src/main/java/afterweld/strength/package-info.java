/**
 * From the state of the metal to what a test would read: yield and tensile strength in Pa, hardness
 * in HV, and other hardness scales at the border.
 *
 * <p>For 6061-T6 as computed in {@code afterweld.metallurgy}:
 *
 * <pre>{@code
 * Strength strength = PrecipitateStrength.of(state);
 * strength.yield();                                       // 278e6 Pa
 * strength.hardness();                                    // 109 HV
 * PrecipitateStrength.breakdown(state).precipitates();    // 232e6 Pa of the yield strength
 * HardnessScale.brinell(strength.hardness()).value();     // 93 HB 500 kgf, 10 mm ball
 * }</pre>
 */
package afterweld.strength;
