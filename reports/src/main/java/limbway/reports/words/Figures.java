package limbway.reports.words;

import java.util.Locale;

/** Numbers as they are printed for people: few digits, a point, a space between thousands, whatever the machine. */
public final class Figures {

    private static final double KILO = 1000;
    private static final double LEAST_WHOLE = 0.005;

    private Figures() {}

    /**
     * A share as a percentage.
     *
     * @param share 0 to 1
     * @return whole percent, for example {@code 43 %}; a little more than nothing or less than all is said to be so
     */
    public static String percent(double share) {
        if (share > 0 && share < LEAST_WHOLE) {
            return "< 1 %";
        }
        return share < 1 && share > 1 - LEAST_WHOLE ? "> 99 %" : String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    /**
     * A length, to the centimetre.
     *
     * @param metres length [m]
     * @return up to two decimals, for example {@code 2.3 m}
     */
    public static String metres(double metres) {
        return decimals(metres, 2) + " m";
    }

    /**
     * A length of path, to the decimetre.
     *
     * @param metres length [m]
     * @return up to one decimal, for example {@code 41.3 m}
     */
    public static String path(double metres) {
        return decimals(metres, metres < 100 ? 1 : 0) + " m";
    }

    /**
     * A thickness.
     *
     * @param metres thickness [m]
     * @return centimetres with up to one decimal, for example {@code 12.5 cm}
     */
    public static String thickness(double metres) {
        return decimals(100 * metres, 1) + " cm";
    }

    /**
     * A noun with its article.
     *
     * @param noun lower-case English noun
     * @return the noun after a or an
     */
    public static String one(String noun) {
        return (!noun.isEmpty() && "aeiou".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
    }

    /**
     * An energy.
     *
     * @param joules energy [J]
     * @return joules below 10 kJ, else kilojoules
     */
    public static String energy(double joules) {
        if (joules < 10 * KILO) {
            return decimals(joules, 0) + " J";
        }
        return decimals(joules / KILO, joules < 100 * KILO ? 1 : 0) + " kJ";
    }

    /**
     * A number with at most so many decimals and no zeros at its end.
     *
     * @param value any finite number
     * @param digits decimals, 0 or more
     * @return the number, thousands set apart by a space
     */
    public static String decimals(double value, int digits) {
        String text = String.format(Locale.ROOT, "%,." + digits + "f", value).replace(',', ' ');
        if (text.indexOf('.') >= 0) {
            text = text.replaceAll("0+$", "").replaceAll("\\.$", "");
        }
        return text.equals("-0") ? "0" : text;
    }

    /**
     * How many there are.
     *
     * @param count any whole number
     * @return the number, thousands set apart by a space
     */
    public static String count(long count) {
        return String.format(Locale.ROOT, "%,d", count).replace(',', ' ');
    }

    /**
     * A number with three figures that count, for values of unknown size.
     *
     * @param value any finite number
     * @return for example {@code 0.125}, {@code 74} or {@code 2 400}
     */
    public static String plain(double value) {
        double size = Math.abs(value);
        return decimals(value, size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 4);
    }
}
