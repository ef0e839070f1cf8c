package limbway.model.alteration;

import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.ResourceKind;
import limbway.model.geometry.Point;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;

class FreeNamesTest {

    /** Supports, decks and places share one set of names. */
    @Test
    void namesInUseAreSkippedWhateverHasThem() {
        Enclosure yard = Scene.yard(12, 8)
                .pole("new-food-1", 2, 2, 5)
                .deck("new-food-3", 1, 1, 3, 3, 2)
                .resource("new-food-4", ResourceKind.NEST, new Point(2, 2, 2), "new-food-3")
                .build();
        assertEquals("new-food-2", FreeNames.of(yard, "new-food", 0));
        assertEquals("new-food-5", FreeNames.of(yard, "new-food", 1));
        assertEquals("new-food-6", FreeNames.of(yard, "new-food", 2));
        assertEquals("link-1", FreeNames.of(yard, "link", 0));
    }
}
