package afterweld.casefile;

import static afterweld.casefile.Dimension.LENGTH;
import static afterweld.casefile.Dimension.TEMPERATURE;
import static afterweld.casefile.Dimension.TIME;

import afterweld.choice.RouteSettings;
import afterweld.choice.answer.Objection.Severity;
import afterweld.choice.answer.Requirement;
import afterweld.choice.schedule.ScheduleCheck;
import afterweld.joint.JointSettings;
import afterweld.material.Alloy;
import afterweld.study.SpreadSettings;
import afterweld.thermal.HeatFlow;
import afterweld.thermal.Pass;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.weld.AfterWelding;
import afterweld.weld.FillerChoice;
import afterweld.weld.Joint;
import afterweld.weld.Parts;
import afterweld.weld.Preparation;
import afterweld.weld.Ring;
import afterweld.weld.Seam;
import afterweld.weld.WeldCase;
import afterweld.weld.WeldProcedure;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Walks through the sections of one case in the order in which they depend on each other. */
final class CaseAssembler {
  private static final Measure REINFORCEMENT = Measure.within("reinforcement", LENGTH, 0, 20, "mm");
  private static final Measure AMBIENT = Measure.within("ambient", TEMPERATURE, -20, 60, "°C");
  private static final Measure DEPTH = Measure.within("depth", LENGTH, 0, 40, "mm");
  private static final Measure NATURAL_AGE = Measure.within("natural_age", TIME, 0, 3650, "days");
  private static final int LONGEST_TITLE = 200;

  private final Choices<Alloy> bases;
  private final Choices<Alloy> fillers;
  private final String file;
  private final Section top;
  private final Notes notes = new Notes();

  CaseAssembler(Choices<Alloy> bases, Choices<Alloy> fillers, String file, Section top) {
    this.bases = bases;
    this.fillers = fillers;
    this.file = file;
    this.top = top;
  }

  /** How the joint is welded, as far as it could be read. */
  private record Procedure(
      Joint joint,
      Preparation preparation,
      Optional<Ring> ring,
      Optional<Seam> seam,
      Optional<HeatFlow> heatFlow,
      List<Pass> passes,
      Optional<FillerChoice> filler) {
    private Parts parts(Plates plates) {
      return new Parts(
          plates.left().complete(), plates.right().complete(), joint, preparation, ring, seam);
    }
  }

  /** What happens to the joint after welding, as far as the file says it. */
  private record Treatment(double naturalAge, List<FurnaceStep> steps) {}

  /** The case, or empty when the file has a fault. */
  Optional<CaseFile> read() {
    String title = title();
    Plates plates = plates();
    Procedure procedure = procedure(plates);
    OptionalDouble reinforcement = reinforcement(procedure.passes());
    double ambient = top.quantityOr(AMBIENT, WeldProcedure.USUAL_AMBIENT);
    double depth = depth(plates);
    Requirement requirement = new RequirementReader(notes, plates.anyCasting()).read(top);
    Treatment treatment = treatment(MeltingLimit.of(plates, procedure.filler(), requirement));
    RouteSettings routes = new RouteSettingsReader(plates).read(top);
    JointSettings settings = new JointSettingsReader(plates, procedure.joint()).read(top);
    Requirement asked = requirement.with(settings.fillet()).holding(settings.tube());
    SpreadSettings spread = new SpreadReader().read(top);
    top.finish();
    if (top.faults().count() > 0) {
      return Optional.empty();
    }
    WeldCase weld =
        new WeldCase(
            title,
            procedure.parts(plates),
            new WeldProcedure(
                procedure.passes(), reinforcement, ambient, depth, procedure.heatFlow()),
            procedure.filler().orElseThrow(),
            new AfterWelding(treatment.naturalAge(), treatment.steps()),
            notes.toList());
    ScheduleCheck.of(weld, requirement, Severity.REFUSED)
        .forEach(text -> top.unwanted(HeatTreatmentReader.AFTER_WELD, text));
    if (top.faults().count() > 0) {
      return Optional.empty();
    }
    return Optional.of(new CaseFile(weld, asked, routes, settings, spread));
  }

  private String title() {
    Optional<String> title = top.text("title", "a text");
    if (title.orElse("").length() > LONGEST_TITLE) {
      top.fault("title", "expected at most " + LONGEST_TITLE + " characters");
    }
    return title
        .orElseGet(
            () -> file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1))
        .replaceAll("\\s+", " ");
  }

  private Plates plates() {
    SideReader sides = new SideReader(bases, fillers, notes);
    if (!top.has("left")) {
      top.missing("left", SideReader.EXPECTED);
    }
    SideReader.Draft left =
        top.inner("left", SideReader.EXPECTED).map(sides::left).orElse(SideReader.Draft.UNKNOWN);
    SideReader.Draft right =
        top.inner("right", SideReader.EXPECTED)
            .map(section -> sides.right(section, left))
            .orElse(left);
    return new Plates(left, right);
  }

  private Procedure procedure(Plates plates) {
    JointReader joints = new JointReader(top, plates, notes);
    Joint joint = joints.joint();
    Preparation preparation = joints.preparation(joint);
    CourseReader course = new CourseReader(top, plates);
    Optional<Ring> ring = course.ring();
    Optional<Seam> seam = course.seam();
    Optional<HeatFlow> heatFlow = joints.heatFlow();
    List<Pass> passes = new PassReader(plates, notes).read(top);
    Optional<FillerChoice> filler =
        new FillerReader(fillers, plates, notes).read(top, preparation, passes);
    return new Procedure(joint, preparation, ring, seam, heatFlow, passes, filler);
  }

  private OptionalDouble reinforcement(List<Pass> passes) {
    if (top.has(REINFORCEMENT.key())) {
      return top.quantity(REINFORCEMENT);
    }
    top.node(REINFORCEMENT.key());
    OptionalDouble widest = widestBead(passes);
    return widest.isPresent()
        ? OptionalDouble.of(WeldCase.usualReinforcement(widest.getAsDouble()))
        : widest;
  }

  private static OptionalDouble widestBead(List<Pass> passes) {
    return passes.stream().flatMapToDouble(pass -> pass.beadWidth().stream()).max();
  }

  private double depth(Plates plates) {
    double depth = top.quantityOr(DEPTH, WeldProcedure.usualDepth(plates.thinnest()));
    if (Measure.exceeds(depth, plates.thinnest())) {
      top.fault(
          DEPTH.key(),
          "found "
              + DEPTH.show(depth)
              + "; expected at most the thickness of the thinner side, "
              + DEPTH.show(plates.thinnest()));
    }
    return depth;
  }

  private Treatment treatment(MeltingLimit limit) {
    List<FurnaceStep> steps = new HeatTreatmentReader(limit, notes, top.faults()).read(top);
    double naturalAge = top.quantityOr(NATURAL_AGE, AfterWelding.usualWait(steps));
    if (!top.has(NATURAL_AGE.key())) {
      notes.add(
          "natural-age-by-default",
          steps.isEmpty()
              ? "Tested after 30 days at room temperature."
              : "One day at room temperature between welding and the next step.");
    }
    return new Treatment(naturalAge, steps);
  }
}
