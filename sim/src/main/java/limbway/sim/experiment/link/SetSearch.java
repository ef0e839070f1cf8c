package limbway.sim.experiment.link;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import limbway.model.link.Candidate;
import limbway.model.link.Expectation;
import limbway.model.link.Gain;
import limbway.model.link.Series;
import limbway.model.link.WhatIf;
import limbway.sim.experiment.Workers;

/**
 * Looks for links that gain more together than each of their parts: series along the ways of the trips, and what fits the best
 * smaller sets. The most promising are compiled.
 */
final class SetSearch {

    /** Sets that are compiled for each size. */
    private static final int COMPILED_SETS = 12;

    /** Smaller sets, and links, that are put together. */
    private static final int JOINED_SETS = 10;

    private static final int JOINED_LINKS = 60;

    /** A further link that adds less of the share is no part of a proposal. */
    private static final double LEAST_GAIN = 1e-3;

    private final LinkQuestion question;
    private final SearchProgress progress;
    private final List<Candidate> all;
    private final Additions additions;
    private final Series series;
    private final Expectation expectation;
    private final WhatIf whatIf;

    SetSearch(
            LinkQuestion question,
            SearchProgress progress,
            List<Candidate> all,
            Series series,
            Expectation expectation,
            WhatIf whatIf) {
        this.question = question;
        this.progress = progress;
        this.all = all;
        this.additions = new Additions(question.layout());
        this.series = series;
        this.expectation = expectation;
        this.whatIf = whatIf;
    }

    /** Sets of two and more, given all links best first; empty if it was stopped. */
    Optional<List<Choice>> find(List<Choice> singles) {
        List<Choice> found = new ArrayList<>();
        List<Choice> smaller = singles;
        for (int size = 2; size <= question.links(); size++) {
            Optional<List<Choice>> sets = ofSize(size, smaller, singles);
            if (sets.isEmpty()) {
                return Optional.empty();
            }
            smaller = sets.get();
            found.addAll(smaller);
        }
        return Optional.of(found);
    }

    /** Sets of one size that gain more than each of their parts, best first; empty if it was stopped. */
    private Optional<List<Choice>> ofSize(int size, List<Choice> smaller, List<Choice> singles) {
        List<List<Integer>> list = promising(pool(size, smaller, singles));
        Optional<List<Gain>> compiled = Workers.all(
                list.size(),
                question.settings().threads(),
                new Stage("compiling sets of " + size, progress).begun(list.size()),
                (i, stop) -> Optional.of(compiled(list.get(i))));
        if (compiled.isEmpty()) {
            return Optional.empty();
        }
        List<Gain> gains = compiled.get();
        List<Choice> parts = new ArrayList<>(smaller);
        parts.addAll(singles);
        List<Choice> found = new ArrayList<>();
        for (int i = 0; i < gains.size(); i++) {
            double partsGain = 0;
            for (Choice part : parts) {
                if (list.get(i).containsAll(part.links())) {
                    partsGain = Math.max(partsGain, part.gain().offGroundShare());
                }
            }
            if (gains.get(i).offGroundShare() > partsGain + LEAST_GAIN) {
                found.add(new Choice(list.get(i), gains.get(i)));
            }
        }
        found.sort(Choice.best());
        return Optional.of(found);
    }

    private Set<List<Integer>> pool(int size, List<Choice> smaller, List<Choice> singles) {
        Set<List<Integer>> pool = new LinkedHashSet<>(series.best(size));
        for (Choice choice : smaller.subList(0, Math.min(JOINED_SETS, smaller.size()))) {
            for (Choice one : singles.subList(0, Math.min(JOINED_LINKS, singles.size()))) {
                Set<Integer> joined = new TreeSet<>(choice.links());
                joined.addAll(one.links());
                if (joined.size() == size) {
                    pool.add(List.copyOf(joined));
                }
            }
        }
        return pool;
    }

    private List<List<Integer>> promising(Set<List<Integer>> pool) {
        List<Choice> estimated = new ArrayList<>();
        for (List<Integer> links : pool) {
            estimated.add(new Choice(links, expectation.gain(series.estimate(links))));
        }
        estimated.sort(Choice.best());
        Set<List<Integer>> chosen = new LinkedHashSet<>();
        Set<Set<String>> spans = new LinkedHashSet<>();
        for (Choice choice : estimated) {
            boolean isWanted = chosen.size() < COMPILED_SETS && choice.gain().offGroundShare() > 0;
            if (isWanted && fitTogether(choice.links()) && spans.add(Choice.spans(choice.links(), all))) {
                chosen.add(improved(choice));
            }
        }
        return List.copyOf(chosen);
    }

    /** Links that span the same two supports, or that would cross each other, are not put together. */
    private boolean fitTogether(List<Integer> links) {
        if (Choice.spans(links, all).size() < links.size()) {
            return false;
        }
        for (int i = 0; i < links.size(); i++) {
            for (int j = i + 1; j < links.size(); j++) {
                if (!all.get(links.get(i)).keepsApart(all.get(links.get(j)))) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Hangs each link of a set higher or lower between its two supports, as long as that is estimated to help. */
    private List<Integer> improved(Choice set) {
        Choice best = set;
        for (int place = 0; place < set.links().size(); place++) {
            for (int other : series.siblings(best.links().get(place))) {
                List<Integer> changed = new ArrayList<>(best.links());
                changed.set(place, other);
                Gain gain = expectation.gain(series.estimate(changed));
                if (gain.offGroundShare() > best.gain().offGroundShare() && fitTogether(changed)) {
                    best = new Choice(changed, gain);
                }
            }
        }
        return best.links().stream().sorted().toList();
    }

    private Gain compiled(List<Integer> links) {
        return expectation.gain(
                whatIf.compiled(additions.enclosure(links.stream().map(all::get).toList())));
    }
}
