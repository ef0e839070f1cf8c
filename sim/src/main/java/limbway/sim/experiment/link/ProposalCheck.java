package limbway.sim.experiment.link;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import limbway.model.link.Candidate;
import limbway.sim.habitat.Habitat;

/** Lives with the most promising links, and with the best of them once more in other replications. */
final class ProposalCheck {

    private final LinkQuestion question;
    private final Lives lives;
    private final List<Candidate> all;
    private final Additions additions;

    ProposalCheck(LinkQuestion question, Lives lives, List<Candidate> all) {
        this.question = question;
        this.lives = lives;
        this.all = all;
        this.additions = new Additions(question.layout());
    }

    /** Proposals from choices that are sorted best first; empty if it was stopped. */
    Optional<List<Proposal>> of(List<Choice> sorted) {
        List<Choice> choices = shown(sorted);
        List<Proposal> lived = new ArrayList<>();
        List<Proposal> others = new ArrayList<>();
        for (int i = 0; i < choices.size(); i++) {
            Choice choice = choices.get(i);
            List<Candidate> links = choice.links().stream().map(all::get).toList();
            if (i >= question.checked()) {
                others.add(new Proposal(links, choice.gain(), Optional.empty(), Optional.empty()));
                continue;
            }
            String stage = "living with " + (i + 1) + " of " + Math.min(question.checked(), choices.size());
            Optional<LivedDifference> difference = difference(links, LinkSearch.CHECK_FROM, stage);
            if (difference.isEmpty()) {
                return Optional.empty();
            }
            lived.add(new Proposal(links, choice.gain(), difference, Optional.empty()));
        }
        lived.sort(Comparator.comparingDouble(proposal -> -proposal.offGroundGain()));
        if (!lived.isEmpty()) {
            Proposal first = lived.get(0);
            Optional<LivedDifference> again =
                    difference(first.links(), LinkSearch.HELD_UP_FROM, "living with the best again");
            if (again.isEmpty()) {
                return Optional.empty();
            }
            lived.set(0, new Proposal(first.links(), first.expected(), first.lived(), again));
        }
        lived.addAll(others);
        return Optional.of(lived);
    }

    /** The best of each pair of supports, or set of such pairs, that gain anything. */
    private List<Choice> shown(List<Choice> choices) {
        Set<Set<String>> spans = new LinkedHashSet<>();
        List<Choice> shown = new ArrayList<>();
        for (Choice choice : choices) {
            if (question.links() > 0
                    && choice.gain().offGroundShare() > 0
                    && spans.add(Choice.spans(choice.links(), all))) {
                shown.add(choice);
            }
        }
        return shown;
    }

    private Optional<LivedDifference> difference(List<Candidate> links, int first, String stage) {
        return lives.difference(Additions.key(links), () -> habitat(links), first, stage);
    }

    private Habitat habitat(List<Candidate> links) {
        return question.habitat().apply(additions.variant(links));
    }
}
