package afterweld.document;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import afterweld.choice.filler.FillerUse;
import afterweld.material.Alloy;
import afterweld.material.Element;
import afterweld.material.Fact;
import afterweld.material.Temper;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The library for programs, metric. */
public final class AlloyJson {
  private AlloyJson() {}

  /** The JSON text of all alloys and fillers, without their sources. */
  public static String of(List<Alloy> alloys) {
    return JsonText.of(Map.of("materials", alloys.stream().map(AlloyJson::summary).toList()));
  }

  /** The JSON text of one of them with every value and its source. */
  public static String of(Alloy alloy) {
    Map<String, Object> json = summary(alloy);
    json.put("use_as_filler", FillerUse.of(alloy).lines());
    json.put("facts", alloy.facts().stream().map(AlloyJson::fact).toList());
    return JsonText.of(json);
  }

  private static Map<String, Object> summary(Alloy alloy) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("name", alloy.name());
    json.put(
        "uses", alloy.uses().stream().map(use -> use.name().toLowerCase(Locale.ROOT)).toList());
    json.put("tempers", alloy.tempers().stream().map(Temper::name).toList());
    json.put("solidus_C", new JsonNumber(alloy.solidus() - ZERO_CELSIUS, 1));
    json.put("liquidus_C", new JsonNumber(alloy.liquidus() - ZERO_CELSIUS, 1));
    json.put("composition_wt", composition(alloy));
    return json;
  }

  private static Map<String, Object> composition(Alloy alloy) {
    Map<String, Object> shares = new LinkedHashMap<>();
    for (Element element : Element.values()) {
      double share = alloy.composition().of(element);
      if (share > 0) {
        shares.put(element.symbol(), new JsonNumber(share, 3));
      }
    }
    return shares;
  }

  private static Map<String, Object> fact(Fact fact) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("property", fact.property());
    json.put("of", fact.qualifier());
    json.put("value", fact.value());
    json.put("unit", fact.unit());
    json.put("status", fact.source().status().label());
    json.put("source", fact.source().text());
    return json;
  }
}
