package afterweld.choice.filler;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.choice.filler.FillerPurpose.Heat;
import afterweld.material.Alloy;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.material.MaterialLibrary;
import afterweld.section.Cases;
import afterweld.weld.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The pair table of the filler guides (from memory) is what the program says. */
class UsualFillersTest {
  private static final MaterialLibrary LIBRARY = MaterialLibrary.standard();
  private static final FillerPurpose TREATED = new FillerPurpose(Heat.FULL, false, false);
  private static final FillerPurpose AGED = new FillerPurpose(Heat.AGED, false, false);
  private static final FillerPurpose COLOUR = new FillerPurpose(Heat.WELDED, true, false);
  private static final FillerPurpose WARM = new FillerPurpose(Heat.WELDED, false, true);

  /** Alloys of the table that the library lacks: their pairs are skipped. */
  private static final Set<String> LACKING = Set.of("7005", "2219");

  private static UsualFillers pair(String one, String other) {
    return UsualFillers.of(LIBRARY.base(one).orElseThrow(), LIBRARY.base(other).orElseThrow());
  }

  private static List<FillerPair> rows() {
    return FillerPair.all().stream()
        .filter(row -> !LACKING.contains(row.base1()) && !LACKING.contains(row.base2()))
        .toList();
  }

  @Test
  void everyPairGivesItsFirstChoiceForEveryPurpose() {
    assertEquals(35, FillerPair.all().size());
    assertEquals(32, rows().size(), "three pairs hold 7005 or 2219");
    List<String> wrong = new ArrayList<>();
    for (FillerPair row : rows()) {
      UsualFillers usual = pair(row.base1(), row.base2());
      check(wrong, row, usual, FillerPurpose.WELDED, row.welded());
      if (!row.treated().isEmpty()) {
        check(wrong, row, usual, TREATED, row.treated());
      }
      check(wrong, row, usual, COLOUR, row.anodized().stream().toList());
      check(wrong, row, usual, WARM, row.warm().stream().toList());
      row.not().stream()
          .filter(name -> !name.equals(FillerOption.WITHOUT))
          .filter(name -> usual.suitable(FillerPurpose.WELDED).contains(name))
          .forEach(name -> wrong.add(row.bases() + " must not take " + name));
    }
    assertEquals(List.of(), wrong);
  }

  private static void check(
      List<String> wrong,
      FillerPair row,
      UsualFillers usual,
      FillerPurpose purpose,
      List<String> expected) {
    List<String> found = usual.suitable(purpose);
    boolean alike =
        expected.isEmpty()
            ? found.isEmpty()
            : found.size() >= expected.size() && found.subList(0, expected.size()).equals(expected);
    if (!alike) {
      wrong.add(row.bases() + ", " + purpose.label() + ": " + found + " for " + expected);
    }
  }

  @Test
  void everyOtherPairOfTheLibraryIsDerivedAlikeFromBothSides() {
    for (Alloy one : LIBRARY.bases()) {
      for (Alloy other : LIBRARY.bases()) {
        UsualFillers usual = UsualFillers.of(one, other);
        assertTrue(usual.pair().isPresent(), usual.bases());
        assertEquals(
            FillerPair.of(one.name(), other.name()).isEmpty(), usual.derived(), usual.bases());
        assertEquals(
            usual.suitable(FillerPurpose.WELDED),
            UsualFillers.of(other, one).suitable(FillerPurpose.WELDED),
            usual.bases());
      }
    }
  }

  @Test
  void derivedPairsAreThoseOfTheirRelatives() {
    // Filler charts of the trade, from memory.
    assertEquals("4043", first(pair("6060", "6005A"), FillerPurpose.WELDED));
    assertEquals("5356", first(pair("5083", "5086"), FillerPurpose.WELDED));
    assertEquals("5356", first(pair("6082", "5083"), FillerPurpose.WELDED));
    assertEquals("4643", first(pair("6082", "A357"), TREATED));
    assertEquals("5554", first(pair("1100", "5454"), WARM));
    // AWS A5.10, from memory: 4043 for 5454 to A356, none here where both sides hold over 3 %.
    assertEquals("4043", first(pair("5454", "A356"), FillerPurpose.WELDED));
    assertTrue(pair("5086", "A356").suitable(FillerPurpose.WELDED).isEmpty());
    assertFalse(pair("5454", "6061").suitable(FillerPurpose.WELDED).contains("4043"));
  }

  private static String first(UsualFillers usual, FillerPurpose purpose) {
    return usual.suitable(purpose).get(0);
  }

  @Test
  void furnaceAndMagnesiumExcludeEachOther() {
    for (FillerPair row : rows()) {
      for (FillerPurpose purpose : List.of(TREATED, AGED, WARM)) {
        for (String name : pair(row.base1(), row.base2()).suitable(purpose)) {
          Alloy filler = LIBRARY.filler(name).orElseThrow();
          assertFalse(MagnesiumRule.rich(filler.composition()), row.bases() + " " + name);
        }
      }
    }
    assertTrue(pair("6061", "5083").suitable(TREATED).isEmpty());
  }

  /** Charts of the trade rate 5183, 5556 and 5654 on 5052 and 5454 below 65 °C (from memory). */
  @Test
  void whatTheGuidesRateWellIsUsableAndNeverTheFirstChoice() {
    UsualFillers usual = pair("5454", "5454");
    assertEquals(
        List.of("5554", "5356", "5183", "5556", "5654"), usual.suitable(FillerPurpose.WELDED));
    assertEquals(List.of("5554"), usual.suitable(WARM), "over 3 % Mg");
    assertFalse(pair("1100", "A356").suitable(FillerPurpose.WELDED).contains("5356"));
    List<String> soft = pair("5052", "5052").suitable(FillerPurpose.WELDED);
    assertEquals(List.of("5356", "5554", "5654", "4043", "5183", "5556"), soft);
    assertFalse(soft.contains("4145"), "rated poor");
    for (Alloy one : LIBRARY.bases()) {
      LIBRARY.bases().forEach(other -> assertRatedComesLast(UsualFillers.of(one, other)));
    }
  }

  /** Filler charts go by the alloy, not by the lot; a lot over the border is noted. */
  @Test
  void aLotOverTheBorderOfMagnesiumIsNoted() {
    Composition silicon = LIBRARY.filler("4043").orElseThrow().composition();
    assertTrue(lot("5052", 2.8).richLot(silicon).orElseThrow().contains("2.80 % Mg"));
    assertTrue(lot("5052", 2.4).richLot(silicon).isEmpty());
    assertTrue(lot("5052", 2.8).suitable(FillerPurpose.WELDED).contains("4043"));
    List<String> byAlloy = lot("5454", 2.4).against("4043", FillerPurpose.WELDED);
    assertTrue(byAlloy.get(0).contains("by its standard"), byAlloy.toString());
  }

  private static UsualFillers lot(String alloy, double magnesium) {
    Side side = Cases.side(alloy, "H32", 3e-3);
    Side stated =
        new Side(
            side.alloy(),
            side.temper(),
            side.thickness(),
            side.width(),
            side.composition().with(Element.MG, magnesium));
    return UsualFillers.of(Cases.butt(alloy, "H32").withLeft(stated).withRight(stated).weldCase());
  }

  /** 5554 is not for full treatment of 6xxx (guides): its weld metal is no harder in a casting. */
  @Test
  void whatStaysSoftOnOneHardeningBaseDoesSoOnAnother() {
    assertTrue(pair("A356", "A356").keepsSoft("5554"));
    assertTrue(pair("6061", "A357").keepsSoft("5554"));
    assertFalse(pair("A356", "A356").keepsSoft("4043"));
    assertFalse(pair("5052", "5052").keepsSoft("5554"), "nothing hardens there");
  }

  /** What the strengths are not judged for stands beside the service that is not met. */
  @Test
  void anUnusualFillerIsSoInWarmServiceToo() {
    List<String> against = pair("5086", "5454").against("5554", WARM);
    assertEquals(2, against.size(), against.toString());
    assertTrue(against.get(0).startsWith("Not a usual filler for this pair"), against.toString());
    assertEquals(1, pair("5086", "5454").against("5356", WARM).size());
  }

  /** What is not usual is not so for a reason, where the guides give one. */
  @Test
  void anUnusualFillerIsToldByItsPoorRating() {
    assertEquals(
        List.of("Not a usual filler for this pair: the guides rate it low in ductility."),
        pair("3003", "3003").against("4047", FillerPurpose.WELDED));
  }

  private static void assertRatedComesLast(UsualFillers usual) {
    for (FillerPurpose purpose : List.of(FillerPurpose.WELDED, TREATED, AGED, COLOUR, WARM)) {
      List<String> found = usual.suitable(purpose);
      String words = usual.bases() + ", " + purpose.label() + ": " + found;
      assertTrue(found.isEmpty() || !usual.onlyRated(found.get(0)), words);
    }
  }
}
