package afterweld.cli.command;

import afterweld.quantity.UnitSystem;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** {@code --units}. */
public final class UnitsOption {
  @Option(
      names = "--units",
      paramLabel = "metric|us",
      defaultValue = "metric",
      converter = Reader.class,
      completionCandidates = Names.class,
      description =
          "Units of tables, CSV, charts and starters: mm, °C, MPa (the default) or in, °F, ksi.")
  private UnitSystem units = UnitSystem.METRIC;

  public UnitSystem units() {
    return units;
  }

  /** The words of the option. */
  static final class Names implements Iterable<String> {
    @Override
    public java.util.Iterator<String> iterator() {
      return List.of("metric", "us").iterator();
    }
  }

  /** Words to units. */
  static final class Reader implements ITypeConverter<UnitSystem> {
    @Override
    public UnitSystem convert(String word) {
      return switch (word.toLowerCase(Locale.ROOT)) {
        case "metric" -> UnitSystem.METRIC;
        case "us" -> UnitSystem.US;
        default -> throw new TypeConversionException("expected metric or us, found '" + word + "'");
      };
    }
  }
}
