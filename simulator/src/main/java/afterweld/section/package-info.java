/**
 * The section across a weld: stations, zones, and hardness, yield and tensile strength before
 * welding, as welded and after every step of the furnace, with the error band of each.
 *
 * <p>{@link afterweld.section.WeldSession} makes an {@link afterweld.section.SectionProfile} from a
 * {@link afterweld.weld.WeldCase}: the heat of the passes ({@link
 * afterweld.section.heat.CaseHeat}), stations placed by peak temperature ({@code
 * StationPlacement}), each followed through weld and furnace ({@code SideRun}, {@code
 * SectionMetal}), named by what happened there ({@code ZoneRule}) and banded by what the model
 * missed on published tests ({@link afterweld.section.ErrorBand}). {@link
 * afterweld.section.WeldSession} keeps welds, so that another furnace schedule need not weld anew.
 *
 * <pre>{@code
 * WeldSession session = new WeldSession();
 * SectionProfile profile = session.profile(weldCase);
 * profile.states();                          // before welding, as welded (after 30 days), ...
 * profile.stations().get(0).estimates();     // one for each state: middle, low and high
 * }</pre>
 *
 * <p>Known limits stand in {@link afterweld.section.SectionProfile#warnings()} and travel with
 * every result.
 */
package afterweld.section;
