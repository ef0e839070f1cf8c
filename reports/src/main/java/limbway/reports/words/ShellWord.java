package limbway.reports.words;

import java.util.List;

/** Words of a command line that can be copied into a terminal as they are. */
public final class ShellWord {

    private ShellWord() {}

    /**
     * A command line.
     *
     * @param words the words, of which some may hold spaces or signs
     * @return the words one after the other, quoted where that is needed
     */
    public static String line(List<String> words) {
        return String.join(" ", words.stream().map(ShellWord::quoted).toList());
    }

    private static String quoted(String word) {
        if (word.matches("[A-Za-z0-9._:/=+-]+")) {
            return word;
        }
        // double quotes are understood by more shells, single ones keep every sign as it is
        return word.matches("[\\p{L}\\p{N} ._:/=+,()-]+") ? "\"" + word + "\"" : "'" + word.replace("'", "'\\''") + "'";
    }
}
