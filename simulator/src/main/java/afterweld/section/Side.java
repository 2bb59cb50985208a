package afterweld.section;

import afterweld.material.Alloy;
import afterweld.material.Composition;
import afterweld.material.Temper;
import java.util.OptionalDouble;

/**
 * One of the two parts that are joined.
 *
 * @param alloy library alloy
 * @param temper temper at welding
 * @param thickness m
 * @param width leg length from the weld centre, m; empty means wide
 * @param composition composition used: the library's, with what a certificate overrides
 */
public record Side(
    Alloy alloy, Temper temper, double thickness, OptionalDouble width, Composition composition) {}
