/**
 * What is asked of a joint and what an answer looks like: the {@link
 * afterweld.choice.answer.Requirement}, the five words of a {@link afterweld.choice.answer.Verdict}
 * and the {@link afterweld.choice.answer.Objection}s that stand against doing it.
 *
 * <pre>{@code
 * Verdict.of(0.97);   // MET: from 95 %; LIKELY from 80, OPEN from 20, UNLIKELY from 5
 * }</pre>
 */
package afterweld.choice.answer;
