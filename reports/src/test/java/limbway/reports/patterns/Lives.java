package limbway.reports.patterns;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

import limbway.model.parameter.Assumable;
import limbway.model.study.Study;
import limbway.model.study.Variant;
import limbway.scenarios.Reading;
import limbway.scenarios.ScenarioReader;
import limbway.sim.experiment.Assumptions;
import limbway.sim.experiment.Experiment;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.Situations;
import limbway.sim.habitat.Habitat;

/** Reads scenarios and lets their groups live, each question once. */
final class Lives {

    private static final Path EXAMPLES = Path.of("..", "scenarios", "examples");
    private static final Assumable ASSUMABLE =
            new Assumable(Assumptions.standard().parameters(), Situations.all());
    private static final int SEED = 1;
    private static final int THREADS = 2;

    private final Path folder;
    private final Map<String, Study> studies;
    private final Map<String, Habitat> habitats;
    private final Map<Run, Outcome> outcomes = new HashMap<>();
    private final Map<String, Double> tried;
    private final boolean worth;

    private Lives(
            Path folder,
            Map<String, Study> studies,
            Map<String, Habitat> habitats,
            Map<String, Double> tried,
            boolean worth) {
        this.folder = folder;
        this.studies = studies;
        this.habitats = habitats;
        this.tried = tried;
        this.worth = worth;
    }

    /** Lives with every number at its default, but for what a scenario assumes. */
    static Lives usual() {
        return in(EXAMPLES);
    }

    /** The same with scenarios of another folder. */
    static Lives in(Path folder) {
        return new Lives(folder, new HashMap<>(), new HashMap<>(), Map.of(), true);
    }

    /** The same places with nothing that counts but needs and energy. */
    Lives withoutWorth() {
        return new Lives(folder, studies, habitats, tried, false);
    }

    /** The same places with other defaults, as calibration tries them; what a scenario assumes still holds against them. */
    Lives trying(Map<String, Double> values) {
        return new Lives(folder, studies, habitats, Map.copyOf(values), true);
    }

    Study study(String scenario) {
        return studies.computeIfAbsent(scenario, this::read);
    }

    Habitat habitat(Run run) {
        return habitats.computeIfAbsent(run.scenario() + "/" + run.layout(), key -> compile(run));
    }

    Outcome outcome(Run run) {
        return outcomes.computeIfAbsent(run, this::live);
    }

    private Outcome live(Run run) {
        Assumptions assumed =
                Assumptions.standard().with(tried).with(study(run.scenario()).assumed());
        Assumptions used = worth ? assumed : assumed.withoutWorth();
        RunSettings settings = new RunSettings(SEED, run.replications(), run.days(), run.date(), THREADS);
        return Experiment.run(habitat(run), settings, used.day(), (done, total) -> {});
    }

    private Habitat compile(Run run) {
        Study study = study(run.scenario());
        Variant layout = study.find(run.layout()).orElseThrow();
        Assumptions assumed = Assumptions.standard().with(study.assumed());
        return new Habitat(layout, study.animals(), study.climate(), assumed.energy(), assumed.sharpness());
    }

    private Study read(String scenario) {
        Reading reading = ScenarioReader.read(folder.resolve(scenario + ".yaml"), ASSUMABLE);
        if (reading instanceof Reading.Read read) {
            return read.study();
        }
        throw new IllegalArgumentException(scenario + ": " + reading);
    }
}
