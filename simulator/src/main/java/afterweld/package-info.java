/**
 * The simulator as a library: {@link afterweld.Afterweld} reads a case and opens a {@link
 * afterweld.CaseSession} on it, which is asked everything else. The commands ask the same session,
 * so that a program and a person get one answer.
 *
 * <pre>{@code
 * Afterweld afterweld = Afterweld.of(MaterialLibrary.standard());
 * CaseFile bracket = afterweld.read("bracket.yaml", content).caseFile().orElseThrow();
 * CaseSession session = afterweld.session(bracket);          // NotAWeldException
 * Judgement judgement = session.judgement(UnitSystem.METRIC);
 * String json = session.profileJson();                       // as 'afterweld profile --json'
 * }</pre>
 */
package afterweld;
