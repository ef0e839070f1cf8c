/**
 * What a scenario declares, entry by entry: poles, ropes, decks, food, animals, feedings.
 *
 * <p>Each entry is read by itself from a {@link limbway.scenarios.format.MappingNode}: keys, units and ranges are
 * checked, names of other entries are not yet looked up. {@link limbway.scenarios.entry.Form} lists every key,
 * {@link limbway.scenarios.entry.Quantity} every range. What the entries mean together is worked out in
 * {@code limbway.scenarios.layout}.
 */
package limbway.scenarios.entry;
