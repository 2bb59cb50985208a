package afterweld.cli.choice;

import afterweld.choice.RouteConstraint;
import afterweld.choice.RouteResult;
import afterweld.choice.RouteStudy;
import afterweld.cli.command.NoticesText;
import afterweld.cli.terminal.Paragraph;
import afterweld.cli.terminal.TextTable;
import afterweld.document.Notices;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.weld.WeldCase;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What a person reads on the terminal after {@code routes}. */
final class RouteTable {
  private final WeldCase weldCase;
  private final RouteStudy study;
  private final Notices notices;
  private final UnitSystem units;

  RouteTable(WeldCase weldCase, RouteStudy study, Notices notices, UnitSystem units) {
    this.weldCase = weldCase;
    this.study = study;
    this.notices = notices;
    this.units = units;
  }

  /** The whole of it. */
  String text() {
    StringBuilder text = new StringBuilder(Paragraph.of(weldCase.title()));
    text.append(
        Paragraph.of(
            "Joint dressed flush after each route, strengths in "
                + units.stressUnit()
                + ". in: whether the route is; steps: of the shop, for the ranking; h: in furnaces."
                + " Full treatment: solution treat, quench and age."));
    text.append('\n').append(numbers());
    for (RouteResult route : study.routes()) {
      text.append('\n').append(Paragraph.of(route.name())).append(details(route));
    }
    text.append('\n').append(shelf()).append(NoticesText.of(notices));
    return text.append('\n').append(answer()).toString();
  }

  private String numbers() {
    TextTable table =
        new TextTable("route", "in", " proof", " tensile", " HV", " steps", " h", " score");
    for (int i = 0; i < study.routes().size(); i++) {
      RouteResult route = study.routes().get(i);
      table.row(
          route.name(),
          !route.allowed() ? "no" : route.open() ? "open" : "yes",
          stress(route.joint().proof()),
          stress(route.joint().tensile()),
          OutputQuantity.HARDNESS.text(units, route.lowestHardness()),
          Integer.toString(route.shopSteps()),
          String.format(Locale.ROOT, "%.0f", route.furnaceHours()),
          score(study.scores().get(i)));
    }
    return table.text();
  }

  private static String score(double score) {
    return Double.isNaN(score) ? "–" : String.format(Locale.ROOT, "%.2f", score);
  }

  private String stress(OptionalDouble pascal) {
    return OutputQuantity.YIELD.text(units, pascal.orElse(Double.NaN));
  }

  private String details(RouteResult route) {
    StringBuilder text = new StringBuilder();
    text.append(Paragraph.hanging("  ", "Steps: " + String.join("; ", route.steps()) + "."));
    for (RouteConstraint constraint : route.constraints()) {
      text.append(
          Paragraph.hanging(
              "  - ",
              constraint.name()
                  + ": "
                  + constraint.state().label()
                  + ". "
                  + route.text(constraint, units)));
    }
    route.reasons().forEach(reason -> text.append(Paragraph.hanging("  - ", reason)));
    return text.toString();
  }

  /** With an empty line after it; nothing where no strength of the joint is computed. */
  private String shelf() {
    if (study.shelf().stream().allMatch(shelf -> shelf.joint().tensile().isEmpty())) {
      return "";
    }
    String times =
        study.shelf().stream()
            .map(
                shelf ->
                    String.format(
                        Locale.ROOT,
                        "%s %s (%.0f d)",
                        stress(shelf.joint().tensile()),
                        units.stressUnit(),
                        shelf.days()))
            .collect(Collectors.joining(", "));
    return Paragraph.of("Natural ageing alone, no oven: tensile strength " + times + ".") + "\n";
  }

  /** The answer only. */
  String answer() {
    String choice =
        study
            .choice()
            .map(name -> "Choice: " + name + (study.clear() ? " (clear)." : " (not clear)."))
            .orElse("Choice: none.");
    return Paragraph.of(choice)
        + study.why(units).stream()
            .map(sentence -> Paragraph.hanging("- ", sentence))
            .collect(Collectors.joining());
  }
}
