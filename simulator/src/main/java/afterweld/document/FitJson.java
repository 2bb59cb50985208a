package afterweld.document;

import afterweld.study.RobustFit;
import afterweld.study.TraverseFit;
import afterweld.weld.WeldCase;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The result of {@code fit} for programs. */
public final class FitJson {
  private FitJson() {}

  /** The JSON text. */
  public static String of(WeldCase weldCase, TraverseFit fit, Notices notices) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("title", weldCase.title());
    root.put(
        "parameters",
        fit.fit()
            .map(found -> found.estimates().stream().map(FitJson::estimate).toList())
            .orElse(List.of()));
    root.put("rms_before_HV", new JsonNumber(fit.rmsBefore(), 2));
    root.put("rms_after_HV", new JsonNumber(fit.rmsAfter(), 2));
    root.put("rms_held_out_HV", new JsonNumber(fit.heldOut(), 2));
    root.put("points", new JsonNumber(fit.traverse().points().size(), 0));
    root.put(
        "correlation",
        fit.fit()
            .map(
                found ->
                    found.correlation().stream()
                        .map(row -> row.stream().map(one -> new JsonNumber(one, 3)).toList())
                        .toList())
            .orElse(List.of()));
    root.put(
        "condition_number",
        new JsonNumber(fit.fit().map(RobustFit::condition).orElse(Double.NaN), 2));
    root.put(
        "residual_variance", new JsonNumber(fit.fit().map(RobustFit::s2).orElse(Double.NaN), 3));
    root.put("runs_test_chance", new JsonNumber(fit.runs().chance(), 3));
    root.put("refusals", fit.refusals());
    notices.addTo(root);
    return JsonText.of(root);
  }

  private static Map<String, Object> estimate(RobustFit.Estimate one) {
    boolean length = one.parameter().unit().equals("m");
    double factor = length ? 1e3 : 1;
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("name", one.parameter().name());
    json.put("unit", length ? "mm" : one.parameter().unit());
    json.put("value", new JsonNumber(one.value() * factor, 4));
    json.put("low", new JsonNumber(one.low() * factor, 4));
    json.put("high", new JsonNumber(one.high() * factor, 4));
    return json;
  }
}
