package limbway.reports.command;

import java.nio.file.Path;
import java.util.List;

import limbway.model.parameter.Assumable;
import limbway.model.parameter.Parameter;
import limbway.model.study.Study;
import limbway.model.study.Variant;
import limbway.scenarios.Reading;
import limbway.scenarios.ScenarioReader;
import limbway.scenarios.problem.ProblemReport;
import limbway.sim.experiment.Assumptions;
import limbway.sim.experiment.Situations;
import limbway.sim.habitat.Habitat;

/**
 * A scenario that was read, with the layout that is asked about.
 *
 * @param fileName name of the file without its folder
 * @param read the study and what belongs to it
 * @param layout the layout asked about
 * @param assumptions the numbers of the model, some of them set by the scenario
 */
record Question(String fileName, Reading.Read read, Variant layout, Assumptions assumptions) {

    static Question of(CommonOptions options) throws Refusal {
        return of(options.scenario, options.variant);
    }

    /** The layout as drawn. */
    static Question of(ScenarioOptions options) throws Refusal {
        return of(options.scenario, null);
    }

    private static Question of(Path scenario, String variant) throws Refusal {
        Assumptions standard = Assumptions.standard();
        Reading reading = ScenarioReader.read(scenario, new Assumable(standard.parameters(), Situations.all()));
        if (reading instanceof Reading.Refused refused) {
            throw new Refusal(ProblemReport.text(refused.problems()));
        }
        Reading.Read read = (Reading.Read) reading;
        return new Question(fileName(scenario), read, layout(read.study(), variant), assumed(standard, read.study()));
    }

    /** Each number is in its range; together they may still contradict each other. */
    private static Assumptions assumed(Assumptions standard, Study study) throws Refusal {
        try {
            return standard.with(study.assumed());
        } catch (IllegalArgumentException e) {
            throw Refusal.of(
                    "the numbers that the scenario assumes do not go together",
                    e.getMessage(),
                    "",
                    "change assume or situation");
        }
    }

    Study study() {
        return read.study();
    }

    List<Parameter> parametersOfScenario() {
        return read.parameters();
    }

    Habitat habitat() {
        return habitat(layout);
    }

    Habitat habitat(Variant other) {
        return new Habitat(other, study().animals(), study().climate(), assumptions.energy(), assumptions.sharpness());
    }

    private static Variant layout(Study study, String name) throws Refusal {
        if (name == null) {
            return study.base();
        }
        List<String> known = study.layouts().stream().map(Variant::name).toList();
        return study.find(name).orElseThrow(() -> Refusal.unknown("variant", name, known));
    }

    private static String fileName(Path path) {
        Path name = path.getFileName();
        return name == null ? path.toString() : name.toString();
    }
}
