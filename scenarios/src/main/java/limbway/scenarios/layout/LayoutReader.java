package limbway.scenarios.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Ground;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.Site;
import limbway.model.enclosure.Support;
import limbway.model.study.Feeding;
import limbway.scenarios.entry.PlaceWords;
import limbway.scenarios.entry.ResourceEntry;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;

/** Reads the entries of one layout into an enclosure and a feeding plan. */
public final class LayoutReader {

    /** Supports that one layout may have. */
    public static final int MOST_SUPPORTS = 20_000;

    /** Resources that one layout may have. */
    public static final int MOST_RESOURCES = 1_000;

    /** Entries of keepers that one layout may have. */
    public static final int MOST_FEEDINGS = 1_000;

    private final Site site;
    private final Ground ground;
    private final Surroundings surroundings;

    /**
     * A reader of layouts on one piece of ground.
     *
     * @param site where on Earth
     * @param ground what can be walked on
     */
    public LayoutReader(Site site, Ground ground) {
        this.site = site;
        this.ground = ground;
        this.surroundings = new Surroundings(ground);
    }

    /**
     * Reads one layout.
     *
     * @param sheet its entries
     * @param gone names that a variant removed; what still uses them was reported
     * @param problems where mistakes go
     * @return the layout, which means something only if no problem was added
     */
    public Layout read(Sheet sheet, Set<String> gone, Problems problems) {
        if (isTooLarge(sheet)) {
            problems.add(Problem.at(sheet.resourcesPlace(), "this layout is too large")
                    .found(sheet.supports().size() + " supports, "
                            + sheet.resources().size() + " resources, "
                            + sheet.keepers().size() + " entries of keepers")
                    .allowed("at most " + MOST_SUPPORTS + ", " + MOST_RESOURCES + " and " + MOST_FEEDINGS));
            return new Layout(enclosure(List.of(), List.of()), List.of());
        }
        Names names = Names.of(sheet, ground.obstacles(), gone, problems);
        Builder builder = new Builder(names, problems);
        List<Built> supports = builder.all();
        GroundRules rules = new GroundRules(surroundings, problems);
        rules.checkAll(supports);
        boolean complete = names.areSupportsSound()
                && supports.size() == names.supportIds().size();

        List<Extent> extents = supports.stream().map(Extent::of).toList();
        List<Resource> resources = new ArrayList<>();
        for (ResourceEntry entry : names.resources()) {
            Optional<Located> at = builder.locate(entry.where(), "place of " + entry.what());
            if (at.isPresent()) {
                if (complete && entry.where() instanceof PlaceWords.Coordinates) {
                    rules.check(entry, at.get().point(), extents);
                }
                resources.add(new Resource(
                        entry.id(), entry.kind(), at.get().point(), at.get().on(), entry.stalls()));
            }
        }
        List<Feeding> feedings = new FeedingPlan(names, problems).read(sheet);
        return new Layout(enclosure(supports, resources), feedings);
    }

    /**
     * Whether a layout has more entries than are read.
     *
     * @param sheet its entries
     * @return true if it is refused
     */
    public static boolean isTooLarge(Sheet sheet) {
        return sheet.supports().size() > MOST_SUPPORTS
                || sheet.resources().size() > MOST_RESOURCES
                || sheet.keepers().size() > MOST_FEEDINGS;
    }

    private Enclosure enclosure(List<Built> built, List<Resource> resources) {
        List<Support> supports = new ArrayList<>();
        List<Platform> platforms = new ArrayList<>();
        List<Crown> crowns = new ArrayList<>();
        for (Built one : built) {
            if (one instanceof Built.Member member) {
                supports.add(member.support());
                member.crown().ifPresent(crowns::add);
            } else if (one instanceof Built.Deck deck) {
                platforms.add(deck.platform());
            }
        }
        return new Enclosure(site, ground, supports, platforms, crowns, resources);
    }
}
