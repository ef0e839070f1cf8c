package limbway.scenarios.entry;

import java.util.Optional;

import limbway.model.enclosure.OpenHours;
import limbway.scenarios.entry.PlaceWords.Coordinates;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problems;

/** Reads where people stand whom animals see: staff under {@code keepers}, viewpoints under {@code visitors}. */
public final class OnlookerReader {

    private final Problems problems;
    private final TimesReader times;
    private final PlaceReader places;

    /**
     * A reader of people.
     *
     * @param problems where mistakes go
     */
    public OnlookerReader(Problems problems) {
        this.problems = problems;
        this.times = new TimesReader(problems);
        this.places = new PlaceReader(problems);
    }

    /**
     * Reads one entry.
     *
     * @param node the entry
     * @param form {@link Form#STAFF}, which may stand on the ground, or {@link Form#VIEWPOINT}, which needs a height
     * @return the people, or empty if a problem was added
     */
    public Optional<OnlookerEntry> read(MappingNode node, Form form) {
        Fields fields = Fields.of(node, form, problems);
        ScalarNode id = new ScalarNode(fields.find(form.word()).orElse(node).place(), fields.id());
        int least = form == Form.STAFF ? 2 : 3;
        Optional<Coordinates> at =
                fields.read("at", value -> places.coordinates(value, "place of " + fields.what(), least));
        Optional<OpenHours> hours = times.hours(fields);
        return fields.build(() -> new OnlookerEntry(id, at.orElseThrow(), hours.orElseThrow()));
    }
}
