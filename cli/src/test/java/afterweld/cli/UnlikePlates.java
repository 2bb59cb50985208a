package afterweld.cli;

/**
 * The standard unequal joint of the tests that hold the wiring: no two things of it are alike, so
 * that a left for a right, a first for a second or a low for a high shows in a number.
 */
final class UnlikePlates {
  private static final String JOINT =
      """
      title: Two unlike plates
      left: {alloy: "6061", temper: T6, thickness: 6 mm, width: 180 mm}
      right: {alloy: "6082", temper: T4, thickness: 5 mm, width: 150 mm}
      joint: butt
      filler: {alloy: "4643", dilution: 40 %, from_left: 70 %}
      depth: 2 mm
      passes:
        - {process: GMAW, current: 150 A, voltage: 22 V, travel_speed: 9 mm/s, bead_width: 8 mm, offset: 0.5 mm}
        - {process: GMAW, current: 170 A, voltage: 23 V, travel_speed: 10 mm/s, bead_width: 9 mm, offset: -0.5 mm, interpass: 60 °C}
      natural_age: 3 days
      tube: {diameter: 200 mm, pressure: 2 MPa}
      require: {tensile: 170 MPa, yield: 110 MPa, hardness: 60 HV}
      """;

  /** Aged only. */
  static final String AGED =
      JOINT
          + """
          after_weld:
            - age: {temperature: 175 °C, time: 8 h}
          """;

  /** Fully treated. */
  static final String TREATED =
      JOINT
          + """
          after_weld:
            - solution_treat: {temperature: 530 °C, soak: 60 min}
            - quench: {medium: water, temperature: 25 °C, delay: 6 s}
            - age: {temperature: 175 °C, time: 8 h}
          """;

  private UnlikePlates() {}
}
