package afterweld.choice.filler;

import afterweld.choice.filler.FillerPurpose.Heat;
import afterweld.material.MaterialLibrary;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.CrackTendency;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What to do instead where the filler of a case does not suit what it is chosen for: which others
 * do, or what the drawing has to give up where none does. Whoever follows it meets no other
 * objection to the filler. Source: {@link UsualFillers}.
 */
final class FillerAdvice {
  private static final int NAMED = 3;

  private final WeldCase weld;
  private final FillerPurpose purpose;
  private final UsualFillers usual;

  private FillerAdvice(WeldCase weld, FillerPurpose purpose) {
    this.weld = weld;
    this.purpose = purpose;
    this.usual = UsualFillers.of(weld);
  }

  /** Something that could be given up, and what a filler is chosen for without it. */
  private record GivenUp(String words, FillerPurpose rest) {}

  /** The advice, a sentence with a space before it. */
  static String instead(WeldCase weld, FillerPurpose purpose) {
    return new FillerAdvice(weld, purpose).instead();
  }

  private String instead() {
    List<String> suitable = suitable(purpose);
    List<String> sound = sound(purpose);
    if (!sound.isEmpty()) {
      String leave = asWelded().filter(one -> suits(one.rest())).map(GivenUp::words).orElse("");
      return " Take " + few(sound) + (leave.isEmpty() ? "" : ", or " + leave) + ".";
    }
    return suitable.isEmpty()
        ? " No filler suits" + givenUp() + "."
        : " By the guides "
            + few(suitable)
            + " would suit, but at the dilution of this joint it tends to crack: weld a trial piece"
            + " first.";
  }

  /** Each of which alone would do. */
  private String givenUp() {
    String ways =
        Stream.of(asWelded(), anyColour(), cool())
            .flatMap(Optional::stream)
            .filter(one -> suits(one.rest()) || !sound(one.rest()).isEmpty())
            .map(this::way)
            .collect(Collectors.joining(", or "));
    return ways.isEmpty() ? "" : ": " + ways;
  }

  private String way(GivenUp given) {
    return given.words() + (suits(given.rest()) ? "" : " and take " + few(sound(given.rest())));
  }

  private Optional<GivenUp> asWelded() {
    return Optional.of(new FillerPurpose(Heat.WELDED, purpose.colour(), purpose.warm()))
        .filter(rest -> !rest.equals(purpose))
        .map(rest -> new GivenUp("leave the joint as welded", rest));
  }

  private Optional<GivenUp> anyColour() {
    return Optional.of(new FillerPurpose(purpose.heat(), false, purpose.warm()))
        .filter(rest -> !rest.equals(purpose))
        .map(rest -> new GivenUp("give up the match in colour", rest));
  }

  private Optional<GivenUp> cool() {
    return Optional.of(new FillerPurpose(purpose.heat(), purpose.colour(), false))
        .filter(rest -> !rest.equals(purpose))
        .map(rest -> new GivenUp("use the part no warmer than " + MagnesiumRule.LIMIT, rest));
  }

  /** Whether the filler of the case itself suits. */
  private boolean suits(FillerPurpose other) {
    return weld.filler().alloy().map(FillerMetal::of).filter(own -> suits(own, other)).isPresent();
  }

  private boolean suits(FillerMetal filler, FillerPurpose other) {
    return FillerCheck.against(weld, usual, other, filler, filler.composition()).isEmpty();
  }

  /** Those of the guides that suit the bases as they are here. */
  private List<String> suitable(FillerPurpose other) {
    return usual.suitable(other).stream().filter(name -> suits(named(name), other)).toList();
  }

  /** Those that suit and do not crack at the dilution of the joint. */
  private List<String> sound(FillerPurpose other) {
    return suitable(other).stream().filter(name -> !cracks(named(name))).toList();
  }

  private static FillerMetal named(String name) {
    return FillerMetal.of(MaterialLibrary.standard().filler(name).orElseThrow());
  }

  private boolean cracks(FillerMetal filler) {
    double dilution = FillerComparison.dilution(weld).dilution();
    return CrackTendency.of(filler.welded(weld, dilution)) == CrackTendency.HIGH;
  }

  private static String few(List<String> names) {
    return String.join(" or ", names.subList(0, Math.min(NAMED, names.size())));
  }
}
