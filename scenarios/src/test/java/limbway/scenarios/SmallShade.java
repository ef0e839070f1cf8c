package limbway.scenarios;

import java.nio.file.Path;

import limbway.model.enclosure.Enclosure;
import limbway.model.parameter.Assumable;

/** A sound scenario of a few lines with everything that gives shade, into which tests plant mistakes. */
final class SmallShade {

    static final String TEXT = """
            title: Small shade
            site: {latitude: 48.1, longitude: 11.6, time-zone: Europe/Berlin}
            ground: {outline: [[0, 0], [20, 0], [20, 10], [0, 10]]}
            supports:
              - {pole: mast, at: [5, 5], height: 4, diameter: 0.10, material: timber}
              - {platform: deck, on: mast at 3, size: [2, 1], turn: 30}
              - {hammock: sling, at: [15, 5, 2], size: [1, 1.5]}
              - {trunk: oak, at: [17, 8], height: 6, diameter: 0.3, crown-radius: 2, crown-base: 2, leaf-area-index: 5, leaves: {from: "04-15", to: "10-31"}}
            covers:
              - {roof: shelter, over: deck, size: [3, 2], rise: 2.2, shift: [0.5, -0.5]}
              - {sail: cloth, corners: [[12, 2, 4], [16, 2, 4], [16, 6, 3], [12, 6, 3]], transmittance: 20 %}
              - {sail: awning, outline: [[18, 3], [20, 3], [20, 6]], height: 3.5, transmittance: 0.4}
            neighbours:
              - {building: house, outline: [[0, -9], [20, -9], [20, -2], [0, -2]], top: 150}
              - {tree: plane, at: [35, 4], height: 14, crown-radius: 4, crown-base: 3}
            resources:
              - {food: tray, at: [2, 2]}
            animals:
              - {name: Tuan, body: adult female}
            keepers:
              - {feed: tray, at: 08:00, energy-kj: 8000}
            variants:
              - {name: other, changes: []}
            """;

    private SmallShade() {}

    /** Reads the scenario with one piece of its text replaced; the piece must be there. */
    static Reading with(String piece, String by) {
        if (!TEXT.contains(piece)) {
            throw new IllegalArgumentException("no such text in the small shade: " + piece);
        }
        return read(TEXT.replace(piece, by));
    }

    static Reading read(String text) {
        return ScenarioReader.read("shade.yaml", text, Path.of("."), Assumable.nothing());
    }

    /** The scenario as drawn. */
    static Enclosure base() {
        return Examples.sound(read(TEXT)).study().base().enclosure();
    }

    /** The layout of its variant with some changes. */
    static Enclosure variant(String changes) {
        return Examples.sound(with("changes: []", "changes: " + changes))
                .study()
                .variants()
                .get(0)
                .enclosure();
    }
}
