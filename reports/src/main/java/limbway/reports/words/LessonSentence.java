package limbway.reports.words;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;

import limbway.model.body.Body;
import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.Support;
import limbway.model.route.Way;
import limbway.sim.journal.Motive;

/** The sentences of a lesson that hold its data. Energies are printed as {@code explain} prints them. */
public final class LessonSentence {

    private static final double MILLI = 1000;
    private static final String NO_WAY = "no way";

    private LessonSentence() {}

    /** What stands in the enclosure and who lives there. */
    public static String enclosure(String layout, int supports, int decks, int places, int animals) {
        return "This is the layout “" + layout + "”: " + count(supports, "support") + " (poles, ropes, beams, trees), "
                + count(decks, "platform") + ", " + count(places, "place") + " with food, water, shade or a bed, and "
                + count(animals, "animal") + ".";
    }

    /** Who travels, and what that body can do. */
    public static String animal(Body body, List<String> names) {
        return (names.size() == 1 ? "Meet " + names.get(0) : "Meet " + and(names)) + ", "
                + Figures.one(body.name()) + (names.size() == 1 ? "" : " each") + " of "
                + Figures.decimals(body.massKg(), 0) + " kg: reaches over gaps of up to "
                + Figures.metres(body.gapReachM())
                + ", grips what is up to " + Figures.thickness(body.gripDiameterM())
                + " thick and hugs rough stems of up to "
                + Figures.thickness(body.hugDiameterM()) + ".";
    }

    /** From where to where, why and how often. */
    public static String trip(Resource from, Resource to, List<Motive> motives, double tripsPerDay) {
        String made = motives.isEmpty()
                ? "In the days lived for this lesson nobody made it."
                : "In the days lived for this lesson it was made "
                        + (tripsPerDay < 0.1
                                ? "less than once in ten days"
                                : Figures.decimals(tripsPerDay, 1) + " times a day")
                        + " by animals of this body, because of "
                        + motives.stream().map(Motive::word).collect(Collectors.joining(" or ")) + ".";
        return "The trip: from " + place(from) + " to " + place(to) + ". " + made;
    }

    private static String place(Resource resource) {
        return resource.id() + " (" + resource.kind().word()
                + (resource.on().isEmpty() ? "" : ", on " + resource.on()) + ", "
                + (resource.at().zM() == 0
                        ? "on the ground"
                        : Figures.metres(resource.at().zM()) + " up") + ")";
    }

    /** One row of the table of places. */
    public static List<String> placeRow(Resource resource) {
        return List.of(
                resource.id(),
                resource.kind().word(),
                Figures.metres(resource.at().xM()),
                Figures.metres(resource.at().yM()),
                Figures.metres(resource.at().zM()),
                resource.on().isEmpty() ? "by coordinates" : resource.on());
    }

    /** The question before anything is shown. */
    public static String predict(Body body, String from, String to) {
        return "Which way will " + Figures.one(body.name()) + " go from " + from + " to " + to + "?";
    }

    /** What the model says, to whoever predicted. */
    public static String predicted(boolean isRight, LessonAnswers.Way right, double offGroundShare) {
        return (isRight ? "Right" : "Not so")
                + (right == LessonAnswers.Way.DEPENDS ? ", " : ": ")
                + right.words() + ". " + shares(offGroundShare);
    }

    /** What the model says. */
    public static String predicted(double offGroundShare, LessonAnswers.Way right) {
        return sentence(right.words()) + " " + shares(offGroundShare);
    }

    private static String shares(double offGroundShare) {
        if (offGroundShare == 0 || offGroundShare == 1) {
            return "In the model all such trips "
                    + (offGroundShare == 0 ? "go over the ground." : "stay off the ground.");
        }
        return "In the model " + Figures.percent(1 - offGroundShare) + " of such trips go over the ground and "
                + Figures.percent(offGroundShare) + " stay off it.";
    }

    /** Title of the drawing of both ways. */
    public static String bothWays(String from, String to) {
        return "The cheapest way of each kind from " + from + " to " + to;
    }

    /** Title of the bars of both ways. */
    public static String energyOf(String from, String to) {
        return "Energy of the ways from " + from + " to " + to + ", by part";
    }

    /** How long both ways are and take. */
    public static String ways(Optional<Way> over, Optional<Way> off) {
        return "Over the ground, dashed: " + way(over) + ". Off the ground, solid: " + way(off) + ".";
    }

    private static String way(Optional<Way> way) {
        return way.map(taken -> Figures.path(taken.lengthM()) + " in " + Figures.decimals(taken.seconds(), 0)
                        + " s for " + Figures.energy(taken.milliJ() / MILLI))
                .orElse("there is " + NO_WAY);
    }

    /** One row of the table of ways. */
    public static List<String> wayRow(boolean overGround, Optional<Way> way) {
        return List.of(
                overGround ? LessonText.OVER : LessonText.OFF,
                way.map(taken -> EnergyText.sum(taken.energy())).orElse(NO_WAY),
                way.map(taken -> Figures.path(taken.lengthM())).orElse(""),
                way.map(taken -> Figures.decimals(taken.seconds(), 0) + " s").orElse(""));
    }

    /** A question. */
    public static String whichPart(boolean overGround) {
        return "Which part of the way " + (overGround ? LessonText.OVER : LessonText.OFF) + " costs most?";
    }

    /** What one part costs of the whole. */
    public static String part(LocomotorMode mode, long milliJ, long totalMilliJ) {
        return sentence(PartText.doing(mode) + " takes " + energy(milliJ) + " of " + energy(totalMilliJ));
    }

    /** A question. */
    public static String byHowMuch(boolean groundWins) {
        return "By how much does the way " + (groundWins ? LessonText.OVER : LessonText.OFF) + " win, on each trip?";
    }

    /** Both energies and their difference. */
    public static String margin(boolean groundWins, long overMilliJ, long offMilliJ) {
        return sentence("over the ground " + energy(overMilliJ) + ", off the ground " + energy(offMilliJ) + ": the way "
                + (groundWins ? LessonText.OVER : LessonText.OFF) + " wins by "
                + energy(Math.abs(overMilliJ - offMilliJ)));
    }

    /** Right or wrong, and what is so. */
    public static String verdict(boolean isRight, String answer) {
        return (isRight ? "Right. " : "Not so. ") + answer;
    }

    /** Right or wrong, and which answer is right, where what is so does not name it. */
    public static String verdict(boolean isRight, String right, String answer) {
        return verdict(isRight, isRight ? answer : "The answer is: " + right + ". " + answer);
    }

    /** A reason as a sentence. */
    public static String because(String reason) {
        return sentence("because " + reason);
    }

    /** A clause as a sentence. */
    public static String sentence(String clause) {
        if (clause.isEmpty()) {
            return "";
        }
        int first = clause.codePointAt(0);
        return Character.toString(Character.toUpperCase(first)) + clause.substring(Character.charCount(first)) + ".";
    }

    /** A change. */
    public static String takeAway(String support) {
        return "take " + support + " away";
    }

    /** A change. */
    public static String putOnGround(String place) {
        return "put " + place + " on the ground below where it is";
    }

    /** A change: another layout of the scenario. */
    public static String build(String layout, String note) {
        return "build the layout “" + layout + "”" + (note.isEmpty() ? "" : ": " + note);
    }

    /** A question. */
    public static String whichTurns(Body body, String from, String to, boolean takesGround) {
        return "Which of these turns the trip of " + Figures.one(body.name()) + " from " + from + " to " + to
                + (takesGround ? " off the ground?" : " down to the ground?") + " One or more may, or none.";
    }

    /** What comes of a change. */
    public static String changed(
            boolean turns, OptionalLong overMilliJ, OptionalLong offMilliJ, double offGroundShare) {
        return (turns ? "Yes, this turns it: " : "No, this does not turn it: ") + "then over the ground "
                + energy(overMilliJ) + ", off the ground " + energy(offMilliJ)
                + (overMilliJ.isEmpty() && offMilliJ.isEmpty()
                        ? ". Nobody can make the trip any more."
                        : ", and " + Figures.percent(offGroundShare) + " of such trips stay off the ground.");
    }

    /** What is said to whoever chose none of the changes. */
    public static String none(List<String> turning, boolean takesGround) {
        return verdict(turning.isEmpty(), turning(turning, takesGround));
    }

    /** The other changes that turn the trip too; empty where there are none. */
    public static String alsoTurning(List<String> others) {
        return others.isEmpty() ? "" : " It is also turned if you " + String.join("; or if you ", others) + ".";
    }

    /** Which changes turn the trip. */
    public static String turning(List<String> changes, boolean takesGround) {
        return changes.isEmpty()
                ? "None of those tried is enough; more than one thing would have to change."
                : sentence("the trip is turned " + (takesGround ? "off the ground" : "down to the ground") + " if you "
                        + String.join("; or if you ", changes));
    }

    /** Title of the drawing of a change. */
    public static String changedDrawing(String change) {
        return "Both ways after a change that turns it: " + change;
    }

    /** One row of the table of changes. */
    public static List<String> changeRow(
            String change, OptionalLong overMilliJ, OptionalLong offMilliJ, double offGroundShare) {
        return List.of(change, energy(overMilliJ), energy(offMilliJ), Figures.percent(offGroundShare));
    }

    /** How the days were lived. */
    public static String run(int repetitions, int days) {
        return "One trip is not a day. For this lesson the group lived in each of these layouts for "
                + count(days, "day") + ", " + (repetitions == 1 ? "once" : repetitions + " times over")
                + ", under the same chance:";
    }

    /** One layout. */
    public static String layout(String name, String note) {
        return name + (note.isEmpty() ? "" : ": " + note);
    }

    /** Which layout is best, by how much, and whether that is sure. */
    public static String best(String best, String share, String next, String nextShare, String points, boolean isSure) {
        return "“" + best + "” has " + share + ", “" + next + "” " + nextShare + "; the difference is " + points
                + " percentage points under the same chance"
                + (isSure ? "." : ", which so short a run does not tell from nothing.");
    }

    /** Columns of the table of layouts. */
    public static List<String> dayHeaders(String taught) {
        return List.of("layout", "off the ground", "difference to “" + taught + "” [points]");
    }

    /** A question. */
    public static String whichTrap(Body body) {
        return "Which of these can " + Figures.one(body.name()) + " not use, although it looks as if it could?";
    }

    /** A support as a choice. */
    public static String support(Support support) {
        return support.id() + " (" + support.kind().word() + ", " + Figures.thickness(support.diameterM()) + " thick, "
                + support.material().word() + ")";
    }

    /** What is said to whoever chose a sound support. */
    public static String sound(String support, Body body, String answer) {
        return "Not so: " + Figures.one(body.name()) + " can use " + support + " all along. " + answer;
    }

    /** What would mend it. */
    public static String mend(String mend) {
        return sentence("to mend it: " + mend);
    }

    /** A question. */
    public static String whoCrosses(String places, double wideM) {
        return "A gap of " + Figures.metres(wideM) + " lies between " + places.replace(", ", " and ")
                + ". Who can cross it?";
    }

    /** A choice. */
    public static String only(List<String> bodies) {
        return "only some: " + and(bodies);
    }

    /** What the rule of shade asks. */
    public static String shadeRule(int platforms, int atLeast) {
        return "Common practice, without a source, asks that at every moment with sun at least " + atLeast
                + " rest platforms lie in shade, so that no animal can keep the only one for itself. Here "
                + (platforms == 1 ? "1 platform stands." : platforms + " platforms stand.");
    }

    /** A question. */
    public static String whichHours(LocalDate day, int atLeast) {
        return "On " + Hours.day(day) + ", the hardest day of the year here, when do fewer than " + atLeast
                + " rest platforms lie in shade?";
    }

    /** Title of the chart of shade. */
    public static String shadeChart(LocalDate day) {
        return "Fewest rest platforms in shade at once, hour by hour, on " + Hours.day(day);
    }

    /** At which hours shade is short. */
    public static String shadeAnswer(
            LocalDate day, List<Integer> hours, int breachMinutes, int sunMinutes, int yearMinutes) {
        if (hours.isEmpty()) {
            return "At no hour: on " + Hours.day(day) + " there is always enough, and so there is on all other days.";
        }
        return "Between " + String.join(", and between ", stretches(hours)) + " o’clock: for "
                + Hours.text(breachMinutes) + " of "
                + Hours.text(sunMinutes) + " with sun; in the whole year for " + Hours.text(yearMinutes)
                + ". Standard time, clear sky.";
    }

    /** Hours one after the other as one stretch. */
    private static List<String> stretches(List<Integer> hours) {
        List<String> stretches = new ArrayList<>();
        int first = hours.get(0);
        for (int i = 0; i < hours.size(); i++) {
            boolean ends = i + 1 == hours.size() || hours.get(i + 1) > hours.get(i) + 1;
            if (ends) {
                stretches.add(first + " and " + (hours.get(i) + 1));
                first = i + 1 < hours.size() ? hours.get(i + 1) : first;
            }
        }
        return stretches;
    }

    /** What rests on the worth of places. */
    public static String worth(String layout, String together, String alone) {
        return "Energy is not all. In “" + layout + "” " + together
                + " of the travel is off the ground when places are also worth "
                + "something for bedding, height, company and more, which is assumed; with needs and energy alone it is "
                + alone
                + ". What differs between the two rests on assumptions.";
    }

    /** What to write about. */
    public static String explain(Body body, String from, String to, boolean takesGround) {
        return "Explain to a colleague why " + Figures.one(body.name()) + " goes "
                + (takesGround ? LessonText.OVER : LessonText.OFF) + " from " + from + " to " + to
                + ", and what would turn it.";
    }

    /** What to try. */
    public static String toTry(String mend) {
        return sentence("to try: " + mend);
    }

    /** A change that turns the trip. */
    public static String turned(String change, boolean tookGround, OptionalLong overMilliJ, OptionalLong offMilliJ) {
        return sentence("what would turn it " + (tookGround ? "off the ground: " : "down to the ground: ") + change
                + "; then over the ground " + energy(overMilliJ) + ", off the ground " + energy(offMilliJ));
    }

    /** The share of one layout. */
    public static String dayOf(String layout, String share) {
        return sentence("in “" + layout + "” " + share + " of the travel is off the ground, by distance");
    }

    private static String energy(long milliJ) {
        return Figures.energy(milliJ / MILLI);
    }

    private static String energy(OptionalLong milliJ) {
        return milliJ.isPresent() ? energy(milliJ.getAsLong()) : NO_WAY;
    }

    /** A number of things. */
    public static String count(int number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }

    private static String and(List<String> words) {
        List<String> all = new ArrayList<>(words);
        if (all.size() < 2) {
            return String.join("", all);
        }
        String last = all.remove(all.size() - 1);
        return String.join(", ", all) + " and " + last;
    }
}
