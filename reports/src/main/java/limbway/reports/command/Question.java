package limbway.reports.command;

import java.nio.file.Path;
import java.util.List;

import limbway.model.energy.EnergySettings;
import limbway.model.parameter.Parameter;
import limbway.model.route.ChoiceSharpness;
import limbway.model.study.Study;
import limbway.model.study.Variant;
import limbway.scenarios.Reading;
import limbway.scenarios.ScenarioReader;
import limbway.scenarios.problem.ProblemReport;
import limbway.sim.habitat.Habitat;

/**
 * A scenario that was read, with the layout that is asked about.
 *
 * @param fileName name of the file without its folder
 * @param read the study and what belongs to it
 * @param layout the layout asked about
 */
record Question(String fileName, Reading.Read read, Variant layout) {

    static Question of(CommonOptions options) throws Refusal {
        Reading reading = ScenarioReader.read(options.scenario);
        if (reading instanceof Reading.Refused refused) {
            throw new Refusal(ProblemReport.text(refused.problems()));
        }
        Reading.Read read = (Reading.Read) reading;
        return new Question(fileName(options.scenario), read, layout(read.study(), options.variant));
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
        return new Habitat(
                other,
                study().animals(),
                study().climate(),
                EnergySettings.standard(),
                ChoiceSharpness.GROUP.standard());
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
