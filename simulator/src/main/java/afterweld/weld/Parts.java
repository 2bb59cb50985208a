package afterweld.weld;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is joined, and how it meets.
 *
 * @param left through or thicker part; negative distances
 * @param right other part; positive distances
 * @param joint how they meet
 * @param preparation how the edges are prepared
 * @param ring the tube, if the weld goes round one
 * @param seam start, end and length of a straight weld, if they count
 */
public record Parts(
    Side left,
    Side right,
    Joint joint,
    Preparation preparation,
    Optional<Ring> ring,
    Optional<Seam> seam) {
  /** Refuses what it cannot be. */
  public Parts {
    if (ring.isPresent() && seam.isPresent()) {
      throw new IllegalArgumentException("a ring and a seam in one weld");
    }
  }

  /** Thickness of the thinner part, m. */
  public double thinnest() {
    return Math.min(left.thickness(), right.thickness());
  }

  /** Whether they are tubes. */
  public boolean tubes() {
    return ring.isPresent() || joint == Joint.SOCKET;
  }

  Stream<Side> both() {
    return Stream.of(left, right);
  }
}
