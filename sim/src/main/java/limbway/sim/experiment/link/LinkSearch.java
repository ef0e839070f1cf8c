package limbway.sim.experiment.link;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

import limbway.model.body.Body;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.RouteGraph;
import limbway.model.link.Candidate;
import limbway.model.link.Candidates;
import limbway.model.link.Errand;
import limbway.model.link.Expectation;
import limbway.model.link.LinkEffect;
import limbway.model.link.Series;
import limbway.model.link.WhatIf;
import limbway.model.route.Routes;
import limbway.sim.experiment.Experiment;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.Workers;
import limbway.sim.experiment.trial.Notebook;
import limbway.sim.habitat.Habitat;

/**
 * Searches for links that bring trips off the ground.
 *
 * <p>Trips are counted in a short run; every link within the limits is priced for them exactly; sets of two and three come
 * from series that are worth something together and from what fits the best smaller sets, and the most promising are
 * compiled; the best of all are lived with under the same chance as the layout as it stands, in replications that had no part
 * in the search, and those that gain once more in others.
 */
public final class LinkSearch {

    /** First replication of the checks; the trips are counted in those from 1. */
    public static final int CHECK_FROM = 1001;

    /** First replication of the check under fresh chance. */
    public static final int HELD_UP_FROM = 100_001;

    /** So many of the proposals that gained in the search are checked under fresh chance: as many as are told in sentences. */
    public static final int MOST_FRESH = 5;

    /** The most replications of a check; with more, that under fresh chance would meet the chance that chose. */
    public static final int MOST_REPLICATIONS = HELD_UP_FROM - CHECK_FROM;

    private final LinkQuestion question;
    private final List<Candidate> all;
    private final Notebook notebook;
    private final SearchProgress progress;

    private LinkSearch(LinkQuestion question, List<Candidate> all, Notebook notebook, SearchProgress progress) {
        this.question = question;
        this.all = all;
        this.notebook = notebook;
        this.progress = progress;
    }

    /**
     * Searches.
     *
     * @param question what is asked
     * @param candidates the links of the layout within the limits of the question
     * @param notebook where what takes long is looked up and noted
     * @param progress told how far it is; may stop it
     * @return what was found; empty if it was stopped, and then what was finished is noted
     * @throws IllegalArgumentException if the layout cannot be lived in
     */
    public static Optional<LinkFindings> run(
            LinkQuestion question, Candidates candidates, Notebook notebook, SearchProgress progress) {
        return new LinkSearch(question, candidates.all(), notebook, progress).search(candidates);
    }

    private Optional<LinkFindings> search(Candidates candidates) {
        Habitat habitat = question.habitat().apply(question.layout());
        Outcome outcome = Experiment.run(
                habitat,
                question.settings().repetitions(1, question.demandReplications()),
                question.day(),
                new Stage("counting trips", progress));
        if (!outcome.complete()) {
            return Optional.empty();
        }
        List<Errand> errands = DayErrands.of(outcome);
        Map<Body, Routes> routes = new LinkedHashMap<>();
        habitat.bodies().forEach(body -> routes.put(body, habitat.routes(body)));
        WhatIf whatIf = new WhatIf(
                question.layout().enclosure(),
                habitat.graph(),
                GraphSettings.forBodies(habitat.bodies()),
                habitat.energy(),
                routes,
                errands);
        Expectation expectation = new Expectation(errands, routes, habitat.sharpness());
        Optional<List<LinkEffect>> effects = effects(whatIf, errands.size(), habitat.bodies());
        if (effects.isEmpty()) {
            return Optional.empty();
        }
        List<Choice> choices = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            choices.add(
                    new Choice(List.of(i), expectation.gain(effects.get().get(i).costs())));
        }
        choices.sort(Choice.best());
        Optional<List<Choice>> sets = sets(choices, effects.get(), whatIf, expectation, habitat.graph(), routes);
        if (sets.isEmpty()) {
            return Optional.empty();
        }
        choices.addAll(sets.get());
        choices.sort(Choice.best());
        Lives lives = new Lives(question, () -> habitat, notebook, progress);
        Optional<List<Proposal>> proposals = new ProposalCheck(question, lives, all).of(choices);
        if (proposals.isEmpty()) {
            return Optional.empty();
        }
        Optional<List<Fragile>> fragile = new FallSearch(question, progress, lives).find(whatIf, expectation);
        if (fragile.isEmpty()) {
            return Optional.empty();
        }
        int local = (int) effects.get().stream().filter(LinkEffect::local).count();
        double trips = errands.stream().mapToDouble(Errand::tripsPerDay).sum();
        return Optional.of(
                new LinkFindings(candidates, local, sets.get().size(), trips, proposals.get(), fragile.get()));
    }

    /** The effect of each link, noted ones looked up; empty if it was stopped. */
    private Optional<List<LinkEffect>> effects(WhatIf whatIf, int errands, List<Body> bodies) {
        Additions additions = new Additions(question.layout());
        LinkEffect[] effects = new LinkEffect[all.size()];
        for (int i = 0; i < effects.length; i++) {
            effects[i] = notebook.find(priceKey(i))
                    .flatMap(values -> NotedFigures.effect(values, errands, bodies))
                    .orElse(null);
        }
        int[] open = IntStream.range(0, effects.length)
                .filter(i -> effects[i] == null)
                .toArray();
        int known = effects.length - open.length;
        Optional<List<LinkEffect>> priced = Workers.all(
                open.length,
                question.settings().threads(),
                new Stage("pricing links", progress, known).begun(open.length),
                (i, stop) -> {
                    LinkEffect effect = whatIf.effect(additions.alone(all.get(open[i])));
                    notebook.note(priceKey(open[i]), NotedFigures.of(effect));
                    return Optional.of(effect);
                });
        return priced.map(found -> {
            for (int i = 0; i < open.length; i++) {
                effects[open[i]] = found.get(i);
            }
            return Arrays.asList(effects);
        });
    }

    private String priceKey(int link) {
        return "price of " + Additions.words(all.get(link));
    }

    private Optional<List<Choice>> sets(
            List<Choice> singles,
            List<LinkEffect> effects,
            WhatIf whatIf,
            Expectation expectation,
            RouteGraph graph,
            Map<Body, Routes> routes) {
        if (question.links() < 2 || all.size() < 2) {
            return Optional.of(List.of());
        }
        Series series = new Series(graph, routes, whatIf, all, effects);
        return new SetSearch(question, progress, all, series, expectation, whatIf).find(List.copyOf(singles));
    }
}
