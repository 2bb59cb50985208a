/**
 * Whether a joint may be called one at all: fused through, filled, not melted down, warm on both
 * sides. One rule, {@code SoundnessRule}, answers with a {@link
 * afterweld.section.soundness.Soundness} that every command takes as it is; of a joint that is not
 * sound no strength is claimed. {@code SoundnessRemedies} tries what would help.
 *
 * <pre>{@code
 * Soundness soundness = profile.soundness();
 * if (!soundness.sound()) {
 *   show(soundness.note());   // why, and what would help
 * }
 * }</pre>
 */
package afterweld.section.soundness;
