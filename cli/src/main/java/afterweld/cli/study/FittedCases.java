package afterweld.cli.study;

import java.util.List;
import java.util.OptionalDouble;

/** Writes the text of a case with fitted efficiencies and their spread in it and remarks on top. */
@FunctionalInterface
public interface FittedCases {
  /**
   * The new text.
   *
   * @param fileName name of the case as the user gave it
   * @param content the case as read without faults
   * @param efficiencies one for each pass
   * @param half half-width of the efficiency's 95 % interval, relative; empty if nobody should go
   *     by it
   * @param remarks what the fit found that no key holds
   */
  String of(
      String fileName,
      byte[] content,
      List<Double> efficiencies,
      OptionalDouble half,
      List<String> remarks);
}
