package afterweld.metallurgy;

/**
 * What the metal at one point is like inside after everything that has happened to it. Immutable; a
 * {@link Metallurgy} makes it and carries it on.
 *
 * <p>One implementation per family of alloys: precipitates of magnesium and silicon, or cold work.
 */
public sealed interface State permits PrecipitateState, StoredWorkState {}
