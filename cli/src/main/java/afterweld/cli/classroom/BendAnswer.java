package afterweld.cli.classroom;

import static afterweld.quantity.UnitSystem.METRIC;
import static afterweld.quantity.UnitSystem.US;

import afterweld.joint.JointSettings.BendSettings;
import afterweld.joint.JointStrength;
import afterweld.joint.ProfileSlices;
import afterweld.joint.SliceLine;
import afterweld.joint.bend.BendCoupon;
import afterweld.joint.bend.StripBend;
import afterweld.section.SectionProfile;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The strip across the weld in a bend, state by state. */
final class BendAnswer {
  private static final int MOST_PLACES = 120;

  private final SectionProfile profile;
  private final BendSettings settings;

  BendAnswer(SectionProfile profile, BendSettings settings) {
    this.profile = profile;
    this.settings = settings;
  }

  /** Keys and values for JSON. */
  Map<String, Object> keys() {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("angle_deg", Math.toDegrees(settings.angle()));
    List<Map<String, Object>> states = new ArrayList<>();
    for (int state = 0; state < profile.states().size(); state++) {
      states.add(state(state));
    }
    json.put("states", states);
    return json;
  }

  private Map<String, Object> state(int state) {
    Map<String, Object> json = new LinkedHashMap<>();
    Optional<SliceLine> line =
        ProfileSlices.flush(profile, state, ProfileSlices.End.MIDDLE, settings.length());
    if (line.isEmpty()) {
      json.put("problem", "The joint is " + JointStrength.NOT_PREDICTED + ".");
      return json;
    }
    try {
      put(json, StripBend.bend(line.get(), BendCoupon.of(settings)));
    } catch (IllegalArgumentException unused) {
      json.put("problem", tooShort());
    }
    return json;
  }

  /** The only fault that a case without faults leaves. */
  private String tooShort() {
    return String.format(
        Locale.ROOT,
        "The softened metal reaches beyond the strip of %.0f mm (%.1f in): 'bend: {length: ...}' in"
            + " the case makes it longer.",
        METRIC.length(settings.length()),
        US.length(settings.length()));
  }

  private static void put(Map<String, Object> json, StripBend bend) {
    json.put("kink_factor", bend.averagedKinkFactor());
    json.put("sharpest_mm", sharpest(bend) * 1e3);
    json.put("shape_mm", places(bend.shapeUnderLoad()));
  }

  /** How far from the weld centre the sharpest place is, m. */
  static double sharpest(StripBend bend) {
    StripBend.Bent sharpest = bend.line().get(0);
    for (StripBend.Bent bent : bend.line()) {
      sharpest = bent.curvature() > sharpest.curvature() ? bent : sharpest;
    }
    return Math.abs(sharpest.position());
  }

  private static List<List<Double>> places(List<StripBend.Place> shape) {
    int step = Math.max(1, shape.size() / MOST_PLACES);
    List<List<Double>> places = new ArrayList<>();
    for (int i = 0; i < shape.size(); i++) {
      if (i % step == 0 || i == shape.size() - 1) {
        places.add(List.of(shape.get(i).along() * 1e3, shape.get(i).height() * 1e3));
      }
    }
    return places;
  }
}
