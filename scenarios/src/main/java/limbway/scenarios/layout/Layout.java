package limbway.scenarios.layout;

import limbway.model.enclosure.Enclosure;
import limbway.model.study.Keeping;

/**
 * One layout, read.
 *
 * @param enclosure what stands there
 * @param keeping what people do there
 */
public record Layout(Enclosure enclosure, Keeping keeping) {}
