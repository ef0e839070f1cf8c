package limbway.sim.experiment.link;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Support;
import limbway.model.link.Expectation;
import limbway.model.link.Fall;
import limbway.model.link.Gain;
import limbway.model.link.WhatIf;
import limbway.model.study.Variant;
import limbway.sim.experiment.Workers;

/** Lets every support fail in thought, and lives without those that seem to hurt most. */
final class FallSearch {

    private final LinkQuestion question;
    private final SearchProgress progress;
    private final Lives lives;

    FallSearch(LinkQuestion question, SearchProgress progress, Lives lives) {
        this.question = question;
        this.progress = progress;
        this.lives = lives;
    }

    /** Those that were lived without, worst first, then the others as expected, worst first; empty if it was stopped. */
    Optional<List<Fragile>> find(WhatIf whatIf, Expectation expectation) {
        Enclosure enclosure = question.layout().enclosure();
        List<Fall> falls = enclosure.supports().stream()
                .map(Support::id)
                .map(id -> Fall.of(enclosure, id))
                .toList();
        Optional<List<Gain>> gains = Workers.all(
                falls.size(),
                question.settings().threads(),
                new Stage("letting supports fail", progress).begun(falls.size()),
                (i, stop) -> Optional.of(
                        expectation.gain(whatIf.compiled(falls.get(i).left()))));
        if (gains.isEmpty()) {
            return Optional.empty();
        }
        List<Fragile> fragile = new ArrayList<>();
        for (int i = 0; i < falls.size(); i++) {
            fragile.add(new Fragile(falls.get(i), gains.get().get(i), Optional.empty()));
        }
        Comparator<Fragile> worst = Comparator.comparingDouble((Fragile one) -> -one.offGroundLoss())
                .thenComparing(one -> one.fall().cause());
        fragile.sort(worst);
        for (int i = 0; i < Math.min(question.checkedFalls(), fragile.size()); i++) {
            Fragile one = fragile.get(i);
            Fall fall = one.fall();
            if (one.expected().offGroundShare() >= 0) {
                break;
            }
            Optional<LivedDifference> difference = lives.difference(
                    "without " + fall.cause(),
                    () -> question.habitat().apply(fallen(fall)),
                    LinkSearch.CHECK_FROM,
                    "living without " + fall.cause());
            if (difference.isEmpty()) {
                return Optional.empty();
            }
            fragile.set(i, new Fragile(fall, one.expected(), difference));
        }
        // losses that were lived and expected ones are on different scales; the first lead
        fragile.sort(
                Comparator.comparing((Fragile one) -> one.lived().isEmpty()).thenComparing(worst));
        return Optional.of(fragile);
    }

    private Variant fallen(Fall fall) {
        Variant layout = question.layout();
        Set<String> added = new TreeSet<>(layout.added());
        added.remove(fall.cause());
        added.removeAll(fall.with());
        return new Variant(layout.name(), layout.note(), fall.left(), layout.keeping(), added);
    }
}
