package limbway.model.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import limbway.model.enclosure.Material;
import limbway.model.heat.Surface.Touch;
import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

/** The surfaces that are known, and which of them a material is taken to have. */
public final class SurfaceCatalogue {

    /** Bright zinc of the first years. */
    public static final Surface GALVANISED_NEW = new Surface(
            "new galvanised steel",
            0.64,
            0.23,
            Touch.METAL,
            Standing.UNVERIFIED,
            "absorptance: handbook table, second-hand; emittance: a thermographer's table, burnished zinc at 30 °C");

    /** Dull grey zinc. */
    public static final Surface GALVANISED_OXIDISED = new Surface(
            "weathered galvanised steel",
            0.80,
            0.28,
            Touch.METAL,
            Standing.UNVERIFIED,
            "absorptance: from memory; emittance: a thermographer's table; heavily oxidised zinc up to 0.85, and cooler");

    /** Pickled, not polished. */
    public static final Surface STAINLESS = new Surface(
            "stainless steel",
            0.52,
            0.20,
            Touch.METAL,
            Standing.UNVERIFIED,
            "absorptance: handbook table, pickled (polished 0.33), second-hand; emittance: from memory");

    /** Black or any dark paint. */
    public static final Surface BLACK_PAINT = new Surface(
            "black paint on steel",
            0.95,
            0.90,
            Touch.COATED_METAL,
            Standing.UNVERIFIED,
            "absorptance: from memory; emittance: a thermographer's table, lacquers 0.87 to 0.98");

    /** White paint. */
    public static final Surface WHITE_PAINT = new Surface(
            "white paint on steel",
            0.25,
            0.90,
            Touch.COATED_METAL,
            Standing.UNVERIFIED,
            "absorptance: from memory, clean; emittance: a thermographer's table, lacquers 0.80 to 0.95");

    /** Peeled or sawn wood. */
    public static final Surface WOOD = new Surface(
            "wood",
            0.60,
            0.90,
            Touch.WOOD_OR_PLASTIC,
            Standing.UNVERIFIED,
            "handbook values from memory; measured outdoors: absorptance 0.31 to 0.57, emittance 0.31 to 0.77 (Kang et al."
                    + " 2011)");

    /** Rope or woven hose. */
    public static final Surface ROPE = new Surface(
            "rope", 0.60, 0.90, Touch.WOOD_OR_PLASTIC, Standing.ASSUMPTION, "no source was found; taken as wood");

    /** Cast concrete. */
    public static final Surface CONCRETE = new Surface(
            "concrete",
            0.60,
            0.90,
            Touch.STONE,
            Standing.UNVERIFIED,
            "grey concrete, from memory; dark stone takes up more");

    private SurfaceCatalogue() {}

    /**
     * All surfaces.
     *
     * @return eight, bare metal first
     */
    public static List<Surface> all() {
        return List.of(GALVANISED_NEW, GALVANISED_OXIDISED, STAINLESS, BLACK_PAINT, WHITE_PAINT, WOOD, ROPE, CONCRETE);
    }

    /**
     * The surface of a material of which no more is known: of several the one that gets hottest, so zinc is weathered and
     * paint is black.
     *
     * @param material stuff of a support
     * @return its surface
     */
    public static Surface of(Material material) {
        return switch (material) {
            case GALVANISED_STEEL -> GALVANISED_OXIDISED;
            case PAINTED_STEEL -> BLACK_PAINT;
            case STAINLESS_STEEL -> STAINLESS;
            case TIMBER, BARK -> WOOD;
            case FIBRE_ROPE, FIRE_HOSE -> ROPE;
            case CONCRETE -> CONCRETE;
        };
    }

    /**
     * All values with range and source.
     *
     * @return absorptance and emittance of each surface
     */
    public static List<Parameter> parameters() {
        List<Parameter> all = new ArrayList<>();
        for (Surface surface : all()) {
            String name = "heat.surface." + surface.word().replace(' ', '-').toLowerCase(Locale.ROOT);
            all.add(share(name + ".absorptance", "share of sunlight taken up", surface, surface.absorptance(), 0.15));
            all.add(share(name + ".emittance", "heat rays over a black body's", surface, surface.emittance(), 0.10));
        }
        return List.copyOf(all);
    }

    private static Parameter share(String name, String meaning, Surface surface, double value, double doubt) {
        return new Parameter(
                name,
                surface.word() + ": " + meaning,
                "1",
                value,
                Math.max(0.05, hundredths(value - doubt)),
                Math.min(0.98, hundredths(value + doubt)),
                surface.standing(),
                surface.source());
    }

    private static double hundredths(double value) {
        return Math.round(value * 100) / 100.0;
    }
}
