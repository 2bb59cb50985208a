package afterweld.thermal;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One row of the table of reference values, read into the model's terms. */
record ReferenceCase(Table.Row row, double sourceDepth) {
  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

  /** Rows "as above" continue the row before them, so the source depth carries over. */
  static ReferenceCase of(Table.Row row, double depthBefore) {
    String geometry = row.text("geometry");
    double depth = depthBefore;
    if (geometry.contains("surface source")) {
      depth = 0;
    } else if (geometry.contains("p=d") || geometry.matches("(line source|strip).*")) {
      depth = row.has("d_mm") ? row.millimetres("d_mm") : 0;
    } else if (geometry.contains("p=")) {
      depth = after(geometry, "p=") * 1e-3;
    }
    return new ReferenceCase(row, depth);
  }

  private static double after(String text, String word) {
    Matcher number = NUMBER.matcher(text.substring(text.indexOf(word) + word.length()));
    if (!number.find()) {
      throw new IllegalArgumentException("no number after " + word + " in " + text);
    }
    return Double.parseDouble(number.group());
  }

  private boolean says(String word) {
    return row.text("geometry").contains(word) || row.text("method").contains(word);
  }

  double computed() {
    String quantity = row.text("quantity");
    Matcher numbers = NUMBER.matcher(quantity);
    double first = numbers.find() ? Double.parseDouble(numbers.group()) : 0;
    if (quantity.startsWith("Phi")) {
      HeatPotential potential = Metals.ALUMINIUM_6061.potential();
      return (potential.at(first + ZERO_CELSIUS) - potential.at(20 + ZERO_CELSIUS)) * 1e-3;
    }
    if (quantity.equals("q net")) {
      return calibratedPower();
    }
    PlateField field = field();
    double y = row.has("y_mm") ? row.millimetres("y_mm") : 0;
    if (quantity.equals("T(xi,y,z)")) {
      double xi = after(row.text("geometry"), "xi=") * 1e-3;
      return field.temperature(xi, y) - ZERO_CELSIUS;
    }
    if (quantity.startsWith("Tpeak")) {
      return field.peakTemperature(y) - ZERO_CELSIUS;
    }
    if (quantity.startsWith("lag")) {
      return field.lag(y) * 1e3;
    }
    if (quantity.startsWith("y of")) {
      return field.isotherm(first + ZERO_CELSIUS) * 1e3;
    }
    if (quantity.startsWith("time above")) {
      return field.timeAbove(y, first + ZERO_CELSIUS).orElseThrow();
    }
    if (quantity.equals("t 300->200 cooling")) {
      return field.coolingTime(y, 300 + ZERO_CELSIUS, 200 + ZERO_CELSIUS).orElseThrow();
    }
    throw new IllegalArgumentException(quantity);
  }

  private ConductionMaterial material() {
    if (!row.text("lambda_W_mmK").equals("table")) {
      return Metals.constant(
          row.number("lambda_W_mmK") * 1e3, row.number("a_mm2_s") * 1e-6, 2000, 2000);
    }
    return says("term S off") ? Metals.ALUMINIUM_6061.withoutLatentHeat() : Metals.ALUMINIUM_6061;
  }

  private PlateField field() {
    ConductionMaterial material = material();
    return PlateField.of(
        geometry(),
        material,
        loss(material),
        new PlateField.Heat(row.number("q_W(net)"), row.millimetres("v_mm_s"), row.kelvin("T0_C")));
  }

  private LegGeometry geometry() {
    double thickness = row.millimetres("d_mm");
    double width = says("half-width") ? after(row.text("geometry"), "half-width") * 1e-3 : 1.0 / 0;
    return new LegGeometry(
        thickness, thickness, thickness, sourceDepth, row.millimetres("z_mm"), width, width);
  }

  private SurfaceLoss loss(ConductionMaterial material) {
    double term = says("m2=") ? after(row.text("geometry"), "m2=") * 1e6 : 0;
    double bothFaces = term * material.lossConductivity() * row.millimetres("d_mm");
    return new SurfaceLoss(bothFaces / 2, false, row.kelvin("T0_C"));
  }

  private double calibratedPower() {
    double thickness = row.millimetres("d_mm");
    Pass pass =
        new Pass(
            WeldingProcess.GTAW_AC,
            150,
            20,
            row.millimetres("v_mm_s"),
            row.kelvin("T0_C"),
            OptionalDouble.of(after(row.text("geometry"), "bead width") * 1e-3),
            OptionalDouble.of(sourceDepth),
            OptionalDouble.empty(),
            0,
            OptionalDouble.empty());
    ConductionMaterial material = material();
    WeldLegs plate = WeldLegs.plate(thickness, material);
    return HeatInput.into(plate, loss(material)).of(pass).netPower();
  }
}
