package limbway.reports.measure;

import java.util.List;

import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

class LeapAuditTest {

    @Test
    void warnsOfBodiesThatLeapFartherThanTheyReach() {
        List<Finding> findings = LeapAudit.findings(List.of(body("white-handed gibbon")));
        assertEquals(
                List.of(
                        "a white-handed gibbon leaps up to 9 m, and leaps are not among the ways of this version, so gaps that "
                                + "it leaps send it to the ground"),
                findings.stream().map(Finding::text).toList());
    }

    @Test
    void saysNothingOfBodiesThatReachFartherThanTheyLeap() {
        assertEquals(List.of(), LeapAudit.findings(List.of(body("flanged male"), body("adolescent"))));
    }

    private static Body body(String name) {
        return BodyCatalogue.standard().find(name).orElseThrow();
    }
}
