package limbway.reports.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.link.Candidate;
import limbway.reports.data.Json;
import limbway.reports.data.RunRecord;
import limbway.reports.page.LinkReport;
import limbway.reports.page.LinkText;
import limbway.sim.experiment.link.Fragile;
import limbway.sim.experiment.link.FreshCheck;
import limbway.sim.experiment.link.LivedDifference;
import limbway.sim.experiment.link.Proposal;
import limbway.sim.experiment.statistics.Interval;

/** The machine-readable answer of a search for links; shares from 0 to 1. */
final class LinkAnswer {

    private LinkAnswer() {}

    static Map<String, Object> of(LinkReport report) {
        Map<String, Object> root = report.info().record();
        root.put(
                "links",
                report.found().proposals().stream()
                        .map(proposal -> proposal(report, proposal))
                        .toList());
        root.put(
                "fragile",
                report.found().fragile().stream().map(LinkAnswer::fragile).toList());
        Map<String, Object> looked = new LinkedHashMap<>();
        looked.put("ties", report.found().candidates().ties());
        looked.put("pairs", report.found().candidates().pairs());
        looked.put("within_limits", report.found().candidates().all().size());
        looked.put("priced_locally", report.found().local());
        looked.put("compiled_sets", report.found().sets());
        looked.put("trips_per_day", report.found().tripsPerDay());
        looked.put("too_weak", report.found().candidates().tooWeak());
        report.found()
                .candidates()
                .refused()
                .forEach((limit, count) -> looked.put("refused_" + limit.name().toLowerCase(Locale.ROOT), count));
        root.put("candidates", looked);
        root.put("parameters", RunRecord.parameters(report.info().parameters()));
        return root;
    }

    private static Map<String, Object> proposal(LinkReport report, Proposal proposal) {
        Map<String, Object> one = new LinkedHashMap<>();
        Candidate first = proposal.links().get(0);
        one.putAll(link(first));
        List<Object> with = new ArrayList<>();
        proposal.links().subList(1, proposal.links().size()).forEach(link -> with.add(link(link)));
        one.put("offground_gain", gain(proposal));
        one.put(
                "flipped_trips_per_day",
                proposal.lived()
                        .map(lived -> lived.fewerGroundTrips().mean())
                        .orElse(proposal.expected().flippedTripsPerDay()));
        one.put("together_with", with);
        one.put("lived_with", proposal.lived().isPresent());
        one.put("nobody_travels", nobodyTravels(proposal.lived()));
        one.put("expected_gain", proposal.expected().offGroundShare());
        one.put("expected_flipped_trips_per_day", proposal.expected().flippedTripsPerDay());
        one.put("checked_afresh", proposal.fresh().isPresent());
        one.put(
                "held_up",
                proposal.fresh()
                        .map(FreshCheck::difference)
                        .flatMap(LivedDifference::offGround)
                        .map(Json::interval)
                        .orElse(null));
        one.put("held_up_p_holm", proposal.fresh().map(FreshCheck::pHolm).orElse(null));
        one.put(
                "held_up_verdict",
                proposal.fresh()
                        .map(fresh -> fresh.heldUp() ? "held up" : "did not hold up")
                        .orElse(null));
        one.put("sentence", LinkText.sentence(proposal));
        one.put("changes", LinkText.lines(report, proposal));
        return one;
    }

    /** As lived; else what is expected, which has no interval. */
    private static Map<String, Object> gain(Proposal proposal) {
        return proposal.lived()
                .flatMap(LivedDifference::offGround)
                .map(Json::interval)
                .orElseGet(() -> Json.interval(new Interval(proposal.offGroundGain(), OptionalDouble.empty(), 0)));
    }

    private static boolean nobodyTravels(Optional<LivedDifference> lived) {
        return lived.isPresent() && lived.get().offGround().isEmpty();
    }

    private static Map<String, Object> link(Candidate link) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("from", link.from().words());
        one.put("to", link.to().words());
        one.put("length_m", link.lengthM());
        return one;
    }

    private static Map<String, Object> fragile(Fragile fragile) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("support", fragile.fall().cause());
        one.put("offground_loss", fragile.offGroundLoss());
        one.put("expected_loss", -fragile.expected().offGroundShare());
        one.put(
                "lived_difference",
                fragile.lived()
                        .flatMap(LivedDifference::offGround)
                        .map(Json::interval)
                        .orElse(null));
        one.put("lived_without", fragile.lived().isPresent());
        one.put("nobody_travels", nobodyTravels(fragile.lived()));
        one.put("falls_with_it", List.copyOf(fragile.fall().with()));
        one.put("places_lost", List.copyOf(fragile.fall().lost()));
        return one;
    }
}
