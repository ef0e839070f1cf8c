package limbway.sim.experiment.link;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import limbway.model.alteration.Alteration;
import limbway.model.alteration.FreeNames;
import limbway.model.body.Body;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Support;
import limbway.model.graph.GraphSettings;
import limbway.model.link.Candidate;
import limbway.model.link.Candidates;
import limbway.model.link.Errand;
import limbway.model.link.Expectation;
import limbway.model.link.Fall;
import limbway.model.link.Gain;
import limbway.model.link.LinkEffect;
import limbway.model.link.Series;
import limbway.model.link.WhatIf;
import limbway.model.route.Routes;
import limbway.model.study.Variant;
import limbway.sim.experiment.Experiment;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.Progress;
import limbway.sim.experiment.trial.Notebook;
import limbway.sim.habitat.Habitat;

/**
 * Searches for links that bring trips off the ground.
 *
 * <p>Trips are counted in a short run; every link within the limits is priced for them exactly; sets of two and three come
 * from series that are worth something together and from what fits the best smaller sets, and the most promising are
 * compiled; the best of all are lived with under the same chance as the layout as it stands, in replications that had no part
 * in the search, and the best one once more in others.
 */
public final class LinkSearch {

    /** First replication of the checks; the trips are counted in those from 1. */
    public static final int CHECK_FROM = 1001;

    /** First replication of the last check of the best proposal. */
    public static final int HELD_UP_FROM = 100_001;

    /** Sets that are compiled for each size. */
    private static final int COMPILED_SETS = 12;

    /** Smaller sets, and links, that are put together. */
    private static final int JOINED_SETS = 10;

    private static final int JOINED_LINKS = 60;

    /** A further link that adds less of the share is no part of a proposal. */
    private static final double LEAST_GAIN = 1e-3;

    private final LinkQuestion question;
    private final Notebook notebook;
    private final SearchProgress progress;
    private final Enclosure enclosure;

    private LinkSearch(LinkQuestion question, Notebook notebook, SearchProgress progress) {
        this.question = question;
        this.notebook = notebook;
        this.progress = progress;
        this.enclosure = question.layout().enclosure();
    }

    /** Some links and what is expected of them. */
    private record Choice(List<Integer> links, Gain gain) {}

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
        return new LinkSearch(question, notebook, progress).search(candidates);
    }

    private Optional<LinkFindings> search(Candidates candidates) {
        Habitat habitat = question.habitat().apply(question.layout());
        Outcome outcome = Experiment.run(
                habitat,
                question.settings().repetitions(1, question.demandReplications()),
                question.day(),
                stage("counting trips"));
        if (!outcome.complete()) {
            return Optional.empty();
        }
        List<Errand> errands = Demand.of(outcome);
        Map<Body, Routes> routes = new LinkedHashMap<>();
        habitat.bodies().forEach(body -> routes.put(body, habitat.routes(body)));
        GraphSettings settings = GraphSettings.forBodies(habitat.bodies());
        WhatIf whatIf = new WhatIf(enclosure, habitat.graph(), settings, habitat.energy(), routes, errands);
        Expectation expectation = new Expectation(errands, routes, habitat.sharpness());
        List<Candidate> all = candidates.all();
        LinkEffect[] effects = new LinkEffect[all.size()];
        boolean priced = Workers.run(
                all.size(),
                question.settings().threads(),
                "pricing links",
                progress,
                i -> effects[i] = effect(whatIf, all.get(i), errands.size(), habitat.bodies()));
        if (!priced) {
            return Optional.empty();
        }
        List<Choice> choices = new ArrayList<>();
        for (int i = 0; i < effects.length; i++) {
            choices.add(new Choice(List.of(i), expectation.gain(effects[i].costs())));
        }
        choices.sort(best());
        int compiled = 0;
        if (question.links() > 1 && effects.length > 1) {
            Series series = new Series(habitat.graph(), routes, whatIf, all, Arrays.asList(effects));
            List<Choice> smaller = choices;
            for (int size = 2; size <= question.links(); size++) {
                Optional<List<Choice>> sets = sets(size, smaller, choices, all, series, expectation, whatIf);
                if (sets.isEmpty()) {
                    return Optional.empty();
                }
                smaller = sets.get();
                compiled += smaller.size();
                choices = new ArrayList<>(choices);
                choices.addAll(smaller);
                choices.sort(best());
            }
        }
        Lives lives = new Lives(question, () -> habitat, notebook);
        Optional<List<Proposal>> proposals = live(shown(choices, all), all, lives);
        if (proposals.isEmpty()) {
            return Optional.empty();
        }
        Optional<List<Fragile>> fragile = fragile(whatIf, expectation, lives);
        if (fragile.isEmpty()) {
            return Optional.empty();
        }
        int local = 0;
        for (Candidate candidate : all) {
            local += whatIf.isLocal(candidate.alteration(id(0))) ? 1 : 0;
        }
        double trips = errands.stream().mapToDouble(Errand::tripsPerDay).sum();
        return Optional.of(new LinkFindings(candidates, local, compiled, trips, proposals.get(), fragile.get()));
    }

    private static Comparator<Choice> best() {
        return Comparator.comparingDouble((Choice choice) -> -choice.gain().offGroundShare())
                .thenComparing(choice -> choice.links().toString());
    }

    private LinkEffect effect(WhatIf whatIf, Candidate link, int errands, List<Body> bodies) {
        String key = "price of " + words(link);
        Optional<LinkEffect> known = notebook.find(key).map(values -> Figures.effect(values, errands, bodies));
        if (known.isPresent()) {
            return known.get();
        }
        LinkEffect found = whatIf.effect(link.alteration(id(0)));
        notebook.note(key, Figures.of(found));
        return found;
    }

    /** Sets of one size that gain more than each of their parts, best first; empty if it was stopped. */
    private Optional<List<Choice>> sets(
            int size,
            List<Choice> smaller,
            List<Choice> singles,
            List<Candidate> all,
            Series series,
            Expectation expectation,
            WhatIf whatIf) {
        Set<List<Integer>> pool = new LinkedHashSet<>(series.best(size));
        List<Choice> ones =
                singles.stream().filter(choice -> choice.links().size() == 1).toList();
        for (Choice choice : smaller.subList(0, Math.min(JOINED_SETS, smaller.size()))) {
            for (Choice one : ones.subList(0, Math.min(JOINED_LINKS, ones.size()))) {
                Set<Integer> joined = new TreeSet<>(choice.links());
                joined.addAll(one.links());
                if (joined.size() == size) {
                    pool.add(List.copyOf(joined));
                }
            }
        }
        List<Choice> estimated = new ArrayList<>();
        for (List<Integer> links : pool) {
            estimated.add(new Choice(links, expectation.gain(series.estimate(links))));
        }
        estimated.sort(best());
        Set<List<Integer>> chosen = new LinkedHashSet<>();
        Set<Set<String>> spans = new LinkedHashSet<>();
        for (Choice choice : estimated) {
            boolean isWanted = chosen.size() < COMPILED_SETS && choice.gain().offGroundShare() > 0;
            if (isWanted && fitTogether(choice.links(), all) && spans.add(spans(choice.links(), all))) {
                chosen.add(improved(choice, all, series, expectation).links());
            }
        }
        List<List<Integer>> list = List.copyOf(chosen);
        Gain[] gains = new Gain[list.size()];
        boolean done = Workers.run(
                gains.length,
                question.settings().threads(),
                "compiling sets of " + size,
                progress,
                i -> gains[i] = compiled(list.get(i), all, whatIf, expectation));
        if (!done) {
            return Optional.empty();
        }
        List<Choice> found = new ArrayList<>();
        for (int i = 0; i < gains.length; i++) {
            double partsGain = 0;
            for (Choice part : join(smaller, ones)) {
                if (list.get(i).containsAll(part.links())) {
                    partsGain = Math.max(partsGain, part.gain().offGroundShare());
                }
            }
            if (gains[i].offGroundShare() > partsGain + LEAST_GAIN) {
                found.add(new Choice(list.get(i), gains[i]));
            }
        }
        found.sort(best());
        return Optional.of(found);
    }

    private static List<Choice> join(List<Choice> some, List<Choice> others) {
        List<Choice> all = new ArrayList<>(some);
        all.addAll(others);
        return all;
    }

    /** Links that span the same two supports, or that would cross each other, are not put together. */
    private static boolean fitTogether(List<Integer> links, List<Candidate> all) {
        if (spans(links, all).size() < links.size()) {
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

    private static Set<String> spans(List<Integer> links, List<Candidate> all) {
        Set<String> spans = new TreeSet<>();
        for (int link : links) {
            spans.add(span(all.get(link)));
        }
        return spans;
    }

    private static String span(Candidate link) {
        return new TreeSet<>(Set.of(link.from().on(), link.to().on())).toString();
    }

    /** Hangs each link of a set higher or lower between its two supports, as long as that is estimated to help. */
    private static Choice improved(Choice set, List<Candidate> all, Series series, Expectation expectation) {
        Choice best = set;
        for (int place = 0; place < set.links().size(); place++) {
            for (int other : series.siblings(best.links().get(place))) {
                List<Integer> changed = new ArrayList<>(best.links());
                changed.set(place, other);
                Gain gain = expectation.gain(series.estimate(changed));
                if (gain.offGroundShare() > best.gain().offGroundShare() && fitTogether(changed, all)) {
                    best = new Choice(changed, gain);
                }
            }
        }
        return new Choice(best.links().stream().sorted().toList(), best.gain());
    }

    private Gain compiled(List<Integer> links, List<Candidate> all, WhatIf whatIf, Expectation expectation) {
        Enclosure with = enclosure;
        for (Alteration alteration : alterations(links.stream().map(all::get).toList())) {
            with = alteration.applyTo(with);
        }
        return expectation.gain(whatIf.compiled(with));
    }

    private List<Alteration> alterations(List<Candidate> links) {
        List<Alteration> alterations = new ArrayList<>();
        for (int i = 0; i < links.size(); i++) {
            alterations.add(links.get(i).alteration(id(i)));
        }
        return alterations;
    }

    private String id(int place) {
        return FreeNames.of(enclosure, "link", place);
    }

    /** The best of each pair of supports, or set of such pairs, that gain anything. */
    private List<Choice> shown(List<Choice> choices, List<Candidate> all) {
        Set<Set<String>> spans = new LinkedHashSet<>();
        List<Choice> shown = new ArrayList<>();
        for (Choice choice : choices) {
            if (question.links() > 0 && choice.gain().offGroundShare() > 0 && spans.add(spans(choice.links(), all))) {
                shown.add(choice);
            }
        }
        return shown;
    }

    private Optional<List<Proposal>> live(List<Choice> choices, List<Candidate> all, Lives lives) {
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
            Optional<Difference> difference =
                    lives.difference(key(links), () -> habitat(links), CHECK_FROM, stage(stage));
            if (difference.isEmpty()) {
                return Optional.empty();
            }
            lived.add(new Proposal(links, choice.gain(), difference, Optional.empty()));
        }
        lived.sort(Comparator.comparingDouble(
                proposal -> -proposal.lived().orElseThrow().offGround().mean()));
        if (!lived.isEmpty()) {
            Proposal first = lived.get(0);
            Optional<Difference> again = lives.difference(
                    key(first.links()),
                    () -> habitat(first.links()),
                    HELD_UP_FROM,
                    stage("living with the best again"));
            if (again.isEmpty()) {
                return Optional.empty();
            }
            lived.set(0, new Proposal(first.links(), first.expected(), first.lived(), again));
        }
        lived.addAll(others);
        return Optional.of(lived);
    }

    private Habitat habitat(List<Candidate> links) {
        Variant with = Alteration.variant(question.layout(), question.layout().name(), alterations(links));
        return question.habitat().apply(with);
    }

    private Optional<List<Fragile>> fragile(WhatIf whatIf, Expectation expectation, Lives lives) {
        List<Fall> falls = enclosure.supports().stream()
                .map(Support::id)
                .map(id -> Fall.of(enclosure, id))
                .toList();
        Gain[] gains = new Gain[falls.size()];
        boolean done = Workers.run(
                gains.length,
                question.settings().threads(),
                "letting supports fail",
                progress,
                i -> gains[i] = expectation.gain(whatIf.compiled(falls.get(i).left())));
        if (!done) {
            return Optional.empty();
        }
        List<Fragile> fragile = new ArrayList<>();
        for (int i = 0; i < gains.length; i++) {
            fragile.add(new Fragile(falls.get(i), gains[i], Optional.empty()));
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
            Optional<Difference> difference = lives.difference(
                    "without " + fall.cause(),
                    () -> question.habitat().apply(fallen(fall)),
                    CHECK_FROM,
                    stage("living without " + fall.cause()));
            if (difference.isEmpty()) {
                return Optional.empty();
            }
            fragile.set(i, new Fragile(fall, one.expected(), difference));
        }
        fragile.sort(worst);
        return Optional.of(fragile);
    }

    private Variant fallen(Fall fall) {
        Variant layout = question.layout();
        Set<String> added = new TreeSet<>(layout.added());
        added.remove(fall.cause());
        added.removeAll(fall.with());
        return new Variant(layout.name(), layout.note(), fall.left(), layout.keeping(), added);
    }

    private static String words(Candidate link) {
        return link.kind().word() + " " + link.diameterM() + " " + link.from().words() + " to "
                + link.to().words();
    }

    private static String key(List<Candidate> links) {
        return "with "
                + String.join(" and ", links.stream().map(LinkSearch::words).toList());
    }

    private Progress stage(String words) {
        return new Progress() {
            @Override
            public void finished(int done, int total) {
                progress.at(words, done, total);
            }

            @Override
            public boolean wantsStop() {
                return progress.wantsStop();
            }
        };
    }
}
