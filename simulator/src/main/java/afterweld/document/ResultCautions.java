package afterweld.document;

import afterweld.section.Cautions;
import afterweld.section.ErrorBand;
import afterweld.section.SectionProfile;

/** What must be read with every number of a result. A profile brings its own. */
public final class ResultCautions {
  /** Of the routes. */
  public static final String ROUTES =
      "Estimates for sound metal; the final choice is made by a qualified procedure test (bend,"
          + " tension and hardness on the first article) and the governing code.";

  /** Of the fillers. */
  public static final String FILLERS =
      "Estimates for sound weld metal, yield "
          + ErrorBand.WELD_METAL.ofYield()
          + " either way; the qualified procedure, the test coupon and the governing code decide.";

  /** Of the furnace sheet. */
  public static final String SHEET =
      "Hardness estimates for sound metal, not a design value: the qualified procedure, the test"
          + " coupon and the governing code decide.";

  /** Of the ageing curves. */
  public static final String AGEING =
      "Estimates for sound metal, yield "
          + ErrorBand.TREATED.ofYield()
          + " (weld metal "
          + ErrorBand.WELD_METAL.ofYield()
          + ") either way; a hardness test on the part decides.";

  /** Of the spread. */
  public static final String SPREAD =
      "Spreads of inputs are assumptions unless the case sets them. This does not cover defects,"
          + " wrong filler, geometry or untested physics: not a probability of failure in service,"
          + " not a design value.";

  /** Of a map over inputs. */
  public static final String MAP =
      "Best estimates for sound metal, without their bands; not a design value. The qualified"
          + " procedure and the test coupon decide.";

  /** Of a fitted traverse. */
  public static final String FIT =
      "A fit makes a prediction agree with one traverse; it is not a qualification. The qualified"
          + " procedure and the test coupon decide.";

  private static final String BEND =
      "Estimates for sound metal, not a design value: the qualified procedure, its bend test and the"
          + " governing code decide.";

  private ResultCautions() {}

  /** Of the bends of a joint; of one under pressure with the words on that, as in its profile. */
  public static String bend(SectionProfile profile) {
    return profile.cautions().contains(Cautions.PRESSURE) ? BEND + " " + Cautions.PRESSURE : BEND;
  }
}
