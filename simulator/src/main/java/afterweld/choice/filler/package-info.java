/**
 * Which filler suits: {@link afterweld.choice.filler.UsualFillers} by the filler guides' table of
 * pairs, {@link afterweld.choice.filler.FillerComparison} by what each weld metal would be at this
 * dilution, before and after heat treatment. What speaks against one stands once, in {@code
 * UsualFillers.against}, for every command.
 *
 * <pre>{@code
 * UsualFillers.of(weldCase).suitable(FillerPurpose.WELDED);   // 5356, 5183, 5556 on 5083
 * }</pre>
 */
package afterweld.choice.filler;
