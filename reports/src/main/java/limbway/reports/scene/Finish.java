package limbway.reports.scene;

import java.util.Locale;

import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.CoverKind;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.PanelKind;
import limbway.model.enclosure.PlatformKind;
import limbway.model.enclosure.ResourceKind;

/** The paints of a scene: quiet earth and stone, stronger only where an animal goes or must not go. */
enum Finish {
    STEEL("steel", 0x8A9299, 1),
    TIMBER("timber", 0xA98B66, 1),
    BARK("bark", 0x75624F, 1),
    FIBRE("fibre", 0xBFA98A, 1),
    CONCRETE("concrete", 0xA8A49C, 1),
    DECK("deck", 0xC2B59B, 1),
    HAMMOCK("hammock", 0xB08F7C, 1),
    CROWN("crown", 0x7F9A76, 0.22),
    MESH("mesh", 0x6E7780, 0.3),
    NET("net", 0x9A8B6C, 0.4),
    GROUND("ground", 0xDAD8CB, 1),
    OBSTACLE("obstacle", 0x9F9B92, 1),
    WALL("wall", 0xB9B4AC, 1),
    GLASS("glass", 0xA9C3CC, 0.3),
    WATER("water", 0x6F9DB3, 0.6),
    WIRE("wire", 0x7A2F28, 1),
    KEPT_FREE("kept free", 0xB5534A, 0.22),
    PLANTING("planting", 0x6F8B62, 0.5),
    DOOR("door", 0xC9A24B, 0.7),
    ROOF("roof", 0x6B6472, 0.55),
    SAIL("sail", 0xB3A6BC, 0.4),
    BUILDING("building", 0x9C968F, 1),
    NEIGHBOUR("tree beside", 0x667F66, 0.3),
    FOOD("food", 0xB5651D, 1),
    DRINK("drink", 0x2F6F9F, 1),
    SHADE("shade", 0x4B5563, 1),
    NEST("nest", 0x7B5B8A, 1),
    RETREAT("retreat", 0x3F6B57, 1),
    EDGE("edge", 0x55595E, 1),
    WALK("quadrupedal walk", 0x8C7A3D, 1),
    CLIMB("vertical climb", 0x34526F, 1),
    DESCENT("vertical descent", 0x6C93B8, 1),
    CLAMBER("clamber", 0x4F7F5A, 1),
    BRIDGE("bridge", 0x9A4F2E, 1),
    BIPEDAL("bipedal walk", 0xB59A4F, 1),
    BRACHIATE("brachiate", 0x7B3F6B, 1),
    SWAY("sway", 0x2E8A8A, 1),
    LEAP("leap", 0xC0392F, 1),
    DROP("drop", 0x8F8F8F, 1);

    private final String word;
    private final int rgb;
    private final double alpha;

    Finish(String word, int rgb, double alpha) {
        this.word = word;
        this.rgb = rgb;
        this.alpha = alpha;
    }

    String word() {
        return word;
    }

    /** The colour as code values of sRGB, as style sheets write it. */
    String hex() {
        return String.format(Locale.ROOT, "#%06x", rgb);
    }

    /** Whether its shadow is drawn: not that of what is thin, clear, a mark, or only kept free. */
    boolean castsShadow() {
        return switch (this) {
            case STEEL,
                    TIMBER,
                    BARK,
                    FIBRE,
                    CONCRETE,
                    DECK,
                    HAMMOCK,
                    CROWN,
                    OBSTACLE,
                    WALL,
                    PLANTING,
                    DOOR,
                    ROOF,
                    SAIL,
                    BUILDING,
                    NEIGHBOUR -> true;
            default -> false;
        };
    }

    /** How much is covered of what lies behind, above 0 to 1. */
    double alpha() {
        return alpha;
    }

    /**
     * One part of the colour in linear light, as glTF asks for.
     *
     * @param shift 16, 8 or 0 for red, green, blue
     * @source IEC 61966-2-1 (sRGB), the curve from code values to light
     */
    double linear(int shift) {
        double code = ((rgb >> shift) & 0xFF) / 255.0;
        double light = code <= 0.04045 ? code / 12.92 : StrictMath.pow((code + 0.055) / 1.055, 2.4);
        // four decimals are far finer than an eye
        return Math.rint(light * 10_000) / 10_000;
    }

    static Finish of(Material material) {
        return switch (material) {
            case GALVANISED_STEEL, PAINTED_STEEL, STAINLESS_STEEL -> STEEL;
            case TIMBER -> TIMBER;
            case BARK -> BARK;
            case FIBRE_ROPE, FIRE_HOSE -> FIBRE;
            case CONCRETE -> CONCRETE;
        };
    }

    static Finish of(PlatformKind kind) {
        return kind == PlatformKind.HAMMOCK ? HAMMOCK : DECK;
    }

    static Finish of(CoverKind kind) {
        return kind == CoverKind.ROOF ? ROOF : SAIL;
    }

    static Finish of(PanelKind kind) {
        return kind == PanelKind.NET ? NET : MESH;
    }

    static Finish of(BarrierKind kind) {
        return switch (kind) {
            case WALL -> WALL;
            case GLASS -> GLASS;
            case WATER -> WATER;
        };
    }

    static Finish of(ResourceKind kind) {
        return switch (kind) {
            case FOOD -> FOOD;
            case WATER -> DRINK;
            case SHADE -> SHADE;
            case NEST -> NEST;
            case RETREAT -> RETREAT;
        };
    }

    static Finish of(LocomotorMode mode) {
        return switch (mode) {
            case QUADRUPEDAL_WALK -> WALK;
            case VERTICAL_CLIMB -> CLIMB;
            case VERTICAL_DESCENT -> DESCENT;
            case CLAMBER -> CLAMBER;
            case BRIDGE -> BRIDGE;
            case BIPEDAL_WALK -> BIPEDAL;
            case BRACHIATE -> BRACHIATE;
            case SWAY -> SWAY;
            case LEAP -> LEAP;
            case DROP -> DROP;
        };
    }
}
