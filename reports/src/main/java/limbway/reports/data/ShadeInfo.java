package limbway.reports.data;

import java.util.List;

import limbway.model.parameter.Parameter;

/**
 * Everything needed to look at a year of shade again.
 *
 * @param scenario name of the scenario file, without its folder
 * @param title what the scenario calls itself
 * @param sha256Hex SHA-256 of the scenario, 64 hexadecimal digits
 * @param layout name of the layout
 * @param limbwayVersion version of this program
 * @param javaVersion version of the Java runtime
 * @param parameters every number that took part
 * @param notes what the reader of the scenario remarked
 */
public record ShadeInfo(
        String scenario,
        String title,
        String sha256Hex,
        String layout,
        String limbwayVersion,
        String javaVersion,
        List<Parameter> parameters,
        List<String> notes) {

    /** Keeps copies of the lists. */
    public ShadeInfo {
        parameters = List.copyOf(parameters);
        notes = List.copyOf(notes);
    }
}
