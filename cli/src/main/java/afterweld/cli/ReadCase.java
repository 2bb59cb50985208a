package afterweld.cli;

import afterweld.casefile.CaseFile;
import java.util.function.BinaryOperator;

/**
 * A case without faults, and a way to say where in its file something that shows up later stands.
 *
 * @param caseFile the case
 * @param placed from a key's pointer, such as {@code /passes/0/bead_width}, and a message to that
 *     message with file, line and column before it
 */
record ReadCase(CaseFile caseFile, BinaryOperator<String> placed) {}
