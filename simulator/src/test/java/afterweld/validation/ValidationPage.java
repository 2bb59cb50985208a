package afterweld.validation;

import afterweld.validation.Comparison.Measure;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes the page that holds every published value against the prediction. */
final class ValidationPage {
  private static final String HEAD =
      """
      # How far to trust it

      Every published value the program is held against, with what it predicts. The page is written by the code it
      judges (`mvn -B -Pvalidation verify`), and the build fails when it no longer says what the code gives.

      Rows used to find the constants of the model are **calibration**: they show how flexible it is, not how well it
      predicts. Rows it never saw are **test**. Rows close to fitted ones are **partly**; they are counted in neither
      statistic. Where the program gives back an **input** or its own **definition**, agreement proves nothing: such rows
      are shown, and counted nowhere. Published welds differ in procedure; all are compared on one, fixed beforehand:
      6 mm plate, square edges, full penetration, 20 °C, 30 days at room temperature, dilution 40 % unless the row says,
      50 mm gauge, bead dressed flush; tungsten arc (TIG) at 2.5 mm/s with a bead of 12 mm, metal arc (MIG) at 8 mm/s
      with a bead of 10 mm.
      "In" means within the tolerance that the row carries, set before anything was computed. Minimum values of a code
      are limits, not means: they are held, but not averaged. Where the model is known to be wrong, how wide that makes
      the error bands of every result, and what would be worth measuring stand at the end.
      """;

  private static final String PLOT =
      """

      ![Predicted against published yield and tensile strength](validation.svg)
      """;

  private final Map<PublishedRow, List<Comparison>> results = new LinkedHashMap<>();

  ValidationPage() {
    for (PublishedRow row : PublishedRow.all()) {
      results.put(row, Predictions.of(row));
    }
  }

  /** The picture beside it. */
  String plot() {
    return new PublishedPlot(results).svg();
  }

  /** The whole page. */
  String text() {
    StringBuilder page = new StringBuilder(HEAD);
    page.append("\n## In short\n\n").append(summary());
    page.append(PLOT);
    page.append("\n## What does not fit\n\n").append(misfits());
    section(page, "Test rows", "test");
    section(page, "Rows close to fitted ones (partly)", "partly");
    section(page, "Calibration rows", "calibration");
    section(page, "Rows that are inputs or definitions", "input", "definition");
    page.append("\nNot compared:\n\n").append(inputs());
    return page.append(new KnownErrors(results).text()).toString();
  }

  private String summary() {
    StringBuilder table = new StringBuilder();
    table.append("| quantity | rows | numbers | in | mean error | typical error (rms) | worst |\n");
    table.append("| --- | --- | --- | --- | --- | --- | --- |\n");
    for (Measure measure : Measure.values()) {
      if (measure != Measure.OTHER) {
        table.append(statistics(measure, "test")).append(statistics(measure, "calibration"));
      }
    }
    return table.append('\n').append(counts()).toString();
  }

  private String statistics(Measure measure, String kind) {
    List<Comparison> all =
        comparisons(kind).stream().filter(one -> one.measure() == measure).toList();
    if (all.isEmpty()) {
      return "";
    }
    double[] errors = all.stream().mapToDouble(Comparison::errorPercent).toArray();
    double sum = 0;
    double squares = 0;
    double worst = 0;
    for (double error : errors) {
      sum += error;
      squares += error * error;
      worst = Math.abs(error) > Math.abs(worst) ? error : worst;
    }
    long in = all.stream().filter(Comparison::in).count();
    return String.format(
        Locale.ROOT,
        "| %s | %s | %d | %d | %+.0f %% | %.0f %% | %+.0f %% |%n",
        measure.title,
        kind,
        errors.length,
        in,
        sum / errors.length,
        Math.sqrt(squares / errors.length),
        worst);
  }

  private String counts() {
    List<String> sentences = new ArrayList<>();
    for (String kind : List.of("test", "partly", "calibration")) {
      List<Comparison> all = comparisons(kind);
      long in = all.stream().filter(Comparison::in).count();
      sentences.add(
          String.format(Locale.ROOT, "%s: %d of %d numbers and facts in", kind, in, all.size()));
    }
    return String.join("; ", sentences) + ".\n";
  }

  private List<Comparison> comparisons(String kind) {
    return results.entrySet().stream()
        .filter(entry -> entry.getKey().kind().equals(kind))
        .flatMap(entry -> entry.getValue().stream())
        .toList();
  }

  private String misfits() {
    return results.entrySet().stream()
        .flatMap(
            entry ->
                entry.getValue().stream()
                    .filter(one -> !one.in())
                    .map(one -> misfit(entry.getKey(), one)))
        .collect(Collectors.joining());
  }

  private static String misfit(PublishedRow row, Comparison one) {
    return String.format(
        Locale.ROOT,
        "- %s (%s), %s %s, %s: published %s, predicted %s.%n",
        row.id(),
        row.kind(),
        row.alloy(),
        row.condition(),
        one.label(),
        Comparison.digits(one.published()),
        Comparison.digits(one.predicted()));
  }

  private void section(StringBuilder page, String title, String... kinds) {
    page.append("\n## ").append(title).append("\n\n");
    page.append("| row | what | published | predicted | error | allowed | verdict | source |\n");
    page.append("| --- | --- | --- | --- | --- | --- | --- | --- |\n");
    results.forEach(
        (row, all) -> {
          if (List.of(kinds).contains(row.kind())) {
            all.forEach(one -> page.append(line(row, one)));
          }
        });
  }

  private static String line(PublishedRow row, Comparison one) {
    String what = row.alloy() + ", " + row.condition() + ": " + one.label();
    String verdict = one.in() ? "in" : "**out**";
    String source = row.source() + " (" + row.status() + ")";
    if (one.isFact()) {
      String shown = one.in() ? "so" : "not so";
      return String.format(
          "| %s | %s | so | %s |  |  | %s | %s |%n", row.id(), what, shown, verdict, source);
    }
    return String.format(
        Locale.ROOT,
        "| %s | %s | %s | %s | %s | %s | %s | %s |%n",
        row.id(),
        what,
        Comparison.digits(one.published()),
        Comparison.digits(one.predicted()),
        error(one),
        allowed(one),
        verdict,
        source);
  }

  private static String error(Comparison one) {
    boolean known = one.published() != 0 && !Double.isNaN(one.published());
    return known ? String.format(Locale.ROOT, "%+.0f %%", one.errorPercent()) : "";
  }

  private static String allowed(Comparison one) {
    return Double.isInfinite(one.high())
        ? "from " + Comparison.digits(one.low())
        : Comparison.digits(one.low()) + " to " + Comparison.digits(one.high());
  }

  private String inputs() {
    return results.keySet().stream()
        .filter(row -> row.putIn() && results.get(row).isEmpty())
        .map(row -> "- " + row.id() + " (" + row.kind() + "): " + what(row) + "\n")
        .collect(Collectors.joining());
  }

  private static String what(PublishedRow row) {
    return row.kind().equals("input")
        ? row.alloy() + " " + row.condition() + ", " + row.quantity() + ": " + row.source()
        : "the procedure above";
  }
}
