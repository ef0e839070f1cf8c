package limbway.sim.experiment.link;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

import limbway.model.link.Candidate;
import limbway.sim.habitat.Habitat;

/** Lives with the most promising links, and with those that gained once more in other replications. */
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
        if (!checkAfresh(lived)) {
            return Optional.empty();
        }
        lived.addAll(others);
        return Optional.of(lived);
    }

    /**
     * Lives once more, under fresh chance, with those of the first that gained anything; those that held up come first then. False
     * if it was stopped.
     */
    private boolean checkAfresh(List<Proposal> lived) {
        List<Proposal> first = lived.subList(0, Math.min(LinkSearch.MOST_FRESH, lived.size()));
        List<Integer> gained = IntStream.range(0, first.size())
                .filter(i -> gains(first.get(i)))
                .boxed()
                .toList();
        List<LivedDifference> differences = new ArrayList<>();
        for (int i : gained) {
            Optional<LivedDifference> again = difference(
                    first.get(i).links(),
                    LinkSearch.HELD_UP_FROM,
                    "living under fresh chance with " + (differences.size() + 1) + " of " + gained.size());
            if (again.isEmpty()) {
                return false;
            }
            differences.add(again.get());
        }
        List<FreshCheck> checks = FreshCheck.of(differences);
        for (int c = 0; c < checks.size(); c++) {
            Proposal one = first.get(gained.get(c));
            first.set(
                    gained.get(c), new Proposal(one.links(), one.expected(), one.lived(), Optional.of(checks.get(c))));
        }
        first.sort(Comparator.comparing(proposal -> !proposal.heldUp()));
        return true;
    }

    private static boolean gains(Proposal proposal) {
        return proposal.lived()
                .flatMap(LivedDifference::offGround)
                .map(gain -> gain.mean() > 0)
                .orElse(false);
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
