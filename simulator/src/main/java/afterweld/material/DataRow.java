package afterweld.material;

/**
 * One line of a data file: one value of one alloy (or of one pair of base and filler), with its
 * unit, source and status, all as written.
 *
 * @param alloy alloy, or base of a pair
 * @param property what is stated, such as {@code solidus}
 * @param qualifier what it is stated for, such as an element, a temper or a filler; empty if
 *     nothing
 * @param value number or name
 * @param unit unit of a number; empty for a name
 * @param source where it comes from
 * @param status one of the words of {@link Status}
 */
record DataRow(
    String alloy,
    String property,
    String qualifier,
    String value,
    String unit,
    String source,
    String status) {

  /** The value in SI units, given that it is stated in {@code expected}. */
  double in(DataUnit expected) {
    if (!unit.equals(expected.symbol())) {
      throw new IllegalStateException(this + ": expected a value in " + expected.symbol());
    }
    try {
      return expected.toSi(Double.parseDouble(value));
    } catch (NumberFormatException notANumber) {
      throw new IllegalStateException(this + ": expected a number", notANumber);
    }
  }

  /** The constant of an enum whose name is the value: {@code filler only} is FILLER_ONLY. */
  <E extends Enum<E>> E as(Class<E> names) {
    return Names.constant(names, value);
  }

  Source origin() {
    return new Source(source, Status.of(status));
  }

  Fact fact() {
    return new Fact(property, qualifier, value, unit, origin());
  }

  /** What must not occur twice. */
  String key() {
    return alloy + " " + property + " " + qualifier;
  }
}
