package limbway.scenarios;

import java.nio.file.Path;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Support;
import limbway.model.parameter.Assumable;

/** A sound scenario of a few lines with everything that climbs, stops or slopes, into which tests plant mistakes. */
final class SmallCage {

    static final String TEXT = """
            title: Small cage
            site: {latitude: 1.5, longitude: 110.5, time-zone: Asia/Kuching}
            ground: {outline: [[0, 0], [20, 0], [20, 10], [0, 10]]}
            supports:
              - {pole: mast, at: [5, 5], height: 4, diameter: 0.10, material: timber}
              - {pole: prop, at: [10, 5], height: 4, diameter: 0.10, material: timber, tip-diameter: 0.06}
              - {branch: limb, from: mast at 3, to: [7, 6, 3.5], diameter: 0.08}
              - {ladder: steps, from: [5, 3], to: mast top, diameter: 0.04, material: timber}
              - {rope: line, from: [2, 8, 3], to: [12, 8, 3], diameter: 0.05, length: 10.6 m}
              - {hammock: sling, at: [15, 5, 2], size: [1, 1.5], bears: 120}
              - {trunk: tree, at: [17, 8], height: 5, diameter: 0.3, stiffness: 9000 N/m}
            panels:
              - {mesh: side, from: [0, 0], to: [20, 0], top: 4}
              - {net: slope, corners: [[0, 6, 0], [3, 6, 0], [3, 9, 3], [0, 9, 3]]}
              - {mesh: roof, outline: [[0, 0], [20, 0], [20, 10], [0, 10]], height: 4.5, opening: 0.04, strand: 0.003}
            barriers:
              - {wall: back, line: [[0, 10], [20, 10]], top: 3}
              - {glass: pane, line: [[20, 2], [20, 6]], bottom: 0.5, top: 2.5}
              - {water: pool, outline: [[8, 1], [11, 1], [11, 3], [8, 3]], depth: 1.2}
            hot-wires:
              - {strand: hot, line: [[0, 9.8, 2.8], [20, 9.8, 2.8]]}
              - {planting: ferns, outline: [[13, 1], [15, 1], [15, 2], [13, 2]], top: 1, clearance: 0.3}
            doors:
              - {door: slide, in: side, from: [3, 0], to: [3.8, 0], open: ["14:00-18:00", "8:00-12:00"]}
              - {door: lift, in: back, from: [6, 10], to: [7, 10], sill: 1, height: 1.5, open: never}
            resources:
              - {food: tray, at: [2, 2]}
              - {nest: high, at: [10, 0.3, 2.5]}
            bodies:
              - {body: Old Tuan, like: flanged male, mass: 92, gap-reach: 1.6}
            animals:
              - {name: Tuan, body: old tuan}
            keepers:
              - {feed: tray, at: 08:00, energy-kj: 8000}
            variants:
              - {name: other, changes: []}
            """;

    private SmallCage() {}

    /** Reads the cage with one piece of its text replaced; the piece must be there. */
    static Reading with(String piece, String by) {
        if (!TEXT.contains(piece)) {
            throw new IllegalArgumentException("no such text in the small cage: " + piece);
        }
        return read(TEXT.replace(piece, by));
    }

    static Reading read(String text) {
        return ScenarioReader.read("cage.yaml", text, Path.of("."), Assumable.nothing());
    }

    /** The cage as drawn. */
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

    static Support support(Enclosure enclosure, String id) {
        return enclosure.supports().stream()
                .filter(support -> support.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
