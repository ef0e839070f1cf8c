package limbway.scenarios.survey;

import java.util.List;

import limbway.scenarios.problem.Place;

/**
 * One line of a weather file, cut at its commas.
 *
 * @param file name for messages
 * @param number number of the line, the first is 1
 * @param fields what stands between the commas
 */
record EpwLine(String file, int number, List<String> fields) {

    /** Keeps a copy of the list. */
    EpwLine {
        fields = List.copyOf(fields);
    }

    static EpwLine of(String file, int number, String text) {
        return new EpwLine(file, number, List.of(text.split(",", -1)));
    }

    /** A field without spaces at its ends; the first is 1. */
    String field(int which) {
        return fields.get(which - 1).strip();
    }

    int count() {
        return fields.size();
    }

    /** Whether semicolons stand where commas should. */
    boolean hasSemicolons() {
        return fields.stream().anyMatch(field -> field.contains(";"));
    }

    /** What there is instead of the fields that should be there. */
    String found() {
        if (hasSemicolons()) {
            return "semicolons between the fields";
        }
        return count() + (count() == 1 ? " field" : " fields");
    }

    /** How to come to as many fields as there should be. */
    String mend(int due) {
        if (hasSemicolons()) {
            return "write points before decimals, then a comma for each semicolon; or save the file again with commas";
        }
        return count() < due
                ? "look for a comma that is missing, or take the file again: the line may be cut short"
                : "look for a comma too many, and write points before decimals";
    }

    Place start() {
        return new Place(file, number, 1);
    }

    /** Where a field begins; the first is 1. */
    Place place(int which) {
        int column = 1;
        for (int i = 0; i < which - 1; i++) {
            column += fields.get(i).codePointCount(0, fields.get(i).length()) + 1;
        }
        return new Place(file, number, column);
    }
}
