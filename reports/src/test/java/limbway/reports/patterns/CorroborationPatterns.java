package limbway.reports.patterns;

import java.util.List;
import java.util.function.Predicate;

/** The even patterns: computed once the defaults stand, and reported as they come out. */
final class CorroborationPatterns {

    private static final Run HAY = Run.of("patterns/02-hay-hall");
    private static final Run ISLAND = Run.of("patterns/04-bare-island");
    private static final Run SWAYING = Run.of("patterns/06-swaying-poles").lasting(2, 10);
    private static final Run CAGE = Run.of("patterns/08-mesh-cage").lasting(4, 10);
    private static final Run WINGS = Run.of("patterns/10-gibbon-wings");
    private static final Run NIGHTS = Run.of("patterns/03-night-rooms");
    private static final Run LOGS = Run.of("patterns/18-logs-and-ropes");
    private static final Run MUCH = CalibrationPatterns.FOREST;
    private static final Run LITTLE = MUCH.in("little fruit");

    private static final Predicate<Piece> ALL = Shares.always();

    private CorroborationPatterns() {}

    static List<Pattern> all() {
        return List.of(hay(), island(), sway(), edge(), high(), path(), nests(), fruit(), slopes());
    }

    private static Pattern hay() {
        return new Pattern(
                2,
                "bedding and food on the floor",
                "Renner, abstract 4258, American Society of Primatologists",
                "bedding",
                List.of(new Part(
                        "time above 0.1 m, 15 to 18 h",
                        "22.8 %",
                        Unit.PERCENT,
                        Band.around(0.228),
                        Shares.share(HAY, piece -> piece.isBetween(15, 18), Shares.higherThan(0.1)))));
    }

    private static Pattern island() {
        return new Pattern(
                4,
                "little to climb on, food from the hand",
                "Kamaluddin et al. 2022, doi 10.1080/10888705.2021.1910032",
                "staff, restlessness",
                List.of(
                        part("time on the ground", 0.851, Shares.share(ISLAND, ALL, Piece::isOnGround)),
                        part("time resting", 0.60, Shares.share(ISLAND, ALL, Shares.resting())),
                        part("time feeding", 0.13, Shares.share(ISLAND, ALL, Shares.feeding())),
                        part("time moving", 0.09, Shares.share(ISLAND, ALL, Piece::travels))));
    }

    private static Part part(String words, double share, Measurement measurement) {
        String published = Unit.PERCENT.number(share) + " %";
        return new Part(words, published, Unit.PERCENT, Band.around(share), measurement);
    }

    private static Pattern sway() {
        Measurement swayJ = WayCosts.offGround(SWAYING, "start", "basket");
        Run stiff = SWAYING.in("stiff poles");
        return new Pattern(
                6,
                "sway, jump or climb down",
                "Thorpe et al. 2007, doi 10.1098/rsbl.2007.0049",
                "energy",
                List.of(
                        new Part(
                                "energy of swaying over that of a leap",
                                "below 0.5",
                                Unit.TIMES,
                                Band.within(0, 0.5),
                                swayJ.over(WayCosts.offGround(stiff, "start", "basket"))),
                        new Part(
                                "energy of swaying over that of the way by the ground",
                                "about 0.1",
                                Unit.TIMES,
                                Band.within(0.05, 0.15),
                                swayJ.over(WayCosts.overGround(stiff, "start", "basket"))),
                        new Part(
                                "travel off the ground while the pole sways",
                                "stays up",
                                Unit.PERCENT,
                                Band.atLeast(0.9),
                                Trips.offGround(SWAYING))));
    }

    private static Pattern edge() {
        return new Pattern(
                8,
                "near the edge of a cage",
                "Soubiea 2017, digitalcommons.cwu.edu/etd/628",
                "perimeter",
                List.of(part(
                        "time within arm's reach of the edge", 0.90, Shares.share(CAGE, ALL, Edge.withinReach()))));
    }

    private static Pattern high() {
        Run added = WINGS.in("high structures");
        Predicate<Piece> outdoors =
                piece -> piece.habitat().graph().place(piece.toHold()).yM() > 6;
        return new Pattern(
                10,
                "high structures added",
                "six gibbons, doi 10.1080/10888705.2014.916172",
                "height",
                List.of(
                        new Part(
                                "mean height, after less before",
                                "higher",
                                Unit.METRES,
                                Band.positive(),
                                Shares.mean(added, ALL, Piece::heightM).minus(Shares.mean(WINGS, ALL, Piece::heightM))),
                        new Part(
                                "time outdoors, after less before",
                                "more",
                                Unit.POINTS,
                                Band.positive(),
                                Shares.share(added, ALL, outdoors).minus(Shares.share(WINGS, ALL, outdoors)))));
    }

    private static Pattern path() {
        return new Pattern(
                12,
                "from nest to nest",
                "Wartmann et al. 2010, doi 10.1007/s10329-009-0186-6",
                "nests",
                List.of(new Part(
                        "distance between nests over path of the day",
                        "0.53",
                        Unit.TIMES,
                        Band.within(0.38, 0.68),
                        DayPath.netOverPath(MUCH))));
    }

    private static Pattern nests() {
        return new Pattern(
                14,
                "number of nests",
                "Ancrenaz et al. 2004, doi 10.1023/B:IJOP.0000043347.84757.9a; Rijksen, second-hand",
                "nights",
                List.of(new Part("nests a day", "1.0 to 1.8", Unit.TIMES, Band.within(1, 1.8), Nests.aDay(NIGHTS))));
    }

    private static Pattern fruit() {
        return new Pattern(
                16,
                "little fruit",
                "Soraya, 648 h, abstract; Danum, doi 10.1002/ajp.20848",
                "food",
                List.of(
                        new Part(
                                "rest, little fruit less much",
                                "more rest",
                                Unit.POINTS,
                                Band.positive(),
                                Shares.share(LITTLE, ALL, Shares.resting())
                                        .minus(Shares.share(MUCH, ALL, Shares.resting()))),
                        new Part(
                                "feeding, much fruit less little",
                                "less feeding",
                                Unit.POINTS,
                                Band.positive(),
                                Shares.share(MUCH, ALL, Shares.feeding())
                                        .minus(Shares.share(LITTLE, ALL, Shares.feeding()))),
                        part("rest, little fruit", 0.48, Shares.share(LITTLE, ALL, Shares.resting())),
                        part("feeding, little fruit", 0.225, Shares.share(LITTLE, ALL, Shares.feeding())),
                        part("rest, much fruit", 0.344, Shares.share(MUCH, ALL, Shares.resting())),
                        part("feeding, much fruit", 0.472, Shares.share(MUCH, ALL, Shares.feeding()))));
    }

    private static Pattern slopes() {
        return new Pattern(
                18,
                "gentle ascents",
                "chimpanzees of Sapporo, abstract",
                "energy",
                List.of(new Part(
                        "height gained at less than 40 degrees",
                        "logs below 40 degrees, ropes at 25",
                        Unit.PERCENT,
                        Band.atLeast(0.5),
                        Ascents.gentlerThan(LOGS, 40))));
    }
}
