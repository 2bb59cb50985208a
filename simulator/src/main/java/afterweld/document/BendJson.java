package afterweld.document;

import afterweld.choice.answer.Objection;
import afterweld.joint.JointSettings.BendLoad;
import afterweld.joint.bend.BendOutlook;
import afterweld.joint.bend.BendReport;
import afterweld.joint.bend.BendTest;
import afterweld.joint.bend.BentState;
import afterweld.joint.bend.GuidedBend;
import afterweld.joint.bend.StripBend;
import afterweld.section.SectionProfile;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The result of {@code bend} for programs: metric, null for a state that could not be bent. */
public final class BendJson {
  private static final int AS_WELDED = 1;
  private static final double PER_MM = 1e-3;

  private final SectionProfile profile;
  private final BendReport report;
  private final List<Objection> objections;

  /** The JSON of the bends of a section, and what stands against its case. */
  public BendJson(SectionProfile profile, BendReport report, List<Objection> objections) {
    this.profile = profile;
    this.report = report;
    this.objections = List.copyOf(objections);
  }

  /** The JSON text, ending in a line break. */
  public String text() {
    BendLoad asked = report.strip().load();
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("title", profile.weldCase().title());
    root.put("soundness", FindingsJson.soundness(profile.soundness()));
    root.put("objections", FindingsJson.objections(objections));
    root.put("angle_deg", degrees(report.strip().angle()));
    root.put("length_mm", new JsonNumber(report.strip().length() * 1e3, 1));
    root.put("width_mm", new JsonNumber(report.strip().width() * 1e3, 1));
    root.put("load", asked.label());
    root.put("welded", bend(report.state(AS_WELDED).map(bent -> bent.by(asked))));
    root.put("unwelded", bend(report.unwelded().map(bent -> bent.by(asked))));
    root.put("states", states());
    root.put("guided_bends", report.test().stream().map(this::test).toList());
    root.put("outlooks", report.outlooks().stream().map(this::outlook).toList());
    root.put(
        "notes",
        List.of(
            report.asks(),
            BendReport.EDGE_NOTE,
            BendReport.DUCTILITY_NOTE,
            GuidedBend.PLUNGER_NOTE,
            BendReport.forming(profile.weldCase())));
    root.put("warnings", warnings());
    root.put("cautions", profile.cautions());
    return JsonText.of(root);
  }

  private List<Map<String, Object>> states() {
    List<Map<String, Object>> states = new ArrayList<>();
    for (int i = 0; i < profile.states().size(); i++) {
      Optional<BentState> bent = report.state(i);
      Map<String, Object> json = new LinkedHashMap<>();
      json.put("state", profile.states().get(i));
      for (BendLoad load : report.loads()) {
        json.put(load.label(), bend(bent.map(state -> state.by(load))));
      }
      json.put("softened_band_mm", bent.map(BendJson::band).orElse(null));
      Optional<BentState.Stretch> stretch = bent.flatMap(BentState::stretch);
      json.put("even_stretch_sharpest", stretch.map(b -> stretch(b.sharpest())).orElse(null));
      json.put("even_stretch_least", stretch.map(b -> stretch(b.least())).orElse(null));
      json.put("even_stretch_note", bent.map(BentState::noStretch).orElse(""));
      states.add(json);
    }
    return states;
  }

  private static Map<String, Object> bend(Optional<StripBend> bent) {
    return bent.map(BendJson::bend).orElse(null);
  }

  private static Map<String, Object> bend(StripBend bend) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("moment_Nm", new JsonNumber(bend.moment(), 2));
    json.put("mean_curvature_per_mm", curvature(bend.meanCurvature()));
    json.put("end_curvature_per_mm", curvature(bend.endCurvature()));
    json.put("peak_curvature_per_mm", curvature(bend.peakCurvature()));
    json.put("peak_curvature_over_one_thickness_per_mm", curvature(bend.averagedPeakCurvature()));
    json.put("kink_factor", new JsonNumber(bend.kinkFactor(), 2));
    json.put("kink_factor_over_one_thickness", new JsonNumber(bend.averagedKinkFactor(), 2));
    json.put("outer_strain", share(bend.outerStrain()));
    json.put("outer_strain_over_one_thickness", share(bend.averagedOuterStrain()));
    json.put("half_of_the_angle_within_mm", new JsonNumber(bend.halfAngleWithin() * 1e3, 2));
    json.put("springback_deg", degrees(bend.springback()));
    return json;
  }

  private static List<JsonNumber> band(BentState bent) {
    return List.of(
        new JsonNumber(bent.softened().low() * 1e3, 2),
        new JsonNumber(bent.softened().high() * 1e3, 2));
  }

  private static Map<String, Object> stretch(BentState.EvenStretch stretch) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("zone", stretch.zone());
    json.put("strain", share(stretch.strain()));
    return json;
  }

  private Map<String, Object> outlook(BendOutlook outlook) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("state", profile.states().get(outlook.state()));
    json.put("wrap_around", outlook.wrapped().label());
    json.put("plunger", outlook.plunged().label());
    json.put("text", outlook.text());
    return json;
  }

  private Map<String, Object> test(BendTest test) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("code", test.code());
    json.put("metals", test.metals());
    json.put("former_thicknesses", new JsonNumber(test.formerThicknesses(), 2));
    json.put(
        "former_diameter_mm", new JsonNumber(test.formerDiameter(report.thickness()) * 1e3, 1));
    json.put("outer_strain", share(test.strain(report.thickness())));
    json.put("source", test.source());
    json.put("status", test.status());
    return json;
  }

  private List<Map<String, Object>> warnings() {
    return FindingsJson.warnings(Notices.of(profile, report.warnings()));
  }

  private static JsonNumber curvature(double perMetre) {
    return new JsonNumber(perMetre * PER_MM, 6);
  }

  private static JsonNumber share(double value) {
    return new JsonNumber(value, 4);
  }

  private static JsonNumber degrees(double radians) {
    return new JsonNumber(Math.toDegrees(radians), 2);
  }
}
