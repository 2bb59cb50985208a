/**
 * What the commands that read a case share: its options, the desk that reads, computes, prints and
 * writes, and the notices that stand with every answer.
 *
 * <pre>{@code
 * new CaseDesk(streams, cases).run(options, read -> answer(read));   // the status
 * }</pre>
 */
package afterweld.cli.command;
