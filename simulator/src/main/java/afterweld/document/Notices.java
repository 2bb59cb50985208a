package afterweld.document;

import afterweld.choice.answer.Objection;
import afterweld.section.OverageingLimit;
import afterweld.section.SectionProfile;
import afterweld.section.soundness.Soundness;
import afterweld.weld.Warning;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a reader must know beside the numbers of a result.
 *
 * @param soundness whether the weld is a joint; a person reads it before all else
 * @param objections what stands against the heat treatment; a person reads them before the result
 * @param warnings of the case and of its section
 * @param cautions sentences
 */
public record Notices(
    Soundness soundness,
    List<Objection> objections,
    List<Warning> warnings,
    List<String> cautions) {
  private static final Warning NOT_PREDICTED =
      new Warning(
          "not-predicted",
          "The model gives no strength for the metal at some stations; their values are left out.");

  private static final Pattern FILLED_IN =
      Pattern.compile(
          ".*-by-default|.*-by-rule|.*-assumed|hardness-converted|temper-alias|quench-rate"
              + "|error-band|softest-place-uncertain|liquation-not-modelled");

  private static final Set<String> SAYS_WHY = Set.of(NOT_PREDICTED.code(), OverageingLimit.CODE);

  /** Copies the lists. */
  public Notices {
    objections = List.copyOf(objections);
    warnings = List.copyOf(warnings);
    cautions = List.copyOf(cautions);
  }

  /** The same with warnings of the result itself before them. */
  public Notices after(String code, List<String> own) {
    Stream<Warning> first = own.stream().map(text -> new Warning(code, text));
    return new Notices(
        soundness, objections, Stream.concat(first, warnings.stream()).toList(), cautions);
  }

  /** For programs: the last keys of a result. */
  public void addTo(Map<String, Object> json) {
    json.put("soundness", FindingsJson.soundness(soundness));
    json.put("objections", FindingsJson.objections(objections));
    json.put("warnings", FindingsJson.warnings(warnings));
    json.put("cautions", cautions);
  }

  /**
   * The warnings of the result and the notes of its case, each once, what matters most first. Where
   * a strength is missing and no warning says why, one says at least that.
   */
  public static List<Warning> of(SectionProfile profile) {
    Set<Warning> all = new LinkedHashSet<>(profile.warnings());
    all.addAll(profile.weldCase().notes());
    boolean said = all.stream().map(Warning::code).anyMatch(SAYS_WHY::contains);
    if (!said && anyMissing(profile)) {
      all.add(NOT_PREDICTED);
    }
    return all.stream().sorted(Comparator.comparing(Notices::background)).toList();
  }

  /** The same before what a part of the result warns of. */
  public static List<Warning> of(SectionProfile profile, List<Warning> own) {
    return Stream.concat(of(profile).stream(), own.stream()).toList();
  }

  /** What was filled in by rule and how far off any number may be comes after what is wrong. */
  private static boolean background(Warning warning) {
    return FILLED_IN.matcher(warning.code()).matches();
  }

  private static boolean anyMissing(SectionProfile profile) {
    return profile.stations().stream()
        .flatMap(station -> station.estimates().stream())
        .anyMatch(estimate -> !estimate.middle().predicted());
  }
}
