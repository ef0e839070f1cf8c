package limbway.reports.measure.criterion;

import java.lang.ref.WeakReference;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.body.Body;
import limbway.model.enclosure.Enclosure;
import limbway.model.shade.ShadeAudit;
import limbway.model.shade.ShadeCalendar;
import limbway.model.shade.ShadeRule;
import limbway.model.volume.ReachedRoom;
import limbway.model.volume.VolumeSettings;
import limbway.sim.habitat.Habitat;
import limbway.sim.habitat.Warmth;

/** What the criteria need to know of one layout besides what happened in it, each found when first asked for and kept. */
final class LayoutFacts {

    /**
     * Upright lines along which the room is measured; a fifteenth of what {@code check} takes. As parts and whole share
     * them, their ratio is much surer than either.
     */
    static final int COLUMNS = 4_000;

    /** Minutes between the moments at which shade is looked at. */
    private static final int SHADE_STEP_MIN = 15;

    /** So many bodies are kept, those asked for last: where masses are drawn anew, each world has its own. */
    static final int MOST_BODIES = 48;

    private final Map<Body, ReachedRoom> rooms = new LastAsked<>();
    private final Map<Body, double[]> zones = new LastAsked<>();
    private final Map<LocalDate, Integer> breachMinutes = new LinkedHashMap<>();
    private Optional<Warmth> warmth = Optional.empty();
    private Optional<LocalDate> warmthFrom = Optional.empty();
    /** The same layout may be lived in under other skies. */
    private WeakReference<Habitat> warmthOf = new WeakReference<>(null);

    /** A map that forgets what was not asked for in the longest time. */
    private static final class LastAsked<V> extends LinkedHashMap<Body, V> {
        private static final long serialVersionUID = 1;

        LastAsked() {
            super(16, 0.75f, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<Body, V> eldest) {
            return size() > MOST_BODIES;
        }
    }

    /** The room of a body of the group. */
    synchronized ReachedRoom room(Habitat habitat, Body body) {
        ReachedRoom known = rooms.get(body);
        if (known == null) {
            Enclosure enclosure = habitat.layout().enclosure();
            double topM = VolumeSettings.commonTopM(enclosure, habitat.bodies());
            VolumeSettings settings = new VolumeSettings(OptionalDouble.empty(), OptionalDouble.of(topM), COLUMNS);
            known = ReachedRoom.of(
                    enclosure, habitat.graph(), habitat.routes(body).costs(), settings);
            rooms.put(body, known);
        }
        return known;
    }

    /** Its zones [m³], by ordinal. */
    synchronized double[] zonesM3(Habitat habitat, Body body) {
        double[] known = zones.get(body);
        if (known == null) {
            known = Zone.sizesM3(room(habitat, body));
            zones.put(body, known);
        }
        return known.clone();
    }

    /** For how many bodies rooms are kept. */
    synchronized int bodiesKept() {
        return Math.max(rooms.size(), zones.size());
    }

    /** How hot it is through a run. */
    synchronized Warmth warmth(Habitat habitat, LocalDate date, int days) {
        if (warmth.isEmpty()
                || warmthOf.get() != habitat
                || !warmthFrom.equals(Optional.of(date))
                || isShort(warmth.get(), days)) {
            warmth = Optional.of(habitat.warmth(date, days));
            warmthFrom = Optional.of(date);
            warmthOf = new WeakReference<>(habitat);
        }
        return warmth.get();
    }

    private static boolean isShort(Warmth known, int days) {
        return known.isKnown() && known.slots() * known.stepMs() < days * DayMs.DAY_MS;
    }

    /** Minutes of a day at which fewer platforms lie in shade than the usual rule asks for. */
    synchronized int breachMinutes(Enclosure enclosure, LocalDate date) {
        return breachMinutes.computeIfAbsent(
                date,
                day -> ShadeAudit.breachMinutes(
                        enclosure,
                        ShadeRule.standard(),
                        ShadeCalendar.of(enclosure.site(), day.getYear(), SHADE_STEP_MIN),
                        day.getDayOfYear() - 1));
    }
}
