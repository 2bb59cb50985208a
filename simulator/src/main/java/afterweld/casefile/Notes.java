package afterweld.casefile;

import afterweld.weld.Warning;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Gathers what the reader filled in by rule, for the notes of the case; each note once. */
final class Notes {
  private final Set<Warning> notes = new LinkedHashSet<>();

  void add(String code, String text) {
    notes.add(new Warning(code, text));
  }

  List<Warning> toList() {
    return List.copyOf(notes);
  }
}
