/**
 * Results as documents for programs: JSON with keys that stay, and CSV. Values and sentences come
 * from the answers they are made of; nothing is computed or judged here. Units stand in the keys,
 * every number has a fixed count of decimals, and null stands where the model gives no value.
 *
 * <pre>{@code
 * String json = RouteJson.of(weldCase, study, notices);
 * String csv = new ProfileCsv(profile, UnitSystem.US).text();
 * }</pre>
 */
package afterweld.document;
