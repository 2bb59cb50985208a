package afterweld.casefile;

import afterweld.material.Alloy;
import afterweld.material.Element;
import java.util.List;
import java.util.Optional;

/**
 * The fillers to offer when a case names none, by the kind of the bases: the usual guidance of the
 * Aluminum Association and AWS (from memory) and of Armao in The Fabricator on 6061 and A356. A
 * first list only; crack tendency, colour and service temperature are judged elsewhere.
 */
final class SuitableFillers {
  private static final double LITTLE_MAGNESIUM = 1.0;
  private static final double MUCH_MAGNESIUM = 3.0;

  private static final List<String> FOR_6XXX =
      List.of("4043", "4643", "4943", "4047", "5356", "5183", "5556", "5554");
  private static final List<String> FOR_CASTINGS = List.of("4043", "4008", "4010", "4011", "4047");
  private static final List<String> FOR_PURE = List.of("1100", "4043", "4047", "5356");
  private static final List<String> FOR_MEDIUM_MAGNESIUM = List.of("5356", "5554", "5654");
  private static final List<String> FOR_HIGH_MAGNESIUM = List.of("5356", "5183", "5556");

  private SuitableFillers() {}

  /** Names out of {@code known} that suit both sides; all of them if nothing is certain. */
  static List<String> of(Optional<Alloy> left, Optional<Alloy> right, List<String> known) {
    if (left.isEmpty() || right.isEmpty()) {
      return known;
    }
    List<String> forRight = ofOne(right.get());
    List<String> both =
        ofOne(left.get()).stream().filter(forRight::contains).filter(known::contains).toList();
    return both.isEmpty() ? known : both;
  }

  private static List<String> ofOne(Alloy base) {
    return switch (base.family()) {
      case WROUGHT_HEAT_TREATABLE -> FOR_6XXX;
      case CAST_HEAT_TREATABLE -> FOR_CASTINGS;
      case WORK_HARDENED, FILLER_ONLY -> byMagnesium(base.composition().of(Element.MG));
    };
  }

  private static List<String> byMagnesium(double magnesium) {
    if (magnesium < LITTLE_MAGNESIUM) {
      return FOR_PURE;
    }
    return magnesium < MUCH_MAGNESIUM ? FOR_MEDIUM_MAGNESIUM : FOR_HIGH_MAGNESIUM;
  }
}
