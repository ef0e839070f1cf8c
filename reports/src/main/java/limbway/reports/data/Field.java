package limbway.reports.data;

/**
 * One column of a table.
 *
 * @param name header
 * @param type Frictionless type: string, integer, number or boolean
 * @param description what it holds, with its unit
 */
public record Field(String name, String type, String description) {

    static Field text(String name, String description) {
        return new Field(name, "string", description);
    }

    static Field whole(String name, String description) {
        return new Field(name, "integer", description);
    }

    static Field number(String name, String description) {
        return new Field(name, "number", description);
    }

    static Field yesNo(String name, String description) {
        return new Field(name, "boolean", description);
    }
}
