package limbway.scenarios;

import java.nio.file.Path;

import limbway.model.parameter.Assumable;

/** A sound scenario of a few lines, into which tests plant mistakes. */
final class SmallYard {

    static final String TEXT = """
            title: Small yard
            site: {latitude: 1.5, longitude: 110.5, time-zone: Asia/Kuching}
            ground:
              outline: [[0, 0], [30, 0], [30, 20], [0, 20]]
              obstacles: [{obstacle: pond, outline: [[10, 10], [14, 10], [14, 14], [10, 14]]}]
            supports:
              - {pole: mast-1, at: [6, 5], height: 7.0, diameter: 0.10, material: timber}
              - {pole: mast-2, at: [15, 6], height: 7.0, diameter: 0.10, material: timber}
              - {rope: rope-1, from: mast-1 at 6.5, to: mast-2 at 6.0, diameter: 0.05, sag: 5 %}
              - {platform: deck-1, on: mast-1 at 5.0, size: [2.0, 1.5]}
            resources:
              - {food: hatch, at: [28, 10, 0], portions: 4 at once}
              - {nest: nest-1, on: deck-1}
            animals:
              - {name: A, body: adult female}
            keepers:
              - {feed: hatch, at: 08:00, energy-kj: 2400}
            variants:
              - {name: high, changes: [{move: hatch, on: mast-2 at 5.5}]}
            """;

    private SmallYard() {}

    /** Reads the yard with one piece of its text replaced; the piece must be there. */
    static Reading with(String piece, String by) {
        if (!TEXT.contains(piece)) {
            throw new IllegalArgumentException("no such text in the small yard: " + piece);
        }
        return read(TEXT.replace(piece, by));
    }

    static Reading read(String text) {
        return ScenarioReader.read("yard.yaml", text, Path.of("."), Assumable.nothing());
    }
}
