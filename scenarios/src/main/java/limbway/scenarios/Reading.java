package limbway.scenarios;

import java.util.List;
import java.util.Optional;

import limbway.model.parameter.Parameter;
import limbway.model.study.Study;
import limbway.scenarios.problem.Problem;

/** What came of reading a scenario. */
public sealed interface Reading {

    /**
     * The scenario is sound.
     *
     * @param study what it asks
     * @param sha256Hex SHA-256 of the bytes of the scenario followed by those of its survey table, 64 hexadecimal digits
     * @param parameters numbers that were assumed while reading
     * @param notes what a reader should know although nothing is wrong, one sentence each
     * @param placing where places may be put, if it says so
     */
    record Read(
            Study study,
            String sha256Hex,
            List<Parameter> parameters,
            List<String> notes,
            Optional<PlacingGiven> placing)
            implements Reading {

        /** Keeps copies of the lists. */
        public Read {
            parameters = List.copyOf(parameters);
            notes = List.copyOf(notes);
        }
    }

    /**
     * The scenario cannot be used.
     *
     * @param problems every mistake, in the order of the file
     */
    record Refused(List<Problem> problems) implements Reading {

        /** Keeps a copy of the list. */
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
