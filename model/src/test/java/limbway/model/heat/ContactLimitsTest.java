package limbway.model.heat;

import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import limbway.model.enclosure.Material;
import limbway.model.heat.ContactLimits.Hold;
import limbway.model.heat.Surface.Touch;
import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

class ContactLimitsTest {

    /** ISO 13732-1, from memory; whoever has the standard should compare this table first. */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({
        "METAL, 65, 51",
        "COATED_METAL, 65, 51",
        "STONE, -1, 56",
        "WOOD_OR_PLASTIC, -1, 60",
    })
    void burnsFromTheRememberedThresholds(Touch touch, double secondC, double minuteC) {
        assertEquals(
                secondC < 0 ? OptionalDouble.empty() : OptionalDouble.of(secondC),
                ContactLimits.burnsFromC(touch, Hold.SECOND));
        assertEquals(OptionalDouble.of(minuteC), ContactLimits.burnsFromC(touch, Hold.MINUTE));
        assertEquals(OptionalDouble.of(48), ContactLimits.burnsFromC(touch, Hold.TEN_MINUTES));
        assertEquals(OptionalDouble.of(43), ContactLimits.burnsFromC(touch, Hold.EIGHT_HOURS));
    }

    @Test
    void theThresholdItselfBurnsAndAnUnknownOneDoesNot() {
        assertTrue(ContactLimits.burns(Touch.METAL, Hold.MINUTE, 51));
        assertFalse(ContactLimits.burns(Touch.METAL, Hold.MINUTE, 50.9));
        assertFalse(ContactLimits.burns(Touch.WOOD_OR_PLASTIC, Hold.SECOND, 90));
    }

    /** What is not known better is taken as the surface that gets hottest. */
    @Test
    void everyMaterialHasASurface() {
        assertEquals(SurfaceCatalogue.GALVANISED_OXIDISED, SurfaceCatalogue.of(Material.GALVANISED_STEEL));
        assertEquals(SurfaceCatalogue.BLACK_PAINT, SurfaceCatalogue.of(Material.PAINTED_STEEL));
        assertEquals(SurfaceCatalogue.STAINLESS, SurfaceCatalogue.of(Material.STAINLESS_STEEL));
        assertEquals(SurfaceCatalogue.WOOD, SurfaceCatalogue.of(Material.TIMBER));
        assertEquals(SurfaceCatalogue.WOOD, SurfaceCatalogue.of(Material.BARK));
        assertEquals(SurfaceCatalogue.ROPE, SurfaceCatalogue.of(Material.FIBRE_ROPE));
        assertEquals(SurfaceCatalogue.ROPE, SurfaceCatalogue.of(Material.FIRE_HOSE));
        assertEquals(SurfaceCatalogue.CONCRETE, SurfaceCatalogue.of(Material.CONCRETE));
    }

    @Test
    void noSurfaceNumberPassesForCertain() {
        List<Parameter> all = SurfaceCatalogue.parameters();
        assertEquals(2 * SurfaceCatalogue.all().size(), all.size());
        assertEquals(all.size(), all.stream().map(Parameter::name).distinct().count());
        for (Parameter parameter : all) {
            assertTrue(parameter.standing() != Standing.PUBLISHED, parameter.name());
            assertTrue(parameter.low() <= parameter.value() && parameter.value() <= parameter.high(), parameter.name());
        }
    }

    @Test
    void everySettingIsListedWithinItsRange() {
        List<Parameter> all = HeatSettings.standard().parameters();
        assertEquals(HeatSettings.class.getRecordComponents().length, all.size());
        for (Parameter parameter : all) {
            assertTrue(parameter.low() <= parameter.value() && parameter.value() <= parameter.high(), parameter.name());
        }
        var refused =
                assertThrows(IllegalArgumentException.class, () -> new HeatSettings(0.2, 0.01, 1.2, 0.97, 0.4, 0.5));
        assertEquals("heat: animalAbsorptance = 1.2, allowed 0 to 1", refused.getMessage());
    }

    /** 3.85 MJ/m3K x 3.2 mm / 20 W/m2K = 616 s; wood of 48 mm 1.0 x 12 mm / 20 = 604 s; a log of 30 cm over an hour. */
    @Test
    @Tag("derived")
    void tubesFollowTheSunAndLogsDoNot() {
        assertEquals(616, ResponseTime.seconds(Touch.METAL, 0.0483), 0.5);
        assertEquals(604, ResponseTime.seconds(Touch.WOOD_OR_PLASTIC, 0.0483), 0.5);
        assertEquals(3750, ResponseTime.seconds(Touch.WOOD_OR_PLASTIC, 0.3), 0.5);
        assertTrue(ResponseTime.isSteady(Touch.METAL, 0.3));
        assertTrue(ResponseTime.isSteady(Touch.WOOD_OR_PLASTIC, 0.072));
        assertFalse(ResponseTime.isSteady(Touch.WOOD_OR_PLASTIC, 0.073));
        assertFalse(ResponseTime.isSteady(Touch.STONE, 0.05));
    }

    @Test
    void refusesAShareThatIsNone() {
        var refused = assertThrows(
                IllegalArgumentException.class,
                () -> new Surface("foil", 0.1, 0, Touch.METAL, Standing.ASSUMPTION, "test"));
        assertEquals("surface \"foil\": emittance = 0.0, allowed above 0 and up to 1", refused.getMessage());
    }
}
