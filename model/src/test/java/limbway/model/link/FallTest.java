package limbway.model.link;

import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.ResourceKind;
import limbway.model.geometry.Point;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

class FallTest {

    private static Enclosure yard() {
        return Scene.yard(24, 20)
                .pole("west", 6, 10, 6)
                .pole("east", 14, 10, 6)
                .pole("far", 20, 10, 6)
                .deck("stand", 13, 9, 15, 11, 4)
                .rope("line", new Point(6, 10, 5), new Point(14, 10, 5))
                .rope("next", new Point(14, 10, 5), new Point(20, 10, 5))
                .rope("drop", new Point(10, 10, 5), new Point(10, 10, 1))
                .resource("nest", ResourceKind.NEST, new Point(13.5, 10, 4), "stand")
                .resource("tray", ResourceKind.FOOD, new Point(20, 10, 3), "far")
                .build();
    }

    @Test
    void whatHangsOnAMastFallsWithIt() {
        Fall fall = Fall.of(yard(), "east");
        assertEquals(Set.of("stand", "line", "next", "drop"), fall.with());
        assertEquals(Set.of("nest"), fall.lost());
        assertEquals(
                List.of("west", "far"),
                fall.left().supports().stream().map(support -> support.id()).toList());
        assertEquals(0, fall.left().resources().get(0).at().zM());
        assertEquals(yard().resources().get(1), fall.left().resources().get(1));
    }

    @Test
    void twoRopesTiedAtOnePlaceDoNotHangOnEachOther() {
        assertEquals(Set.of("drop"), Fall.of(yard(), "line").with());
        assertEquals(Set.of(), Fall.of(yard(), "next").with());
        assertEquals(Set.of(), Fall.of(yard(), "drop").with());
    }

    @Test
    void whatIsNotThereCannotFail() {
        assertThrows(IllegalArgumentException.class, () -> Fall.of(yard(), "nothing"));
    }
}
