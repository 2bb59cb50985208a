/**
 * Questions that take many simulations, or a measurement beside one: how sure is it, what does it
 * depend on, and which heat input made the weld at hand. SI units and kelvin.
 *
 * <p>{@link afterweld.study.SpreadRunner} simulates many joints with inputs drawn from their
 * spreads (a {@link afterweld.study.LatinHypercube}), each once as if the model were exact and once
 * with the {@link afterweld.strength.ModelError} of published values it never saw. What comes back
 * is a {@link afterweld.study.SpreadStudy}: {@link afterweld.study.Quantiles} along the section, a
 * {@link afterweld.study.Share} of joints that meet what is asked, and the {@link
 * afterweld.study.FirstOrder} index of every input. {@link afterweld.study.GridStudy} maps the
 * joint over one or two inputs. {@link afterweld.study.TraverseFit} holds a {@link
 * afterweld.study.HardnessTraverse} against a case with a {@link afterweld.study.RobustFit}, and
 * refuses what the traverse cannot tell. {@link afterweld.study.AgeingStudy} draws ageing curves.
 *
 * <p>Worked example: of 1000 simulated joints 858 meet the drawing. That is 86 %, and with so many
 * runs the true share lies between 83 and 88 %:
 *
 * <pre>{@code
 * Share met = new Share(858, 1000);
 * met.estimate();  // 0.858
 * met.low();       // 0.835, Wilson
 * met.high();      // 0.878
 * }</pre>
 *
 * <p>It says how often joints like the simulated ones would meet it, under the spreads assumed and
 * the model's known error. Defects, a wrong filler and physics nobody modelled are not in it.
 */
package afterweld.study;
