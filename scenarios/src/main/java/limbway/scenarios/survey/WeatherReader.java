package limbway.scenarios.survey;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.enclosure.Site;
import limbway.model.study.Climate;
import limbway.model.weather.MonthlyWeather;
import limbway.model.weather.Weather;
import limbway.scenarios.entry.Fields;
import limbway.scenarios.entry.Form;
import limbway.scenarios.entry.Quantity;
import limbway.scenarios.entry.Values;
import limbway.scenarios.format.ListNode;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads the entry {@code weather} and the file that it may name. */
public final class WeatherReader {

    private static final int MONTHS = 12;

    /** From this latitude on [degrees] July is warmer than January in the north, and colder in the south. */
    private static final double SEASONS_DEG = 35;

    private static final String MAX = "monthly-max";
    private static final String MIN = "monthly-min";

    private final SurveyReader.Tables files;
    private final Problems problems;
    private final Values values;
    private final List<String> notes = new ArrayList<>();

    /**
     * A reader of weather.
     *
     * @param files where weather files come from
     * @param problems where mistakes go
     */
    public WeatherReader(SurveyReader.Tables files, Problems problems) {
        this.files = files;
        this.problems = problems;
        this.values = new Values(problems);
    }

    /**
     * Reads the weather.
     *
     * @param node the entry
     * @param site the site, or empty if that could not be read
     * @return the weather, or empty if a problem was added
     */
    public Optional<Climate> read(MappingNode node, Optional<Site> site) {
        Fields fields = Fields.of(node, Form.WEATHER, problems);
        Optional<String> way =
                fields.oneWay(List.of("epw", MAX), "what it is like", "one of: epw, monthly-max (with monthly-min)");
        if (way.isEmpty()) {
            return Optional.empty();
        }
        double sunlitWayW = fields.number("sunlit-ways", Quantity.SUNLIT_WAYS).orElse(0);
        Optional<Weather> weather = way.get().equals("epw") ? hourly(fields, site) : monthly(fields, site);
        return weather.map(found -> new Climate(found, sunlitWayW));
    }

    /**
     * What a keeper should know of the weather that was read.
     *
     * @return sentences
     */
    public List<String> notes() {
        return List.copyOf(notes);
    }

    private Optional<Weather> hourly(Fields fields, Optional<Site> site) {
        fields.refuse(List.of(MIN, "wind", "turbidity"), "where a file says it");
        ScalarNode name = fields.placedWords("epw", "the name of a file, seen from the folder of the scenario");
        return fields.build(() -> name)
                .flatMap(files::fetch)
                .flatMap(file -> EpwFile.parse(file.file(), file.text(), problems))
                .filter(file -> site.isEmpty() || isNear(file, site.get()))
                .map(EpwFile::weather);
    }

    private boolean isNear(EpwFile file, Site site) {
        EpwPlace place = new EpwPlace(file.header(), problems);
        notes.addAll(place.notes(site));
        return place.isNear(site);
    }

    private Optional<Weather> monthly(Fields fields, Optional<Site> site) {
        fields.require(MIN, "[...], twelve temperatures, January first");
        Optional<double[]> max = temperatures(fields, MAX);
        Optional<double[]> min = temperatures(fields, MIN);
        OptionalDouble wind = fields.number("wind", Quantity.WIND);
        OptionalDouble turbidity = fields.number("turbidity", Quantity.TURBIDITY);
        if (max.isPresent() && min.isPresent()) {
            checkOrder(fields, max.get(), min.get());
            site.ifPresent(where -> checkSeasons(fields, max.get(), where));
        }
        return fields.build(() -> {
            noteUnstated(fields);
            return new MonthlyWeather(
                    boxed(max.orElseThrow()),
                    boxed(min.orElseThrow()),
                    wind.orElse(MonthlyWeather.UNSTATED_WIND_M_PER_S),
                    turbidity.orElse(MonthlyWeather.UNSTATED_LINKE_TURBIDITY));
        });
    }

    private Optional<double[]> temperatures(Fields fields, String key) {
        return fields.read(
                key,
                node -> values.numbers(
                        node,
                        Collections.nCopies(MONTHS, Quantity.MONTH_TEMPERATURE),
                        MONTHS,
                        key + " of weather",
                        "twelve temperatures in °C, January first"));
    }

    private static void checkOrder(Fields fields, double[] max, double[] min) {
        List<Node> items = ((ListNode) fields.find(MIN).orElseThrow()).items();
        for (int month = 0; month < MONTHS; month++) {
            if (min[month] >= max[month]) {
                fields.fault(Problem.at(
                                items.get(month).place(),
                                "the coldest of a day is not below its warmest in month " + (month + 1))
                        .found(Wording.measure(min[month], "°C") + " in monthly-min, "
                                + Wording.measure(max[month], "°C") + " in monthly-max")
                        .mend("correct one of them, or swap the two lists"));
            }
        }
    }

    private static void checkSeasons(Fields fields, double[] max, Site site) {
        boolean northern = site.latitudeDeg() > 0;
        double januaryC = max[0];
        double julyC = max[6];
        if (Math.abs(site.latitudeDeg()) >= SEASONS_DEG && (northern ? januaryC > julyC : julyC > januaryC)) {
            fields.fault(Problem.at(
                            fields.find(MAX).orElseThrow().place(),
                            "these months are those of the other half of the Earth")
                    .found("January " + Wording.measure(januaryC, "°C") + ", July " + Wording.measure(julyC, "°C")
                            + ", latitude " + Wording.number(site.latitudeDeg()))
                    .mend("begin with January, or correct the latitude: south is negative"));
        }
    }

    private void noteUnstated(Fields fields) {
        if (fields.find("wind").isEmpty()) {
            notes.add("The weather does not say how strong the wind is: still air is assumed, in which it is hottest.");
        }
        if (fields.find("turbidity").isEmpty()) {
            notes.add("The weather does not say how hazy the air is: a turbidity of "
                    + Wording.number(MonthlyWeather.UNSTATED_LINKE_TURBIDITY) + " is assumed.");
        }
    }

    private static List<Double> boxed(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }
}
