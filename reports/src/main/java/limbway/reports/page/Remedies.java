package limbway.reports.page;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import limbway.model.explain.GroundReason;
import limbway.reports.measure.Measures;
import limbway.reports.measure.PairTotal;
import limbway.reports.measure.PairUse;
import limbway.reports.words.Figures;
import limbway.reports.words.MendText;
import limbway.reports.words.ReasonText;

/** Which trips use the ground most, why, and what to try; each thing to try is told once. */
final class Remedies {

    private Remedies() {}

    static List<String> of(Measures measures, int most) {
        Set<String> told = new LinkedHashSet<>();
        List<String> remedies = new ArrayList<>();
        for (PairTotal total : measures.groundTotals()) {
            PairUse use = firstUse(measures, total);
            String mend = MendText.of(use.reason(), use.body());
            if (remedies.size() < most && told.add(key(use, mend))) {
                remedies.add("From " + total.from() + " to " + total.to() + " all animals together walk "
                        + Phrases.metres(total.groundMPerDay()) + " a day on the ground. For "
                        + Figures.one(use.body().name()) + ", with most metres, this is because "
                        + ReasonText.because(use.reason(), use.body())
                        + ". To try: " + mend + ".");
            }
        }
        return remedies;
    }

    /** Of a way that is too dear both directions are mended at once, whatever each costs. */
    private static String key(PairUse use, String mend) {
        if (!(use.reason() instanceof GroundReason.Dearer)) {
            return mend;
        }
        boolean inOrder = use.from().compareTo(use.to()) < 0;
        return inOrder ? use.from() + "\n" + use.to() : use.to() + "\n" + use.from();
    }

    private static PairUse firstUse(Measures measures, PairTotal total) {
        return measures.groundUse().stream()
                .filter(use -> use.from().equals(total.from()) && use.to().equals(total.to()))
                .findFirst()
                .orElseThrow();
    }
}
