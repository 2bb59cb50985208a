package afterweld.section.heat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The values that were asked for last, at most so many: whoever asks for one more pushes out the
 * one that nobody asked for longest. Safe for several threads.
 *
 * @param <K> what a value depends on
 * @param <V> value
 */
public final class Kept<K, V> {
  private static final float LOAD = 0.75f;

  private final int most;
  private final Map<K, V> values;

  /**
   * Nothing yet.
   *
   * @param most values at once
   */
  public Kept(int most) {
    this.most = most;
    this.values = new LinkedHashMap<>(most, LOAD, true);
  }

  /** The value kept for a key. */
  public synchronized Optional<V> find(K key) {
    return Optional.ofNullable(values.get(key));
  }

  /** Keeps a value unless one is kept for the key already; gives the one that is kept. */
  public synchronized V keep(K key, V value) {
    V known = values.putIfAbsent(key, value);
    if (values.size() > most) {
      values.remove(values.keySet().iterator().next());
    }
    return known == null ? value : known;
  }

  /** Forgets a value if it is the one kept for the key. */
  public synchronized void forget(K key, V value) {
    values.remove(key, value);
  }

  /** All values, the one that was asked for last first. */
  public synchronized Stream<V> values() {
    List<V> all = new ArrayList<>(values.values());
    Collections.reverse(all);
    return all.stream();
  }
}
