package limbway.scenarios.survey;

import java.util.List;

import limbway.model.parameter.Parameter;
import limbway.scenarios.format.MappingNode;

/**
 * Trees read from a table.
 *
 * @param trunks entries as a keeper would write them under {@code supports}
 * @param parameters coefficients that were used
 * @param notes what was done with the table, one sentence each
 */
public record Survey(List<MappingNode> trunks, List<Parameter> parameters, List<String> notes) {

    /** Keeps copies of the lists. */
    public Survey {
        trunks = List.copyOf(trunks);
        parameters = List.copyOf(parameters);
        notes = List.copyOf(notes);
    }
}
