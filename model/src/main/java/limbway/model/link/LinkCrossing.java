package limbway.model.link;

import limbway.model.body.Body;

/**
 * What one body pays to cross a link from end to end, or past it where that is cheaper.
 *
 * @param body who crosses
 * @param thereMilliJ from its start to its end [mJ], {@link limbway.model.route.ReverseTree#UNREACHABLE} if it cannot
 * @param backMilliJ from its end to its start [mJ], likewise
 */
public record LinkCrossing(Body body, int thereMilliJ, int backMilliJ) {}
