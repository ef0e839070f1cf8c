package limbway.scenarios;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Stream;

import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.Ground;
import limbway.model.enclosure.Site;
import limbway.model.geometry.Outline;
import limbway.model.parameter.Assumable;
import limbway.model.parameter.Parameter;
import limbway.model.study.Animal;
import limbway.model.study.Climate;
import limbway.model.study.Study;
import limbway.model.study.Variant;
import limbway.scenarios.entry.AnimalReader;
import limbway.scenarios.entry.AssumedReader;
import limbway.scenarios.entry.Bodies;
import limbway.scenarios.entry.BodyReader;
import limbway.scenarios.entry.FeedingReader;
import limbway.scenarios.entry.Fields;
import limbway.scenarios.entry.Form;
import limbway.scenarios.entry.GroundReader;
import limbway.scenarios.entry.PlacingEntry;
import limbway.scenarios.entry.PlacingReader;
import limbway.scenarios.entry.Section;
import limbway.scenarios.entry.SiteReader;
import limbway.scenarios.entry.Values;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.format.SourceText;
import limbway.scenarios.layout.CandidateSpot;
import limbway.scenarios.layout.Layout;
import limbway.scenarios.layout.LayoutReader;
import limbway.scenarios.layout.Sheet;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.survey.Survey;
import limbway.scenarios.survey.SurveyReader;
import limbway.scenarios.survey.WeatherReader;

/** Reads the tree of a scenario: the parts that all layouts share, then each layout. */
final class StudyReader {

    private static final double FAR_M = 10_000;

    /* What the layouts are read on if site or ground is wrong, so that no mistake follows from that one. */
    private static final Site SOMEWHERE = new Site(0, 0, ZoneOffset.UTC);
    private static final Ground BOUNDLESS = new Ground(Outline.rectangle(-FAR_M, -FAR_M, FAR_M, FAR_M), "", List.of());

    private final String name;
    private final MessageDigest digest;
    private final Path folder;
    private final Assumable assumable;
    private final Problems problems;
    private final Values values;
    private final List<Parameter> parameters = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    StudyReader(String name, byte[] bytes, Path folder, Assumable assumable, Problems problems) {
        this.name = name;
        this.folder = folder;
        this.assumable = assumable;
        this.problems = problems;
        this.values = new Values(problems);
        this.digest = sha256();
        digest.update(bytes);
    }

    Reading read(Node root) {
        Optional<MappingNode> scenario = values.mapping(root, "a scenario");
        if (scenario.isEmpty()) {
            return refused();
        }
        Fields fields = Fields.of(scenario.get(), Form.SCENARIO, problems);
        String title = fields.words("title", "a line of text", name);
        Optional<Site> site =
                fields.read("site", node -> values.mapping(node, "site")).flatMap(new SiteReader(problems)::read);
        WeatherReader weatherReader = new WeatherReader(file -> table(file, SourceText.MAX_WEATHER_BYTES), problems);
        Optional<Climate> climate = fields.read("weather", node -> values.mapping(node, "weather"))
                .flatMap(node -> weatherReader.read(node, site));
        Optional<Ground> ground =
                fields.read("ground", node -> values.mapping(node, "ground")).flatMap(new GroundReader(problems)::read);
        BodyCatalogue catalogue = BodyCatalogue.standard();
        Bodies bodies = fields.find("bodies")
                .map(new BodyReader(catalogue, problems)::read)
                .orElse(new Bodies(catalogue, List.of()));
        Optional<List<Animal>> animals = fields.read("animals", new AnimalReader(bodies, problems)::read);
        SortedMap<String, Double> assumed = new AssumedReader(assumable, problems).read(fields);
        Map<Section, List<MappingNode>> entries = new EnumMap<>(Section.class);
        for (Section section : Section.values()) {
            entries.put(section, new ArrayList<>(entries(fields, section.key())));
        }
        boolean surveyed = fields.find("survey").isEmpty() || addTrees(fields, entries.get(Section.SUPPORTS));
        Sheet sheet = new Sheet(
                entries,
                entries(fields, "keepers"),
                entries(fields, "visitors"),
                placeOf(fields, "resources"),
                placeOf(fields, "keepers"));
        if (!surveyed) {
            return refused();
        }
        LayoutReader reader = new LayoutReader(site.orElse(SOMEWHERE), ground.orElse(BOUNDLESS));
        Layout layout = reader.read(sheet, Set.of(), problems);
        Variant base = new Variant(VariantReader.BASE_NAME, "", layout.enclosure(), layout.keeping(), Set.of());
        VariantReader variantReader = new VariantReader(reader, sheet, layout.enclosure(), problems);
        List<Variant> variants =
                fields.find("variants").map(variantReader::read).orElse(List.of());
        Optional<PlacingGiven> placing = fields.read("placing", node -> values.mapping(node, "placing"))
                .map(new PlacingReader(problems)::read)
                .map(entry -> placing(entry, reader, sheet, variantReader));
        fields.find("sweep").ifPresent(node -> new PlanReader(scenario.get(), assumable, problems).read(node));
        if (!problems.isEmpty()) {
            return refused();
        }
        site.flatMap(SiteReader::remark).ifPresent(notes::add);
        notes.addAll(weatherReader.notes());
        parameters.addAll(bodies.parameters());
        parameters.addAll(AnimalReader.assumed(animals.orElseThrow()));
        parameters.addAll(FeedingReader.assumed(Stream.concat(Stream.of(base), variants.stream())
                .flatMap(variant -> variant.feedings().stream())
                .toList()));
        Study study = new Study(title, climate, animals.orElseThrow(), base, variants, assumed);
        return new Reading.Read(study, HexFormat.of().formatHex(digest.digest()), parameters, notes, placing);
    }

    /** Candidates are checked in the scenario without changes; in a variant those that are not there are left out. */
    private PlacingGiven placing(PlacingEntry entry, LayoutReader reader, Sheet sheet, VariantReader variants) {
        Map<String, List<CandidateSpot>> found = new LinkedHashMap<>();
        found.put(VariantReader.BASE_NAME, reader.candidates(sheet, Set.of(), entry.candidates(), problems));
        variants.sheets()
                .forEach((name, changed) -> found.put(
                        name, reader.candidates(changed.sheet(), changed.gone(), entry.candidates(), new Problems())));
        return new PlacingGiven(entry, found);
    }

    /** Adds the trees of the survey to the supports, and says whether that could be done. */
    private boolean addTrees(Fields fields, List<MappingNode> supports) {
        Optional<Survey> survey = fields.read("survey", node -> values.mapping(node, "survey"))
                .flatMap(new SurveyReader(file -> table(file, SourceText.MAX_BYTES), problems)::read);
        survey.ifPresent(trees -> {
            supports.addAll(trees.trunks());
            parameters.addAll(trees.parameters());
            notes.addAll(trees.notes());
        });
        return survey.isPresent();
    }

    private Optional<SurveyReader.Table> table(ScalarNode fileName, int mostBytes) {
        Path path;
        try {
            path = folder.resolve(fileName.text()).normalize();
        } catch (InvalidPathException e) {
            problems.add(Problem.at(fileName.place(), "this cannot be the name of a file")
                    .found(fileName.shown())
                    .mend("write the name as the folder shows it"));
            return Optional.empty();
        }
        Optional<byte[]> bytes = ScenarioFile.readOrdinary(path, fileName.place(), mostBytes, problems);
        bytes.ifPresent(digest::update);
        return bytes.flatMap(content -> SourceText.decode(path.toString(), content, mostBytes, problems))
                .map(text -> new SurveyReader.Table(path.toString(), text));
    }

    private List<MappingNode> entries(Fields fields, String key) {
        return fields.find(key).map(node -> values.mappings(node, key)).orElse(List.of());
    }

    private static Place placeOf(Fields fields, String key) {
        return fields.find(key).map(Node::place).orElse(fields.place());
    }

    private Reading refused() {
        return new Reading.Refused(problems.inOrder(name));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
