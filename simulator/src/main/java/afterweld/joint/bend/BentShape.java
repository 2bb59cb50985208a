package afterweld.joint.bend;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Turns curvature along a strip into its shape: each slice is an arc of a circle. */
final class BentShape {
  private final ToDoubleFunction<StripBend.Bent> curvature;
  private double distance;
  private double along;
  private double height;
  private double slope;

  private BentShape(ToDoubleFunction<StripBend.Bent> curvature) {
    this.curvature = curvature;
  }

  /** Ends of all slices from left to right, with the weld centre at the origin and level there. */
  static List<StripBend.Place> of(
      List<StripBend.Bent> line, ToDoubleFunction<StripBend.Bent> curvature) {
    List<StripBend.Place> left = new ArrayList<>();
    BentShape leftwards = new BentShape(curvature);
    for (int i = line.size() - 1; i >= 0; i--) {
      leftwards.go(line.get(i), -1, left);
    }
    Collections.reverse(left);
    List<StripBend.Place> places = new ArrayList<>(left);
    places.add(new StripBend.Place(0, 0, 0));
    BentShape rightwards = new BentShape(curvature);
    line.forEach(bent -> rightwards.go(bent, 1, places));
    return List.copyOf(places);
  }

  /** Walks over the part of a slice that lies on the given side of the weld centre. */
  private void go(StripBend.Bent bent, int side, List<StripBend.Place> places) {
    double outer = side * bent.position() + bent.length() / 2;
    double length = Math.min(bent.length(), outer);
    if (length <= 0) {
      return;
    }
    double turn = curvature.applyAsDouble(bent) * length;
    double half = turn / 2;
    double chord = half == 0 ? length : length * Math.sin(half) / half;
    distance += side * length;
    along += side * chord * Math.cos(slope + half);
    height += chord * Math.sin(slope + half);
    slope += turn;
    places.add(new StripBend.Place(distance, along, height));
  }
}
