package afterweld.casefile;

import afterweld.material.Alloy;
import afterweld.material.Alloy.Family;
import afterweld.material.Alloy.Limit;
import afterweld.material.Alloy.Use;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.material.Source;
import afterweld.material.Status;
import afterweld.material.Temper;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A few alloys for reading cases. Compositions and melting ranges are the nominal ones of the
 * Aluminum Association, from memory; nothing is computed from the rest.
 */
final class Metals {
  private static final Source MEMORY = new Source("Aluminum Association, nominal", Status.MEMORY);

  static final Alloy A6061 =
      alloy(
          "6061",
          Family.WROUGHT_HEAT_TREATABLE,
          Use.BASE,
          Map.of(Element.MG, 1.0, Element.SI, 0.6, Element.CU, 0.28, Element.CR, 0.2),
          855.15,
          "O",
          "T4",
          "T6");
  static final Alloy A6063 =
      alloy(
          "6063",
          Family.WROUGHT_HEAT_TREATABLE,
          Use.BASE,
          Map.of(Element.MG, 0.7, Element.SI, 0.4),
          889.15,
          "T1",
          "T4",
          "T5",
          "T6");
  static final Alloy A3003 =
      alloy(
          "3003",
          Family.WORK_HARDENED,
          Use.BASE,
          Map.of(Element.MN, 1.2, Element.CU, 0.12),
          916.15,
          "O",
          "H12",
          "H14",
          "H18");
  static final Alloy A5083 =
      alloy(
          "5083",
          Family.WORK_HARDENED,
          Use.BASE,
          Map.of(Element.MG, 4.4, Element.MN, 0.7),
          852.15,
          "O",
          "H116");
  static final Alloy A356 =
      alloy(
          "A356",
          Family.CAST_HEAT_TREATABLE,
          Use.BASE,
          Map.of(Element.SI, 7.0, Element.MG, 0.35),
          830.15,
          "T6");
  static final Alloy F4043 = filler("4043", Map.of(Element.SI, 5.2));
  static final Alloy F4643 = filler("4643", Map.of(Element.SI, 4.1, Element.MG, 0.2));
  static final Alloy F4145 = filler("4145", Map.of(Element.SI, 10.0, Element.CU, 4.0));
  static final Alloy F5356 = filler("5356", Map.of(Element.MG, 5.0, Element.MN, 0.12));
  static final Alloy F5183 = filler("5183", Map.of(Element.MG, 4.8, Element.MN, 0.75));

  static final List<Alloy> BASES = List.of(A6061, A6063, A3003, A5083, A356);
  static final List<Alloy> FILLERS = List.of(F4043, F4643, F4145, F5356, F5183);

  private Metals() {}

  private static Alloy filler(String name, Map<Element, Double> contents) {
    return alloy(name, Family.FILLER_ONLY, Use.FILLER, contents, 846.15);
  }

  private static Alloy alloy(
      String name,
      Family family,
      Use use,
      Map<Element, Double> contents,
      double solidus,
      String... tempers) {
    return new Alloy(
        name,
        family,
        List.of(use),
        Composition.of(contents),
        Map.of(Element.MG, new Limit(0.8, 1.2)),
        solidus,
        solidus + 70,
        2700,
        380e3,
        Map.of("all", 167.0),
        4e-4,
        Stream.of(tempers).map(Metals::temper).toList(),
        Optional.empty(),
        List.of());
  }

  private static Temper temper(String name) {
    return new Temper(name, Optional.empty(), Optional.empty(), MEMORY);
  }
}
