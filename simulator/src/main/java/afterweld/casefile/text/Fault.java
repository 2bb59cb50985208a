package afterweld.casefile.text;

/**
 * Something wrong in an input file.
 *
 * @param file name of the file as the user gave it
 * @param line from 1
 * @param column from 1
 * @param message what was found, what was expected with unit and range, and the nearest known name
 */
public record Fault(String file, int line, int column, String message) {
  /** {@code file:line:column: message}. */
  @Override
  public String toString() {
    return file + ":" + line + ":" + column + ": " + message;
  }
}
