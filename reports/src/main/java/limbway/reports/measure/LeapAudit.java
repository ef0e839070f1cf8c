package limbway.reports.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.body.Body;
import limbway.reports.words.Figures;

/** Bodies that cross gaps in ways that no move stands for: they leap farther than they reach. */
final class LeapAudit {

    private LeapAudit() {}

    static List<Finding> findings(List<Body> bodies) {
        List<Finding> findings = new ArrayList<>();
        for (Body body : bodies) {
            if (body.leapM() > body.gapReachM()) {
                String shared =
                        "leaps are not among the ways of this version, so gaps that it leaps send it to the ground";
                String text = Figures.one(body.name()) + " leaps up to " + Figures.decimals(body.leapM(), 1)
                        + " m, and " + shared;
                findings.add(new Finding(
                        "leaps-left-out",
                        Weight.CAUTION,
                        "",
                        body.name(),
                        OptionalDouble.of(body.leapM()),
                        "m",
                        text,
                        "trust no share of travel off the ground for it; read only which gaps it reaches over",
                        text,
                        Optional.empty()));
            }
        }
        return findings;
    }
}
