package limbway.reports.measure;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Building;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Ground;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Shading;
import limbway.model.enclosure.Site;
import limbway.model.geometry.Outline;
import limbway.model.shade.ShadeRule;
import limbway.model.shade.ShadeScene;
import limbway.model.shade.ShadeSettings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Ground west and east of an endless wall from south to north, at the equator on the day of the equinox. */
class ShadeMapTest {

    private static final LocalDate EQUINOX = LocalDate.of(2026, 3, 20);
    private static final double LOWEST_DEG = 5;
    private static final double WALL_M = 5;

    private static final Enclosure YARD = new Enclosure(
                    new Site(0, 0, ZoneOffset.UTC),
                    new Ground(Outline.rectangle(0, 0, 16, 8), "grass", List.of()),
                    List.of(),
                    List.of(new Platform("deck", Outline.rectangle(10, 2, 12, 4), 2)),
                    List.of(),
                    List.of())
            .withShading(new Shading(
                    List.of(),
                    List.of(new Building("wall", Outline.rectangle(-1, -400, 0, 400), 0, WALL_M)),
                    List.of()));

    private static ShadeMap map(boolean stopped) {
        return ShadeMap.of(
                YARD,
                ShadeScene.of(YARD, ShadeSettings.standard()),
                new ShadeRule(1, 0.75, 0.3, LOWEST_DEG),
                2026,
                EQUINOX,
                () -> stopped);
    }

    /**
     * The sun climbs 15 degrees an hour from due east to due west. East of the wall it sets behind it when it stands at the
     * angle whose tangent is height over distance, and counts down to 5 degrees.
     */
    @Test
    @Tag("derived")
    void theShadowOfAWallLastsAsLongAsTheSunStandsBehindIt() {
        ShadeMap map = map(false);
        // of 180 degrees from east to west 170 count
        assertEquals(170 / 15.0, map.daySunH(), 0.25);
        int looked = 0;
        for (ShadeMap.Cell cell : map.ground().cells()) {
            boolean underDeck = cell.yM() < 6 && cell.yM() > 0;
            if (!underDeck) {
                double behindDeg = Math.toDegrees(Math.atan2(WALL_M - 0.02, cell.xM()));
                // looked at every quarter of an hour: a stretch of time is right to one of them, here and at its other
                // end
                assertEquals((behindDeg - LOWEST_DEG) / 15, cell.dayH(), 0.3, () -> cell.toString());
                looked++;
            }
        }
        assertTrue(looked > 100, "cells = " + looked);
    }

    @Test
    void decksAreLookedAtWhereTheyLieAndNothingIsLongerInShadeThanTheSunIsUp() {
        ShadeMap map = map(false);
        assertEquals("deck", map.decks().get(0).name());
        assertTrue(map.decks().get(0).cells().size() >= 16);
        // two metres higher the wall hides less of the sky than on the ground below
        double onDeckDeg = Math.toDegrees(Math.atan2(WALL_M - 2, 11));
        assertEquals((onDeckDeg - LOWEST_DEG) / 15, map.decks().get(0).dayH(), 0.3);
        for (ShadeMap.Cell cell : map.ground().cells()) {
            assertTrue(cell.dayH() <= map.daySunH() && cell.yearH() <= map.yearSunH(), cell.toString());
        }
        // below the deck there is shade at noon too
        assertTrue(
                map.ground().cells().stream()
                        .filter(cell -> Math.abs(cell.xM() - 11) < 0.5 && Math.abs(cell.yM() - 3) < 0.5)
                        .allMatch(cell -> cell.dayH() > 3),
                "below the deck");
    }

    @Test
    void workThatIsStoppedEndsAtOnce() {
        assertEquals(0, map(true).ground().cells().size());
    }
}
