/**
 * Reading a case file: what a welding engineer writes, turned into the values the simulator works
 * on, or into a list of everything that is wrong with it.
 *
 * <p>A case file is YAML or JSON and describes one joint. Every quantity carries its unit, metric
 * or US; a number without one is a fault, because 6 may be millimetres or sixteenths. Inside,
 * everything is SI and kelvin.
 *
 * <pre>{@code
 * CaseReader reader = new CaseReader(bases, fillers);
 * CaseReading reading = reader.read("arm.yaml", bytes);
 * if (reading.caseFile().isPresent()) {
 *   WeldCase weld = reading.caseFile().get().weld();      // simulate it
 * } else {
 *   reading.faults().forEach(fault -> show(fault));       // arm.yaml:2:44: thickness: ...
 * }
 * }</pre>
 *
 * <p>For {@code left: {alloy: 6061, temper: T6, thickness: 6}} in line 2 the fault reads {@code
 * arm.yaml:2:44: thickness: found '6', a number without a unit; expected a length from 0.5 to 40 mm
 * (units: mm, cm, m, in, ft)}.
 *
 * <p>The way through the package: {@code SourceText} makes characters of the bytes, {@code
 * TreeReader} takes them apart into {@code Node}s that know their place, {@code CaseAssembler}
 * walks the sections with one reader each, {@code Section} gives typed values and gathers faults,
 * {@code Measure} and {@code Dimension} hold ranges and units. A fault found only by the simulation
 * (a bead that the heat cannot melt) gets its line from {@link afterweld.casefile.text.Positions}.
 */
package afterweld.casefile;
