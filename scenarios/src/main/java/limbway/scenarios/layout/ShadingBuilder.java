package limbway.scenarios.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import limbway.model.enclosure.Building;
import limbway.model.enclosure.Cover;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Shading;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Terrain;
import limbway.scenarios.entry.CoverEntry;
import limbway.scenarios.entry.CoverEntry.ByCorners;
import limbway.scenarios.entry.CoverEntry.OverDeck;
import limbway.scenarios.entry.Form;
import limbway.scenarios.entry.NeighbourEntry;
import limbway.scenarios.entry.NeighbourEntry.Block;
import limbway.scenarios.entry.NeighbourEntry.Tree;
import limbway.scenarios.entry.SupportEntry.DeckBySize;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Puts what gives shade alone into space: roofs, sails, buildings and trees beside the enclosure. */
final class ShadingBuilder {

    private static final List<Form> DECKS = List.of(Form.PLATFORM, Form.HAMMOCK);

    private final Names names;
    private final Terrain terrain;
    private final GroundRules rules;
    private final Problems problems;

    ShadingBuilder(Names names, Terrain terrain, GroundRules rules, Problems problems) {
        this.names = names;
        this.terrain = terrain;
        this.rules = rules;
        this.problems = problems;
    }

    Shading build(List<Built> supports) {
        Map<String, Built.Deck> decks = new LinkedHashMap<>();
        for (Built built : supports) {
            if (built instanceof Built.Deck deck) {
                decks.put(deck.platform().id(), deck);
            }
        }
        List<Cover> covers = new ArrayList<>();
        for (CoverEntry entry : names.all(CoverEntry.class)) {
            corners(entry, decks)
                    .filter(corners -> isOverMisplaced(entry, decks) || rules.covers(entry, corners))
                    .ifPresent(corners ->
                            covers.add(new Cover(entry.id(), entry.kind(), new Facet(corners), entry.transmittance())));
        }
        List<Building> buildings = new ArrayList<>();
        List<Crown> trees = new ArrayList<>();
        for (NeighbourEntry entry : names.all(NeighbourEntry.class)) {
            if (entry instanceof Block block) {
                building(block).ifPresent(buildings::add);
            } else {
                trees.add(crown((Tree) entry));
            }
        }
        return new Shading(covers, buildings, trees);
    }

    /** A roof over a deck that lies outside lies outside too; that needs no second message. */
    private boolean isOverMisplaced(CoverEntry entry, Map<String, Built.Deck> decks) {
        return entry.shape() instanceof OverDeck over
                && !rules.isWithin(decks.get(over.deck().text()).platform().centre());
    }

    private Optional<List<Point>> corners(CoverEntry entry, Map<String, Built.Deck> decks) {
        if (entry.shape() instanceof ByCorners stated) {
            return Optional.of(stated.corners());
        }
        OverDeck over = (OverDeck) entry.shape();
        // what a broken deck carries was told with it
        return isKnown(entry, over)
                ? Optional.ofNullable(decks.get(over.deck().text())).map(deck -> above(deck, over))
                : Optional.empty();
    }

    private boolean isKnown(CoverEntry entry, OverDeck over) {
        String id = over.deck().text();
        Optional<Form> kind = names.kind(id);
        if (kind.filter(DECKS::contains).isPresent() || names.isGone(id)) {
            return true;
        }
        List<String> known = names.namesOf(DECKS);
        problems.add(Problem.at(
                        over.deck().place(),
                        entry.what() + " is over an unknown platform "
                                + over.deck().shown())
                .found(kind.map(form ->
                                over.deck().shown() + " is declared as " + form.word() + ", which is no platform")
                        .orElse(""))
                .allowed(known.isEmpty() ? "the name of a platform or hammock" : Wording.list(known))
                .mend(problems.didYouMean(
                        id,
                        known,
                        known.isEmpty()
                                ? "add the platform, or give corners instead"
                                : "write the name of one of these, or give corners instead")));
        return false;
    }

    private static List<Point> above(Built.Deck deck, OverDeck over) {
        double turnDeg = deck.entry() instanceof DeckBySize sized ? sized.turnDeg() : 0;
        Point middle = deck.platform().centre().plus(new Point(over.shiftEastM(), over.shiftNorthM(), over.riseM()));
        Outline edge = Shapes.rectangle(middle, over.eastM(), over.northM(), turnDeg);
        return edge.corners().stream()
                .map(corner -> corner.atHeight(middle.zM()))
                .toList();
    }

    private Optional<Building> building(Block block) {
        return Levels.standing(
                        block.bottomM(),
                        block.topM(),
                        block.outline().corners(),
                        terrain,
                        block.place(),
                        block.what(),
                        problems)
                .map(levels -> new Building(block.id(), block.outline(), levels.baseM(), levels.topM()));
    }

    private Crown crown(Tree tree) {
        Point foot = Builder.placed(tree.foot(), terrain);
        return new Crown(
                tree.id(),
                "",
                foot,
                tree.crown().radiusM(),
                foot.zM() + tree.crown().baseM(),
                foot.zM() + tree.heightM(),
                tree.crown().foliage());
    }
}
