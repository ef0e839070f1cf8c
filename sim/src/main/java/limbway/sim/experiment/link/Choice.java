package limbway.sim.experiment.link;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import limbway.model.link.Candidate;
import limbway.model.link.Gain;

/** Some links, by number among the candidates, and what is expected of them. */
record Choice(List<Integer> links, Gain gain) {

    /** Best first; by number where two gain the same. */
    static Comparator<Choice> best() {
        return Comparator.comparingDouble((Choice choice) -> -choice.gain().offGroundShare())
                .thenComparing(choice -> choice.links().toString());
    }

    /** The pairs of supports that links span. */
    static Set<String> spans(List<Integer> links, List<Candidate> all) {
        Set<String> spans = new TreeSet<>();
        for (int link : links) {
            Candidate candidate = all.get(link);
            spans.add(new TreeSet<>(Set.of(candidate.from().on(), candidate.to().on())).toString());
        }
        return spans;
    }
}
