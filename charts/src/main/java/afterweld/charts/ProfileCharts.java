package afterweld.charts;

import afterweld.charts.plot.Picture;
import afterweld.choice.answer.Requirement;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import java.util.List;

/** The pictures of a section profile. */
public final class ProfileCharts {
  private ProfileCharts() {}

  /**
   * Hardness, strength and temperature across the section, in this order.
   *
   * <p>Curves show what is left before welding, as welded and after heat treatment (states between
   * are thin), each of these three with the error range of the model as a pale area; a requirement
   * is a dashed line; zones are shaded and named above. Where a value is not predicted the curve
   * has a gap, and a note says so. Only the part of the section that the weld changed is drawn,
   * with a margin of base.
   *
   * @param profile result; its stations from left to right
   * @param requirement what the drawing asks; {@link Requirement#NONE} if nothing
   * @param units units of all axes and figures
   */
  public static List<Picture> of(
      SectionProfile profile, Requirement requirement, UnitSystem units) {
    SectionView view = new SectionView(profile, requirement, units);
    SectionPictures section = new SectionPictures(view);
    return List.of(section.hardness(), section.strength(), new TemperaturePicture(view).picture());
  }
}
