/**
 * Words of a scenario with their line and column.
 *
 * <p>Turns bytes into a tree of {@link limbway.scenarios.format.Node}s; knows YAML, but not what the words mean. Start at
 * {@link limbway.scenarios.format.YamlTree}. Anchors, aliases and tags are refused: they make a file shorter for a
 * program and harder for a keeper.
 */
package limbway.scenarios.format;
