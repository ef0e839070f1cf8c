/**
 * What stands in an enclosure, what a body can do in it and what each way costs.
 *
 * <p>This module knows no simulator, no chart and no file. Start reading at {@link limbway.model.enclosure.Enclosure},
 * follow it through {@code graph} into {@code route}.
 */
package limbway.model;
