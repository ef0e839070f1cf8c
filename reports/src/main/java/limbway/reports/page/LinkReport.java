package limbway.reports.page;

import limbway.model.enclosure.Enclosure;
import limbway.reports.data.LinkInfo;
import limbway.sim.experiment.link.LinkFindings;

/**
 * Everything that is told of a search for links.
 *
 * @param info how it was made
 * @param enclosure what stands there
 * @param found what was found
 */
public record LinkReport(LinkInfo info, Enclosure enclosure, LinkFindings found) {}
