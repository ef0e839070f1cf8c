package limbway.reports.measure;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.light.Daylight;
import limbway.model.study.Feeding;
import limbway.sim.habitat.Habitat;
import limbway.sim.habitat.KeepersHours;

/** Places that are shut when they are needed: at all hours, or nests when the sun sets. */
final class ClosureAudit {

    /** Any year will do: sunset on a date hardly differs between years. */
    private static final int YEAR = 2026;

    private static final long MS_PER_S = 1000;

    private final Habitat habitat;
    private final KeepersHours hours;
    private final List<Resource> resources;
    private final List<Finding> findings = new ArrayList<>();

    ClosureAudit(Habitat habitat) {
        this.habitat = habitat;
        hours = habitat.keepersHours();
        resources = habitat.graph().resources();
    }

    List<Finding> findings() {
        if (habitat.layout().keeping().closures().isEmpty()) {
            return List.of();
        }
        for (int place = 0; place < resources.size(); place++) {
            if (hours.opensAtMs(place, 0) == Long.MAX_VALUE) {
                String id = resources.get(place).id();
                findings.add(Finding.alone(
                        "always-shut",
                        Weight.MEND,
                        id,
                        0,
                        "h/day",
                        id + " is shut or cleaned at all hours, so no animal can ever use it",
                        "give " + id + " hours in which it is open, or take it out"));
            }
        }
        habitat.layout().feedings().forEach(this::feeding);
        sunsets().forEach(this::nests);
        return findings;
    }

    private void feeding(Feeding feeding) {
        long at = feeding.at().toSecondOfDay() * MS_PER_S;
        int place = habitat.graph().resourceNumber(feeding.resource());
        long opens = hours.opensAtMs(place, at);
        if (hours.isShut(place, at) && opens != Long.MAX_VALUE) {
            findings.add(Finding.alone(
                    "fed-while-shut",
                    Weight.CAUTION,
                    feeding.resource(),
                    (opens - at) / (60.0 * MS_PER_S),
                    "min",
                    feeding.resource() + " is fed at " + feeding.at()
                            + " while it is shut: the food is out of reach for "
                            + Math.round((opens - at) / (60.0 * MS_PER_S)) + " min",
                    "feed it when it is open, or open it then"));
        }
    }

    /** Sunset at the turns of the seasons, by date. */
    private Map<LocalDate, LocalTime> sunsets() {
        Map<LocalDate, LocalTime> sunsets = new LinkedHashMap<>();
        for (Month month : List.of(Month.MARCH, Month.JUNE, Month.SEPTEMBER, Month.DECEMBER)) {
            LocalDate date = LocalDate.of(YEAR, month, 21);
            sunsets.put(
                    date, Daylight.of(habitat.layout().enclosure().site(), date).sunset());
        }
        return sunsets;
    }

    private void nests(LocalDate date, LocalTime sunset) {
        long now = sunset.toSecondOfDay() * MS_PER_S;
        List<String> shut = new ArrayList<>();
        int all = 0;
        int open = 0;
        for (int place = 0; place < resources.size(); place++) {
            Resource nest = resources.get(place);
            if (nest.kind() == ResourceKind.NEST) {
                all += nest.stalls();
                if (hours.isShut(place, now)) {
                    shut.add(nest.id());
                } else {
                    open += nest.stalls();
                }
            }
        }
        boolean isKnown = findings.stream().anyMatch(finding -> finding.kind().equals("nests-shut-at-sunset"));
        int needed = Math.min(all, habitat.animals().size());
        if (!shut.isEmpty() && open < needed && !isKnown) {
            String names = String.join(", ", shut);
            findings.add(Finding.alone(
                    "nests-shut-at-sunset",
                    Weight.MEND,
                    names,
                    open,
                    "places",
                    names + (shut.size() == 1 ? " is" : " are") + " shut when the sun sets ("
                            + sunset.withSecond(0).withNano(0)
                            + " on " + date.getDayOfMonth() + " "
                            + date.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + "): nests for " + open
                            + " of "
                            + habitat.animals().size() + " animals are open then",
                    "open " + names + " before sunset"));
        }
    }
}
