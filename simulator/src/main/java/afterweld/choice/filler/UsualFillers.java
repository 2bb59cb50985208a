package afterweld.choice.filler;

import afterweld.choice.filler.FillerPurpose.Heat;
import afterweld.material.Alloy;
import afterweld.material.Composition;
import afterweld.material.FillerGuidance;
import afterweld.material.FillerGuidance.HeatTreatmentResponse;
import afterweld.material.MaterialLibrary;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.BrittleMix;
import afterweld.weldmetal.PoolMetals;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Which fillers of the library suit two bases for a purpose, the first choice first: by the row of
 * the filler guides for the pair ({@link FillerPair}), or of its nearest relatives ({@link
 * PairRule}); after those of the row the ones that the guides rate well on both bases. Where no row
 * serves, all that they rate on both.
 *
 * <p>Every purpose begins with its own first choice. Full treatment: no filler with more than 3 %
 * Mg and none whose weld metal the guides call one that does not harden; where the guides have no
 * row for it, what suits as welded. Aged only: what suits as welded and has at most 3 % Mg. A match
 * in colour: none of a filler rich in silicon, none at all on a casting. Over 65 °C: no metal with
 * more than 3 % Mg; 5554 where the silicon filler of the row would be brittle.
 */
public final class UsualFillers {
  private static final MaterialLibrary LIBRARY = MaterialLibrary.standard();
  private static final String WARM_MAGNESIUM = "5554";
  private static final String SOFT =
      "By the filler guides its weld metal does not harden in a furnace: not for a full treatment.";

  private final BaseMetal left;
  private final BaseMetal right;
  private final Optional<FillerPair> pair;

  private UsualFillers(BaseMetal left, BaseMetal right) {
    this.left = left;
    this.right = right;
    this.pair = PairRule.of(left.name(), right.name(), this::serves);
  }

  /** The fillers for the bases of a case. */
  public static UsualFillers of(WeldCase weldCase) {
    return new UsualFillers(BaseMetal.of(weldCase.left()), BaseMetal.of(weldCase.right()));
  }

  /** The fillers for two bases as the library has them. */
  public static UsualFillers of(Alloy left, Alloy right) {
    return new UsualFillers(BaseMetal.of(left), BaseMetal.of(right));
  }

  /** A row of relatives does not serve where its first choice is brittle on the real bases. */
  private boolean serves(FillerPair row) {
    return names(row) || row.welded().isEmpty() || !brittle(row.welded().get(0));
  }

  private boolean names(FillerPair row) {
    return FillerPair.of(left.name(), right.name()).filter(row::equals).isPresent();
  }

  /** The row that is used; empty where the guides have none, not even of relatives. */
  public Optional<FillerPair> pair() {
    return pair;
  }

  /** Both bases, as a sentence names them. */
  public String bases() {
    return left.name() + " to " + right.name();
  }

  /** Whether the row is that of relatives, since the guides have none for the bases themselves. */
  public boolean derived() {
    return pair.isPresent() && pair.filter(this::names).isEmpty();
  }

  /** The fillers that suit, the first choice first; empty where none does. */
  public List<String> suitable(FillerPurpose purpose) {
    return candidates(purpose).stream().filter(name -> against(name, purpose).isEmpty()).toList();
  }

  private Set<String> candidates(FillerPurpose purpose) {
    List<String> names = new ArrayList<>();
    pair.ifPresent(
        row -> {
          names.addAll(firstFor(row, purpose));
          names.addAll(byHeat(row, purpose.heat()));
          names.addAll(row.suiting());
          LIBRARY.fillers().stream().map(Alloy::name).filter(this::onlyRated).forEach(names::add);
        });
    if (pair.isEmpty()) {
      LIBRARY.fillers().stream().map(Alloy::name).filter(this::ratedOnBoth).forEach(names::add);
    }
    return new LinkedHashSet<>(names);
  }

  private List<String> firstFor(FillerPair row, FillerPurpose purpose) {
    Optional<String> warm = row.warm().map(name -> brittle(name) ? WARM_MAGNESIUM : name);
    return Stream.of(
            purpose.colour() ? row.anodized() : Optional.<String>empty(),
            purpose.warm() ? warm : Optional.<String>empty())
        .flatMap(Optional::stream)
        .toList();
  }

  private static List<String> byHeat(FillerPair row, Heat heat) {
    return heat == Heat.FULL && !row.treated().isEmpty() ? row.treated() : row.welded();
  }

  private boolean ratedOnBoth(String filler) {
    return LIBRARY.guidance(left.name(), filler).isPresent()
        && LIBRARY.guidance(right.name(), filler).isPresent();
  }

  /**
   * Whether the row does not name it and the guides rate it 1 or 2 of 4 on both bases in every
   * respect: usable, and never a first choice. A row that names no filler takes none.
   */
  boolean onlyRated(String filler) {
    return pair.filter(row -> !row.suiting().isEmpty() && !row.suiting().contains(filler))
            .isPresent()
        && Stream.of(left, right).allMatch(base -> ratedWell(base, filler));
  }

  private static boolean ratedWell(BaseMetal base, String filler) {
    return LIBRARY.guidance(base.name(), filler).filter(FillerGuidance::good).isPresent();
  }

  /**
   * What speaks against a filler for a purpose, a sentence each; empty if nothing does. Of metals
   * that the guides do not know, what they hold speaks alone.
   */
  List<String> against(FillerMetal filler, FillerPurpose purpose) {
    List<String> against = new ArrayList<>();
    boolean rich = MagnesiumRule.rich(filler.composition());
    if (rich && purpose.heat() == Heat.FULL) {
      against.add(MagnesiumRule.NO_FULL_TREATMENT);
    }
    if (!rich && purpose.heat() == Heat.FULL && keepsSoft(filler.name())) {
      against.add(SOFT);
    }
    if (rich && purpose.heat() == Heat.AGED) {
      against.add(MagnesiumRule.NOT_AGED);
    }
    PoolMetals pool = metals(Optional.of(filler.composition()));
    if (BrittleMix.forms(pool)) {
      against.add(BrittleMix.reason(pool));
    }
    if (against.isEmpty() && guided(filler)) {
      byPair(filler.name(), purpose).ifPresent(against::add);
    }
    if (purpose.warm()
        && (rich || MagnesiumRule.rich(left.metal()) || MagnesiumRule.rich(right.metal()))) {
      against.add(MagnesiumRule.NOT_WARM);
    }
    if (purpose.colour()) {
      ColourMatch.against(left, right, filler).ifPresent(against::add);
    }
    return against;
  }

  /** The same for a filler of the guides. */
  List<String> against(String name, FillerPurpose purpose) {
    return against(FillerMetal.of(LIBRARY.filler(name).orElseThrow()), purpose);
  }

  /**
   * Whether the guides say of it on a base that hardens that its weld metal does not; of a base
   * they don't speak of with it, what they say on the others.
   */
  boolean keepsSoft(String filler) {
    return Stream.of(left, right)
        .map(BaseMetal::name)
        .filter(base -> LIBRARY.base(base).filter(Alloy::heatTreatable).isPresent())
        .flatMap(base -> responses(base, filler))
        .anyMatch(HeatTreatmentResponse.NO::equals);
  }

  private static Stream<HeatTreatmentResponse> responses(String base, String filler) {
    Optional<FillerGuidance> own = LIBRARY.guidance(base, filler);
    return own.isPresent()
        ? own.stream().map(FillerGuidance::response)
        : LIBRARY.bases().stream()
            .filter(Alloy::heatTreatable)
            .flatMap(other -> LIBRARY.guidance(other.name(), filler).stream())
            .map(FillerGuidance::response);
  }

  private boolean guided(FillerMetal filler) {
    return LIBRARY.filler(filler.name()).isPresent()
        && Stream.of(left, right).allMatch(base -> LIBRARY.base(base.name()).isPresent());
  }

  private Optional<String> byPair(String filler, FillerPurpose purpose) {
    Optional<String> forbidden =
        pair.filter(row -> row.not().contains(filler) || row.suiting().isEmpty())
            .map(row -> capital(row.why()) + ".");
    return forbidden.isEmpty() && !candidates(purpose).contains(filler)
        ? Optional.of("Not a usual filler for this pair" + poorest(filler) + ".")
        : forbidden;
  }

  /** What the guides rate lowest of it, where they rate it on both bases and not well. */
  private String poorest(String filler) {
    List<String> poor =
        Stream.of(left, right)
            .flatMap(base -> LIBRARY.guidance(base.name(), filler).stream())
            .flatMap(words -> words.poor().stream())
            .distinct()
            .toList();
    return poor.isEmpty() || !ratedOnBoth(filler)
        ? ""
        : ": the guides rate it low in " + String.join(" and ", poor);
  }

  private static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  private boolean brittle(String filler) {
    return BrittleMix.forms(metals(LIBRARY.filler(filler).map(Alloy::composition)));
  }

  /** What to note of silicon filler on a lot that goes over the border its alloy keeps. */
  Optional<String> richLot(Composition filler) {
    return Stream.of(left, right)
        .flatMap(base -> BrittleMix.ofALot(base.metal(), nominal(base), filler).stream())
        .findFirst();
  }

  private PoolMetals metals(Optional<Composition> filler) {
    return new PoolMetals(nominal(left), nominal(right), filler, List.of());
  }

  /** As the guides know it: a lot a little richer than another is no other alloy. */
  private static Composition nominal(BaseMetal base) {
    return LIBRARY.base(base.name()).map(Alloy::composition).orElse(base.metal());
  }
}
