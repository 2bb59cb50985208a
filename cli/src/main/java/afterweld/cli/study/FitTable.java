package afterweld.cli.study;

import afterweld.cli.command.NoticesText;
import afterweld.cli.terminal.Paragraph;
import afterweld.cli.terminal.TextTable;
import afterweld.document.JsonNumber;
import afterweld.document.Notices;
import afterweld.quantity.UnitSystem;
import afterweld.study.RobustFit;
import afterweld.study.TraverseFit;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a person reads on the terminal after {@code fit}. */
final class FitTable {
  private static final String NO_SPREAD =
      " So no spread of the arc efficiency was written into this case.";

  private final WeldCase weldCase;
  private final TraverseFit fit;
  private final boolean treated;
  private final Notices notices;
  private final UnitSystem units;

  FitTable(WeldCase weldCase, TraverseFit fit, boolean treated, Notices notices, UnitSystem units) {
    this.notices = notices;
    this.weldCase = weldCase;
    this.fit = fit;
    this.treated = treated;
    this.units = units;
  }

  /** The whole of it. */
  String text() {
    StringBuilder text = new StringBuilder(Paragraph.of(weldCase.title()));
    text.append(
        Paragraph.of(
            fit.traverse().points().size()
                + " points "
                + state()
                + "; a point far from all others counts little."));
    fit.fit().ifPresent(found -> text.append('\n').append(details(found)));
    found(TraverseFit.BASE)
        .ifPresent(base -> text.append(Paragraph.hanging("! ", baseWords(base))));
    found(TraverseFit.OFFSET)
        .ifPresent(offset -> text.append(Paragraph.hanging("! ", offsetWords(offset))));
    fit.refusals().forEach(why -> text.append(Paragraph.hanging("- ", why)));
    return text.append('\n')
        .append(NoticesText.of(notices))
        .append('\n')
        .append(answer())
        .toString();
  }

  /** What the head of the fitted case says, line by line. */
  List<String> remarks(String traverse) {
    List<String> lines = new ArrayList<>();
    lines.add("Fitted to the hardness traverse " + traverse + ", " + state() + ".");
    found(TraverseFit.EFFICIENCY).ifPresent(one -> lines.add(words("Arc efficiency", one) + "."));
    found(TraverseFit.BASE).ifPresent(one -> lines.add(baseWords(one)));
    found(TraverseFit.OFFSET).ifPresent(one -> lines.add(offsetWords(one)));
    fit.misfit().ifPresent(why -> lines.add(why + NO_SPREAD));
    lines.addAll(fit.refusals());
    return lines;
  }

  private String state() {
    return "measured " + (treated ? "after heat treatment" : "as welded");
  }

  private Optional<RobustFit.Estimate> found(String parameter) {
    return fit.fit().stream()
        .flatMap(found -> found.estimates().stream())
        .filter(one -> one.parameter().name().equals(parameter))
        .findFirst();
  }

  private String words(String head, RobustFit.Estimate one) {
    String[] cells = cells(one);
    String unit = cells[4].isEmpty() ? "" : " " + cells[4];
    return head
        + " "
        + cells[1]
        + unit
        + " (19 times in 20 from "
        + cells[2]
        + " to "
        + cells[3]
        + ")";
  }

  private String baseWords(RobustFit.Estimate base) {
    return words("Base hardness", base)
        + String.format(Locale.ROOT, "; the case as written has %.1f HV.", base.parameter().start())
        + " It only raises or lowers the fitted line: the case file has no place for it, and the"
        + " other commands go on with the predicted base. Where a certificate is at hand, write its"
        + " composition into the case.";
  }

  private String offsetWords(RobustFit.Estimate offset) {
    return words("Weld centre at", offset)
        + " on the scale of the traverse; the case needs no change.";
  }

  private String details(RobustFit found) {
    TextTable table = new TextTable("fitted", " value", " 19 in 20 from", " to", "");
    found.estimates().forEach(one -> table.row(cells(one)));
    StringBuilder text = new StringBuilder(table.text()).append('\n');
    if (fit.runs().clustered()) {
      text.append(
          Paragraph.of(
              "Too many neighbouring points lie on the same side of the fitted line to be chance:"
                  + " the measured curve has another shape than the computed one."));
    }
    if (Double.isFinite(fit.heldOut())) {
      text.append(
          Paragraph.of(
              String.format(
                  Locale.ROOT,
                  "Fitted without every fifth point, the line misses those points by %.1f HV.",
                  fit.heldOut())));
    }
    return text.toString();
  }

  private String[] cells(RobustFit.Estimate one) {
    boolean length = one.parameter().unit().equals("m");
    boolean share = one.parameter().unit().isEmpty();
    return new String[] {
      one.parameter().name(),
      figure(one.value(), length, share),
      figure(one.low(), length, share),
      figure(one.high(), length, share),
      length ? units.lengthUnit() : one.parameter().unit()
    };
  }

  private String figure(double value, boolean length, boolean share) {
    double shown = length ? units.length(value) : value;
    int decimals = share ? 3 : length ? (units == UnitSystem.METRIC ? 2 : 3) : 1;
    return new JsonNumber(shown, decimals).toString();
  }

  /** The answer only. */
  String answer() {
    String deviations =
        String.format(
            Locale.ROOT,
            "Off the traverse by %.1f HV as written, by %.1f HV fitted.",
            fit.rmsBefore(),
            fit.rmsAfter());
    return fit.fit()
        .map(
            found ->
                Paragraph.of(
                    String.format(
                            Locale.ROOT,
                            "Arc efficiency %.3f (19 times in 20 from %.3f to %.3f). ",
                            found.estimates().get(0).value(),
                            found.estimates().get(0).low(),
                            found.estimates().get(0).high())
                        + deviations))
        .orElse(
            Paragraph.of(
                String.format(
                    Locale.ROOT,
                    "Nothing fitted; the traverse is %.1f HV off the case as written.",
                    fit.rmsBefore())));
  }
}
