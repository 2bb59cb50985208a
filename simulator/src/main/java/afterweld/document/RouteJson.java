package afterweld.document;

import static afterweld.document.JsonNumber.days;
import static afterweld.document.JsonNumber.megapascal;

import afterweld.choice.RouteConstraint;
import afterweld.choice.RouteResult;
import afterweld.choice.RouteStudy;
import afterweld.quantity.UnitSystem;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The result of {@code routes} for programs. */
public final class RouteJson {
  private RouteJson() {}

  /** The JSON text. */
  public static String of(WeldCase weldCase, RouteStudy study, Notices notices) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("title", weldCase.title());
    List<Map<String, Object>> routes = new ArrayList<>();
    for (int i = 0; i < study.routes().size(); i++) {
      routes.add(route(study.routes().get(i), study.scores().get(i)));
    }
    root.put("routes", routes);
    root.put("choice", study.choice().orElse(null));
    root.put("clear", study.clear());
    root.put("why", study.why(UnitSystem.METRIC));
    root.put(
        "natural_ageing",
        study.shelf().stream()
            .map(
                shelf -> {
                  Map<String, Object> json = new LinkedHashMap<>();
                  json.put("days", new JsonNumber(shelf.days(), 0));
                  json.put("proof_MPa", megapascal(shelf.joint().proof()));
                  json.put("tensile_MPa", megapascal(shelf.joint().tensile()));
                  return json;
                })
            .toList());
    notices.addTo(root);
    return JsonText.of(root);
  }

  private static Map<String, Object> route(RouteResult route, double score) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("route", route.name());
    json.put("steps", route.steps());
    json.put("waiting_days", days(route.rest()));
    json.put("allowed", route.allowed());
    json.put("meets", route.judgement().met().orElse(null));
    json.put("verdict", route.judgement().asked() ? route.judgement().verdict().label() : null);
    json.put("chance", new JsonNumber(route.judgement().chance().orElse(Double.NaN), 4));
    json.put("proof_MPa", megapascal(route.joint().proof()));
    json.put("tensile_MPa", megapascal(route.joint().tensile()));
    json.put("lowest_yield_MPa", megapascal(route.joint().lowestYield()));
    json.put("lowest_hardness_HV", new JsonNumber(route.lowestHardness(), 1));
    json.put("fails_in", String.join(" or ", route.joint().failsIn()));
    json.put("shop_steps", new JsonNumber(route.shopSteps(), 0));
    json.put("furnace_hours", new JsonNumber(route.furnaceHours(), 1));
    json.put("score", new JsonNumber(score, 3));
    json.put("constraints", route.constraints().stream().map(RouteJson::constraint).toList());
    json.put("reasons", route.reasons());
    return json;
  }

  private static Map<String, Object> constraint(RouteConstraint constraint) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("name", constraint.name());
    json.put("state", constraint.state().label());
    json.put("text", constraint.text());
    return json;
  }
}
