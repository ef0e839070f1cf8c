package limbway.reports.data;

import java.util.List;
import java.util.Optional;

import limbway.model.link.Candidate;
import limbway.sim.experiment.link.Fragile;
import limbway.sim.experiment.link.FreshCheck;
import limbway.sim.experiment.link.LinkFindings;
import limbway.sim.experiment.link.LivedDifference;
import limbway.sim.experiment.link.Proposal;

/** A search for links as tables. */
public final class LinkTables {

    private static final int DECIMALS = 4;
    private static final int CENTIMETRES = 2;

    private LinkTables() {}

    /**
     * One row for each link of each proposal, and one for each support that may fail.
     *
     * @param found what a search found
     * @return two tables
     */
    public static List<CsvTable> of(LinkFindings found) {
        return List.of(links(found), fragile(found));
    }

    private static CsvTable links(LinkFindings found) {
        CsvTable table = new CsvTable(
                "links",
                "one link of a proposal, best proposal first; the links of a proposal are meant to be added together",
                List.of(
                        Field.whole("proposal", "place of the proposal, 1 for the best"),
                        Field.text("from", "one end, as a scenario says it"),
                        Field.text("to", "other end"),
                        Field.number("length_m", "length along the link between its ends [m]"),
                        Field.number("expected_gain", "expected gain of the off-ground share of today's trips [1]"),
                        Field.number(
                                "expected_flipped", "expected number of today's trips that leave the ground [1/d]"),
                        Field.number("gain", "gain of the off-ground share by distance, lived with [1]"),
                        Field.number("gain_lo", "lower end of its 95 % interval [1]"),
                        Field.number("gain_hi", "upper end of its 95 % interval [1]"),
                        Field.number("flipped", "how many fewer trips a day touch the ground, lived with [1/d]"),
                        Field.number("fresh_gain", "gain of the off-ground share by distance under fresh chance [1]"),
                        Field.number("fresh_lo", "lower end of its interval, corrected for all that were checked [1]"),
                        Field.number("fresh_hi", "upper end of its interval [1]"),
                        Field.number("fresh_p_holm", "its p value, corrected by Holm's method [1]"),
                        Field.text("fresh", "held up or did not hold up; empty where it was not checked")));
        for (int i = 0; i < found.proposals().size(); i++) {
            Proposal proposal = found.proposals().get(i);
            for (Candidate link : proposal.links()) {
                table.row(
                        i + 1,
                        link.from().words(),
                        link.to().words(),
                        CsvTable.number(link.lengthM(), CENTIMETRES),
                        CsvTable.number(proposal.expected().offGroundShare(), DECIMALS),
                        CsvTable.number(proposal.expected().flippedTripsPerDay(), CENTIMETRES),
                        mean(proposal.lived(), 1),
                        proposal.lived()
                                .flatMap(LivedDifference::offGround)
                                .map(gain -> CsvTable.number(gain.lo(), DECIMALS))
                                .orElse(""),
                        proposal.lived()
                                .flatMap(LivedDifference::offGround)
                                .map(gain -> CsvTable.number(gain.hi(), DECIMALS))
                                .orElse(""),
                        proposal.lived()
                                .map(lived ->
                                        CsvTable.number(lived.fewerGroundTrips().mean(), CENTIMETRES))
                                .orElse(""),
                        mean(fresh(proposal), 1),
                        fresh(proposal)
                                .flatMap(LivedDifference::offGround)
                                .map(gain -> CsvTable.number(gain.lo(), DECIMALS))
                                .orElse(""),
                        fresh(proposal)
                                .flatMap(LivedDifference::offGround)
                                .map(gain -> CsvTable.number(gain.hi(), DECIMALS))
                                .orElse(""),
                        proposal.fresh()
                                .map(check -> CsvTable.number(check.pHolm(), DECIMALS))
                                .orElse(""),
                        proposal.fresh()
                                .map(check -> check.heldUp() ? "held up" : "did not hold up")
                                .orElse(""));
            }
        }
        return table;
    }

    private static Optional<LivedDifference> fresh(Proposal proposal) {
        return proposal.fresh().map(FreshCheck::difference);
    }

    private static CsvTable fragile(LinkFindings found) {
        CsvTable table = new CsvTable(
                "fragile",
                "a support that may fail, worst first",
                List.of(
                        Field.text("support", "what fails"),
                        Field.text("falls_with_it", "supports, decks and crowns that come down with it"),
                        Field.text("lost_places", "places that are then used from the ground"),
                        Field.number("expected_loss", "expected loss of the off-ground share of today's trips [1]"),
                        Field.number(
                                "expected_grounded", "expected number of today's trips that go to the ground [1/d]"),
                        Field.number("loss", "loss of the off-ground share by distance, lived without it [1]")));
        for (Fragile one : found.fragile()) {
            table.row(
                    one.fall().cause(),
                    String.join(" ", one.fall().with()),
                    String.join(" ", one.fall().lost()),
                    CsvTable.number(-one.expected().offGroundShare(), DECIMALS),
                    CsvTable.number(-one.expected().flippedTripsPerDay(), CENTIMETRES),
                    mean(one.lived(), -1));
        }
        return table;
    }

    private static String mean(Optional<LivedDifference> lived, int sign) {
        return lived.flatMap(LivedDifference::offGround)
                .map(gain -> CsvTable.number(sign * gain.mean(), DECIMALS))
                .orElse("");
    }
}
