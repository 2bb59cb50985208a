package afterweld.joint.bend;

import afterweld.material.Element;
import afterweld.section.SectionProfile;
import java.util.Optional;

/**
 * Metal of which is not said how far it stretches. The law of ductile metal ends where a test piece
 * necks; these break long before.
 *
 * <ul>
 *   <li>Castings break at pores, films and eutectic silicon: sound A356-T6 at 3 to 10 % (handbooks,
 *       from memory).
 *   <li>Weld metal of more than 2 % silicon, as of every 4xxx filler at the usual dilution, freezes
 *       with a network of eutectic silicon between its dendrites (common practice). All-weld
 *       specimens of 4043 break at about 8 % (from memory) where the law says 17, and the codes
 *       bend such welds round a former of 16.5 thicknesses. That a furnace rounds the silicon is
 *       not counted on.
 * </ul>
 */
enum UnknownStretch {
  CASTING("how far a casting stretches is not predicted, its pores decide"),
  SILICON(
      "how far weld metal with more than 2 % silicon stretches is not predicted, it breaks along the"
          + " network of brittle silicon between its dendrites before it necks");

  private static final double MUCH_SILICON = 2.0;
  private static final int BEFORE = 0;

  private final String reason;

  UnknownStretch(String reason) {
    this.reason = reason;
  }

  /** Why nothing is said in a state; before welding there is no weld metal. */
  static Optional<UnknownStretch> of(SectionProfile profile, int state) {
    if (profile.weldCase().hasCasting()) {
      return Optional.of(CASTING);
    }
    boolean silicon = profile.weldMetal().composition().of(Element.SI) > MUCH_SILICON;
    return silicon && state > BEFORE ? Optional.of(SILICON) : Optional.empty();
  }

  /** The reason, to stand in a sentence. */
  String reason() {
    return reason;
  }
}
