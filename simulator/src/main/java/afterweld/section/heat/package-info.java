/**
 * The heat of a case: which field its passes make, how deep they fuse the preparation and what
 * melts away. {@code CaseHeat} chooses the field and keeps it, {@code Groove} and {@code
 * RootFusion} hold the bead against the preparation by areas, {@code MeltDown} the molten width
 * against the metal there is.
 *
 * <pre>
 * groove filled = deposit / groove area,   fused through = penetration + root face >= thickness
 * </pre>
 */
package afterweld.section.heat;
