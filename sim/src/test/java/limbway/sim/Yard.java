package limbway.sim;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.energy.EnergySettings;
import limbway.model.geometry.Point;
import limbway.model.route.ChoiceSharpness;
import limbway.model.scene.Scene;
import limbway.model.study.Animal;
import limbway.model.study.Climate;
import limbway.model.study.Feeding;
import limbway.model.study.FeedingMethod;
import limbway.model.study.Variant;
import limbway.sim.habitat.Habitat;

/** Builds small enclosures in a few readable lines. */
public final class Yard {

    private static final double ACROSS_M = 30;

    private final Scene scene = Scene.yard(ACROSS_M, 20);
    private final boolean mirrored;
    private final List<Resource> resources = new ArrayList<>();
    private final List<Feeding> feedings = new ArrayList<>();
    private final List<Animal> animals = new ArrayList<>();
    private ChoiceSharpness sharpness = ChoiceSharpness.GROUP.standard();
    private Optional<Climate> climate = Optional.empty();

    /** An empty yard. */
    public Yard() {
        this(false);
    }

    private Yard(boolean mirrored) {
        this.mirrored = mirrored;
    }

    /** A yard of five animals, six masts, ropes all round and a diagonal, fifteen resources. */
    public static Yard furnished() {
        return furnish(new Yard());
    }

    /** The furnished yard with east and west exchanged. */
    public static Yard furnishedInMirror() {
        return furnish(new Yard(true));
    }

    private static Yard furnish(Yard yard) {
        double[][] masts = {{4, 4}, {15, 4}, {26, 4}, {26, 16}, {15, 16}, {4, 16}};
        for (int i = 0; i < masts.length; i++) {
            yard.mast("mast-" + i, masts[i][0], masts[i][1], 7);
            yard.deck("deck-" + i, masts[i][0], masts[i][1], 5);
        }
        for (int i = 0; i < masts.length; i++) {
            double[] a = masts[i];
            double[] b = masts[(i + 1) % masts.length];
            yard.rope("rope-" + i, a[0], a[1], 5.5, b[0], b[1], 5.5);
        }
        yard.rope("diagonal", 4, 4, 6, 26, 16, 6);
        yard.on("nest-a", ResourceKind.NEST, "deck-0", 4.5, 4.5, 5, 2);
        yard.on("nest-b", ResourceKind.NEST, "deck-3", 26.5, 16.5, 5, 1);
        yard.on("nest-c", ResourceKind.NEST, "deck-5", 4.5, 16.5, 5, 1);
        yard.on("nest-d", ResourceKind.NEST, "deck-2", 26.5, 4.5, 5, 1);
        yard.on("tray-east", ResourceKind.FOOD, "deck-2", 25.5, 4, 5, 2);
        yard.on("tray-mid", ResourceKind.FOOD, "deck-4", 15.5, 16, 5, 1);
        yard.at("hatch", ResourceKind.FOOD, 28, 10, 0, 3);
        yard.at("trough", ResourceKind.WATER, 15, 10, 0, 2);
        yard.on("drinker", ResourceKind.WATER, "deck-1", 15.5, 4, 5, 1);
        yard.on("roof-1", ResourceKind.SHADE, "deck-1", 14.5, 4, 5, 2);
        yard.on("roof-4", ResourceKind.SHADE, "deck-4", 14.5, 16, 5, 2);
        yard.at("tree-shade", ResourceKind.SHADE, 8, 10, 0, 3);
        yard.on("roof-0", ResourceKind.SHADE, "deck-0", 3.5, 4, 5, 1);
        yard.at("den", ResourceKind.RETREAT, 2, 10, 0, 2);
        yard.on("box", ResourceKind.RETREAT, "deck-5", 3.5, 16, 5, 1);
        yard.animal("A", "flanged male", 1);
        yard.animal("B", "adult female", 2);
        yard.animal("C", "adult female", 3);
        yard.animal("D", "adolescent", 4);
        yard.animal("E", "juvenile", 5);
        return yard.feed("tray-east", "08:00", 5000)
                .feed("tray-mid", "08:00", 3000)
                .feed("hatch", "12:00", 8000)
                .feed("tray-east", "15:30", 6000)
                .feed("hatch", "15:30", 5000);
    }

    private double x(double eastM) {
        return mirrored ? ACROSS_M - eastM : eastM;
    }

    /** A pole. */
    public Yard mast(String id, double x, double y, double height) {
        scene.pole(id, x(x), y, height);
        return this;
    }

    /** A rope between two points, without sag. */
    public Yard rope(String id, double x0, double y0, double z0, double x1, double y1, double z1) {
        scene.rope(id, new Point(x(x0), y0, z0), new Point(x(x1), y1, z1));
        return this;
    }

    /** A square deck of two metres. */
    public Yard deck(String id, double x, double y, double z) {
        scene.deck(id, x(x) - 1, y - 1, x(x) + 1, y + 1, z);
        return this;
    }

    /** A resource by its coordinates. */
    public Yard at(String id, ResourceKind kind, double x, double y, double z, int stalls) {
        return on(id, kind, "", x, y, z, stalls);
    }

    /** A resource on something. */
    public Yard on(String id, ResourceKind kind, String carrier, double x, double y, double z, int stalls) {
        resources.add(new Resource(id, kind, new Point(x(x), y, z), carrier, stalls));
        return this;
    }

    /** An animal with a body of the catalogue. */
    public Yard animal(String name, String body, int rank) {
        return animal(new Animal(name, body(body), rank));
    }

    /** An animal. */
    public Yard animal(Animal animal) {
        animals.add(animal);
        return this;
    }

    /** Food put out every day. */
    public Yard feed(String resource, String at, double energyKj) {
        feedings.add(new Feeding(resource, LocalTime.parse(at), energyKj));
        return this;
    }

    /** Food put out every day in some way. */
    public Yard feed(String resource, String at, double energyKj, FeedingMethod method, double handlingMin) {
        feedings.add(new Feeding(resource, LocalTime.parse(at), energyKj, method, handlingMin));
        return this;
    }

    /** How strictly the cheaper way is taken. */
    public Yard sharpness(double theta) {
        sharpness = new ChoiceSharpness(theta);
        return this;
    }

    /** Gives the yard a weather. */
    public Yard climate(Climate outside) {
        climate = Optional.of(outside);
        return this;
    }

    /** The yard made ready to be lived in. */
    public Habitat build() {
        Enclosure bare = scene.build();
        return build(
                new Enclosure(bare.site(), bare.ground(), bare.supports(), bare.platforms(), bare.crowns(), resources));
    }

    /** Another enclosure with the animals and the feedings of this one, made ready to be lived in. */
    public Habitat build(Enclosure enclosure) {
        return new Habitat(
                new Variant("as built", "", enclosure, feedings),
                animals,
                climate,
                EnergySettings.standard(),
                sharpness);
    }

    /** A body of the catalogue. */
    public static Body body(String name) {
        return BodyCatalogue.standard().find(name).orElseThrow();
    }
}
