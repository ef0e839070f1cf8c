package limbway.sim.experiment.link;

import java.util.ArrayList;
import java.util.List;

import limbway.model.alteration.Alteration;
import limbway.model.alteration.FreeNames;
import limbway.model.enclosure.Enclosure;
import limbway.model.link.Candidate;
import limbway.model.study.Variant;

/** A layout with links added to it. */
final class Additions {

    private final Variant layout;

    Additions(Variant layout) {
        this.layout = layout;
    }

    Alteration.SupportAdded alone(Candidate link) {
        return link.alteration(FreeNames.ofLink(layout.enclosure(), 0));
    }

    Enclosure enclosure(List<Candidate> links) {
        Enclosure with = layout.enclosure();
        for (Alteration alteration : alterations(links)) {
            with = alteration.applyTo(with);
        }
        return with;
    }

    Variant variant(List<Candidate> links) {
        return Alteration.variant(layout, layout.name(), alterations(links));
    }

    private List<Alteration> alterations(List<Candidate> links) {
        List<Alteration> alterations = new ArrayList<>();
        for (int i = 0; i < links.size(); i++) {
            alterations.add(links.get(i).alteration(FreeNames.ofLink(layout.enclosure(), i)));
        }
        return alterations;
    }

    /** What tells a link from all others. */
    static String words(Candidate link) {
        return link.kind().word() + " " + link.diameterM() + " " + link.from().words() + " to "
                + link.to().words();
    }

    /** What tells a layout with links from all others. */
    static String key(List<Candidate> links) {
        return "with "
                + String.join(" and ", links.stream().map(Additions::words).toList());
    }
}
