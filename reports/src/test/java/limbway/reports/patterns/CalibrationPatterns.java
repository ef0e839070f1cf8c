package limbway.reports.patterns;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;

/** The odd patterns: these may be used to choose defaults. */
final class CalibrationPatterns {

    static final Run FOREST = Run.of("patterns/05-closed-canopy").lasting(4, 10);

    private static final Run HALL = Run.of("patterns/01-flooded-hall");
    private static final Run NIGHTS = Run.of("patterns/03-night-rooms");
    private static final Run HOUSE = Run.of("patterns/07-ape-house");
    private static final Run GROVE = Run.of("patterns/09-grove-with-gaps").lasting(3, 10);
    private static final Run FRAME = Run.of("patterns/11-thick-and-thin");
    private static final Run SUMMER = Run.of("patterns/13-seasons").on(LocalDate.of(2026, 7, 15));
    private static final Run WINTER = Run.of("patterns/13-seasons").on(LocalDate.of(2026, 1, 15));
    private static final Run FIGS = Run.of("patterns/15-four-figs").lasting(16, 16);
    private static final Run TOWER = Run.of("patterns/17-new-tower").in("tower").lasting(270, 10);

    private static final String MALE = "flanged male";
    private static final String FEMALE = "adult female";
    private static final String MOTHER = "adult female and infant";
    private static final String YOUNG = "juvenile";
    private static final String GIBBON = "white-handed gibbon";
    private static final String MACAQUE = "long-tailed macaque";

    private CalibrationPatterns() {}

    static List<Pattern> all() {
        return List.of(floorless(), floorBeds(), canopy(), room(), gaps(), classes(), hours(), company(), adoption());
    }

    private static Pattern floorless() {
        return new Pattern(
                1,
                "floor that cannot be used",
                "Hebert and Bard 2000, Zoo Biology 19:239-251",
                "energy",
                List.of(
                        new Part(
                                "time on the floor",
                                "1 %",
                                Unit.PERCENT,
                                Band.around(0.01),
                                Shares.share(HALL, Shares.always(), Piece::isOnGround)),
                        new Part(
                                "upper canopy less lower, share of time (above and below 5 m)",
                                "upper more",
                                Unit.POINTS,
                                Band.positive(),
                                Shares.share(HALL, Shares.always(), Shares.higherThan(5))
                                        .minus(Shares.share(
                                                HALL,
                                                Shares.always(),
                                                piece -> !piece.isOnGround() && piece.heightM() <= 5)))));
    }

    private static Pattern floorBeds() {
        return new Pattern(
                3,
                "bedding on a dry floor",
                "Samson and Shumaker 2015, doi 10.1159/000381056",
                "bedding",
                List.of(new Part(
                        "nights on the floor", "77 %", Unit.PERCENT, Band.around(0.77), Sleep.onGround(NIGHTS))));
    }

    private static Pattern canopy() {
        Measurement males = groundOf(MALE);
        Measurement females = groundOf(FEMALE);
        return new Pattern(
                5,
                "continuous canopy",
                "Ashbury et al. 2015, doi 10.1002/ajp.22460",
                "energy",
                List.of(
                        new Part(
                                "time of all on the ground",
                                "1 to 5 %",
                                Unit.PERCENT,
                                Band.atMost(0.05),
                                Shares.share(FOREST, Shares.always(), Piece::isOnGround)),
                        new Part(
                                "flanged male less female",
                                "male more",
                                Unit.POINTS,
                                Band.positive(),
                                males.minus(females)),
                        new Part(
                                "female less juvenile",
                                "female more",
                                Unit.POINTS,
                                Band.positive(),
                                females.minus(groundOf(YOUNG)))));
    }

    private static Measurement groundOf(String body) {
        return Shares.share(FOREST, Shares.ofBody(body), Piece::isOnGround);
    }

    private static Pattern room() {
        return new Pattern(
                7,
                "little of the room is used",
                "chimpanzees and gorillas, PubMed 20938928",
                "rest at fixed places",
                List.of(new Part(
                        "cells of half the time over all that can be reached",
                        "3.2 and 1.5 %",
                        Unit.PERCENT,
                        Band.atMost(0.05),
                        UsedRoom.halfOfTheTime(HOUSE))));
    }

    private static Pattern gaps() {
        return new Pattern(
                9,
                "widths of gaps crossed",
                "Cannon and Leighton 1994, Am. J. Phys. Anthropol. 93:505-524",
                "energy, leaps",
                List.of(
                        new Part(
                                "gibbon, middle of the commonest half metre",
                                "1.6 to 3.0 m",
                                Unit.METRES,
                                Band.within(1.6, 3.0),
                                Crossings.mode(GROVE, GIBBON)),
                        new Part(
                                "gibbon, share 1.6 to 3.0 m",
                                "42 %",
                                Unit.PERCENT,
                                Band.around(0.42),
                                Crossings.share(GROVE, GIBBON, 1.6, 3.0)),
                        new Part(
                                "gibbon, widest",
                                "9 m",
                                Unit.METRES,
                                Band.within(8, 10),
                                Crossings.widest(GROVE, GIBBON)),
                        new Part(
                                "macaque, share up to 0.5 m",
                                "50 %",
                                Unit.PERCENT,
                                Band.around(0.50),
                                Crossings.share(GROVE, MACAQUE, 0, 0.5)),
                        new Part(
                                "macaque, widest",
                                "3.5 m",
                                Unit.METRES,
                                Band.within(3, 4),
                                Crossings.widest(GROVE, MACAQUE))));
    }

    private static Pattern classes() {
        Predicate<Piece> travel = Piece::travels;
        Predicate<Piece> mother = Shares.ofBody(MOTHER);
        return new Pattern(
                11,
                "supports and heights by class",
                "Thorpe et al. 2009, doi 10.1073/pnas.0811537106; Sugardjito and van Hooff 1986, doi 10.1159/000156260",
                "stiffness, height",
                List.of(
                        new Part(
                                "diameter of females' supports less adolescents'",
                                "females stiffest",
                                Unit.MILLIMETRES,
                                Band.atLeast(0.001),
                                SupportsUsed.diameterM(FRAME, FEMALE)
                                        .minus(SupportsUsed.diameterM(FRAME, "adolescent"))),
                        new Part(
                                "height of females' travel less males'",
                                "males lower",
                                Unit.METRES,
                                Band.positive(),
                                height(travel.and(Shares.ofBody(FEMALE)))
                                        .minus(height(travel.and(Shares.ofBody(MALE))))),
                        new Part(
                                "mother's height at rest less in travel",
                                "rests higher",
                                Unit.METRES,
                                Band.positive(),
                                height(Shares.resting().and(mother)).minus(height(travel.and(mother))))));
    }

    private static Measurement height(Predicate<Piece> among) {
        return Shares.mean(FOREST, among, Piece::heightM);
    }

    private static Pattern hours() {
        Measurement midday = feedingBetween(11, 14);
        return new Pattern(
                13,
                "hours of the day",
                "wild, second-hand after Rijksen; Samson and Shumaker 2015, doi 10.1159/000381056",
                "needs, keepers' hours, sunset",
                List.of(
                        new Part(
                                "feeding 7 to 10 h less 11 to 14 h",
                                "peak in the morning",
                                Unit.POINTS,
                                Band.positive(),
                                feedingBetween(7, 10).minus(midday)),
                        new Part(
                                "feeding 14 to 17 h less 11 to 14 h",
                                "peak in the afternoon",
                                Unit.POINTS,
                                Band.positive(),
                                feedingBetween(14, 17).minus(midday)),
                        new Part(
                                "rest 11 to 14 h less 7 to 10 h",
                                "rest at midday",
                                Unit.POINTS,
                                Band.positive(),
                                restingBetween(11, 14).minus(restingBetween(7, 10))),
                        new Part(
                                "bed reached, summer",
                                "17:56",
                                Unit.CLOCK,
                                Band.within(15, 18),
                                Sleep.startHour(SUMMER)),
                        new Part(
                                "bed reached, winter",
                                "17:12",
                                Unit.CLOCK,
                                Band.within(15, 18),
                                Sleep.startHour(WINTER)),
                        new Part(
                                "bed later in summer",
                                "0.73 h",
                                Unit.CLOCK,
                                Band.within(0.23, 1.23),
                                Sleep.startHour(SUMMER).minus(Sleep.startHour(WINTER)))));
    }

    private static Measurement feedingBetween(double fromHour, double toHour) {
        return Shares.share(SUMMER, piece -> piece.isBetween(fromHour, toHour), Shares.feeding());
    }

    private static Measurement restingBetween(double fromHour, double toHour) {
        return Shares.share(SUMMER, piece -> piece.isBetween(fromHour, toHour), Shares.resting());
    }

    private static Pattern company() {
        return new Pattern(
                15,
                "dominants and crowds at food",
                "Utami et al., fig trees, abstract",
                "dominance, contests, food",
                List.of(
                        new Part(
                                "minutes of each other animal in a tree on days without the male, less on days with him",
                                "shorter with him",
                                Unit.MINUTES,
                                Band.positive(),
                                Visits.minutesLostToFirst(FIGS)),
                        new Part(
                                "animals together, one rich tree of four, less four alike",
                                "more where more food is",
                                Unit.TIMES,
                                Band.positive(),
                                Visits.company(FIGS.in("one rich")).minus(Visits.company(FIGS)))));
    }

    private static Pattern adoption() {
        return new Pattern(
                17,
                "new structures",
                "Finch et al. 2022, doi 10.3390/ani12162123; Ogden et al. 1990, PMC7165752",
                "familiarity",
                List.of(new Part(
                        "days until use is 63 % of its later level",
                        "28 d to more than 6 months", Unit.DAYS, Band.within(28, 200), Adoption.days(TOWER))));
    }
}
