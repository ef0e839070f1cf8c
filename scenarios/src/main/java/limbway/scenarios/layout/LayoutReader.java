package limbway.scenarios.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.Bounds;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Door;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Ground;
import limbway.model.enclosure.HotWire;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.Shading;
import limbway.model.enclosure.Site;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Terrain;
import limbway.model.study.Keeping;
import limbway.scenarios.entry.BarrierEntry;
import limbway.scenarios.entry.DoorEntry;
import limbway.scenarios.entry.HotWireEntry;
import limbway.scenarios.entry.PanelEntry;
import limbway.scenarios.entry.PlaceWords;
import limbway.scenarios.entry.PlacingEntry;
import limbway.scenarios.entry.ResourceEntry;
import limbway.scenarios.entry.Section;
import limbway.scenarios.entry.SupportEntry;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;

/** Reads the entries of one layout into an enclosure and a feeding plan. */
public final class LayoutReader {

    /** Entries of keepers that one layout may have. */
    public static final int MOST_FEEDINGS = 1_000;

    /** Entries of visitors that one layout may have. */
    public static final int MOST_VIEWPOINTS = 100;

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
            List<String> found = new ArrayList<>();
            List<String> allowed = new ArrayList<>();
            for (Section section : Section.values()) {
                if (sheet.in(section).size() > section.most()) {
                    found.add(sheet.in(section).size() + " " + section.key());
                    allowed.add("at most " + section.most() + " " + section.key());
                }
            }
            if (sheet.keepers().size() > MOST_FEEDINGS) {
                found.add(sheet.keepers().size() + " entries of keepers");
                allowed.add("at most " + MOST_FEEDINGS + " entries of keepers");
            }
            if (sheet.visitors().size() > MOST_VIEWPOINTS) {
                found.add(sheet.visitors().size() + " entries of visitors");
                allowed.add("at most " + MOST_VIEWPOINTS + " entries of visitors");
            }
            problems.add(Problem.at(sheet.resourcesPlace(), "this layout is too large")
                    .found(String.join(", ", found))
                    .allowed(String.join(", ", allowed)));
            return new Layout(
                    enclosure(List.of(), List.of(), Bounds.NONE, Shading.NONE, List.of()), Keeping.feeding(List.of()));
        }
        Terrain terrain = ground.terrain();
        Names names = Names.of(sheet, ground.obstacles(), gone, problems);
        Builder builder = new Builder(names, terrain, problems);
        List<Built> supports = builder.all();
        GroundRules rules = new GroundRules(surroundings, problems);
        rules.checkAll(supports);
        List<Panel> panels = new PanelBuilder(terrain, rules, problems).all(names.all(PanelEntry.class));
        Bounds bounds = bounds(names, panels, rules, problems);
        Shading shading = new ShadingBuilder(names, terrain, rules, problems).build(supports);
        boolean complete = names.areThingsSound()
                && supports.size() == names.all(SupportEntry.class).size()
                && panels.size() == names.all(PanelEntry.class).size();

        List<Extent> extents = new ArrayList<>();
        supports.forEach(built -> extents.add(Extent.of(built)));
        List<Resource> resources = new ArrayList<>();
        for (ResourceEntry entry : names.all(ResourceEntry.class)) {
            Optional<Located> at = builder.locate(entry.where(), "place of " + entry.what());
            if (at.isPresent()) {
                if (complete && entry.where() instanceof PlaceWords.Coordinates) {
                    rules.check(entry, at.get().point(), extents, panels);
                }
                resources.add(new Resource(
                        entry.id(), entry.kind(), at.get().point(), at.get().on(), entry.stalls(), entry.bedding()));
            }
        }
        Keeping keeping = new KeepingPlan(names, terrain, problems).read(sheet);
        return new Layout(enclosure(supports, panels, bounds, shading, resources), keeping);
    }

    /**
     * Finds the candidates for places in a layout whose entries were read before.
     *
     * @param sheet the entries of the layout
     * @param gone names that a variant removed; candidates on them are left out
     * @param spots the candidates
     * @param problems where mistakes of the candidates go
     * @return those that are there, in their order
     */
    public List<CandidateSpot> candidates(
            Sheet sheet, Set<String> gone, List<PlacingEntry.Spot> spots, Problems problems) {
        Problems told = new Problems();
        Names names = Names.of(sheet, ground.obstacles(), gone, told);
        Builder builder = new Builder(names, ground.terrain(), problems);
        List<CandidateSpot> found = new ArrayList<>();
        for (PlacingEntry.Spot spot : spots) {
            builder.locate(spot.where(), "place of a candidate")
                    .ifPresent(at -> found.add(new CandidateSpot(spot.words(), at.point(), at.on())));
        }
        return found;
    }

    private Bounds bounds(Names names, List<Panel> panels, GroundRules rules, Problems problems) {
        List<Barrier> barriers =
                new BarrierBuilder(ground.terrain(), rules, problems).all(names.all(BarrierEntry.class));
        List<HotWire> hotWires =
                new HotWireBuilder(ground.terrain(), rules, problems).all(names.all(HotWireEntry.class));
        List<Door> doors = new DoorBuilder(names, panels, barriers, problems).all(names.all(DoorEntry.class));
        return new Bounds(barriers, hotWires, doors);
    }

    /**
     * Whether a layout has more entries than are read.
     *
     * @param sheet its entries
     * @return true if it is refused
     */
    public static boolean isTooLarge(Sheet sheet) {
        return sheet.keepers().size() > MOST_FEEDINGS
                || sheet.visitors().size() > MOST_VIEWPOINTS
                || Stream.of(Section.values())
                        .anyMatch(section -> sheet.in(section).size() > section.most());
    }

    private Enclosure enclosure(
            List<Built> built, List<Panel> panels, Bounds bounds, Shading shading, List<Resource> resources) {
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
        return new Enclosure(site, ground, supports, platforms, crowns, panels, bounds, shading, resources);
    }
}
