package limbway.reports;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.energy.EnergySettings;
import limbway.model.parameter.Assumable;
import limbway.model.route.ChoiceSharpness;
import limbway.model.study.Animal;
import limbway.model.study.Study;
import limbway.model.study.Variant;
import limbway.reports.data.RunInfo;
import limbway.reports.measure.Audit;
import limbway.reports.measure.Measures;
import limbway.reports.measure.RouteCards;
import limbway.reports.page.Report;
import limbway.scenarios.Reading;
import limbway.scenarios.ScenarioReader;
import limbway.sim.animal.DaySettings;
import limbway.sim.experiment.Experiment;
import limbway.sim.experiment.RunSettings;
import limbway.sim.habitat.Habitat;

/** The example yard, lived in for a day three times over. */
public final class Yard {

    private static final RunSettings SETTINGS = new RunSettings(7, 3, 1, LocalDate.of(2026, 3, 21), 1, 0);

    private Yard() {}

    public static Study study() {
        Path file = Path.of("..", "scenarios", "examples", "yard.yaml");
        return ((Reading.Read) ScenarioReader.read(file, Assumable.nothing())).study();
    }

    public static Measures measures(Variant layout, List<Animal> animals) {
        Habitat habitat = new Habitat(
                layout, animals, Optional.empty(), EnergySettings.standard(), ChoiceSharpness.GROUP.standard());
        return Measures.of(Experiment.run(habitat, SETTINGS, DaySettings.standard(), (done, total) -> {}), 1);
    }

    public static Report report(Study study) {
        List<Measures> layouts = new ArrayList<>();
        for (Variant layout : study.layouts()) {
            layouts.add(measures(layout, study.animals()));
        }
        List<Measures> others = layouts.subList(1, layouts.size());
        RunInfo info = new RunInfo(
                "yard.yaml",
                study.title(),
                "00ff",
                study.base().name(),
                others.stream().map(Measures::layout).toList(),
                SETTINGS,
                3,
                1,
                "test",
                "17",
                true,
                DaySettings.standard().parameters(),
                List.of());
        return new Report(
                info,
                layouts.get(0),
                others,
                List.of(),
                List.of(),
                Audit.of(layouts.get(0).outcome().habitat()),
                RouteCards.withoutFlips(layouts.get(0).outcome()));
    }
}
