package limbway.reports.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;

/** Two poles with a rope that ends 2.5 m short of the second; mended in a variant. */
final class TinyScenario {

    static final String TEXT = """
            title: Two poles
            site: {latitude: 1.5, longitude: 110.5, time-zone: Asia/Kuching}
            ground: {outline: [[0, 0], [16, 0], [16, 10], [0, 10]], surface: grass}
            supports:
              - {pole: west, at: [3, 5], height: 5, diameter: 0.08, material: timber}
              - {pole: prop, at: [10, 5], height: 5, diameter: 0.08, material: timber}
              - {pole: east, at: [12.58, 5], height: 5, diameter: 0.08, material: timber}
              - {rope: line, from: west at 4, to: prop at 4, diameter: 0.05}
            resources:
              - {food: tray, on: east at 4, portions: 2 at once}
              - {water: cup, on: west at 3, portions: 2 at once}
              - {shade: roof, on: west at 3.5, portions: 2 at once}
              - {nest: bed-1, on: west at 4.5}
              - {nest: bed-2, on: prop at 4.5}
            animals:
              - {name: Ibu, body: adult female, with-infant: true}
              - {name: Anak, body: juvenile}
            keepers:
              - {feed: tray, at: ["08:00", "15:00"], energy-kj: 5200}
            variants:
              - name: joined
                changes: [{add: {rope: link, from: prop at 4, to: east at 4, diameter: 0.05}}]
            """;

    /** What a command said and how it ended. */
    record Answer(int code, String out, String err) {}

    private TinyScenario() {}

    static Path write(Path folder) throws IOException {
        return Files.writeString(folder.resolve("tiny.yaml"), TEXT);
    }

    static Answer limbway(Object... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] words = new String[args.length];
        for (int i = 0; i < args.length; i++) {
            words[i] = args[i].toString();
        }
        int code = Limbway.run(new PrintWriter(out), new PrintWriter(err), words);
        return new Answer(
                code,
                out.toString().replace(System.lineSeparator(), "\n"),
                err.toString().replace(System.lineSeparator(), "\n"));
    }
}
