package limbway.scenarios;

import java.util.List;

import limbway.scenarios.problem.Problem;

/** What came of reading a scenario for its sweep. */
public sealed interface SweepReading {

    /**
     * The scenario is sound and says what is to be tried.
     *
     * @param sweep the scenario, ready to be read with other values
     */
    record Read(Sweep sweep) implements SweepReading {}

    /**
     * It cannot be used.
     *
     * @param problems every mistake, in the order of the file
     */
    record Refused(List<Problem> problems) implements SweepReading {

        /** Keeps a copy of the list. */
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
