package limbway.reports.words;

import java.util.List;

import org.junit.jupiter.api.Test;

import limbway.reports.words.Directions.Part;

import static org.junit.jupiter.api.Assertions.assertEquals;

class DirectionsTest {

    private static final String NAME = "\u05e9\u05dc\u05d5\u05dd";
    private static final String OTHER = "\u0645\u0631\u062d\u0628\u0627";

    @Test
    void aNameFromRightToLeftIsAPartOfItsOwnWithWhatIsJoinedToIt() {
        assertEquals(
                List.of(
                        new Part("from ", false),
                        new Part(NAME + "-1 " + OTHER, true),
                        new Part(", ", false),
                        new Part(OTHER, true),
                        new Part(" to deck", false)),
                Directions.parts("from " + NAME + "-1 " + OTHER + ", " + OTHER + " to deck"));
    }

    @Test
    void otherTextIsOnePart() {
        assertEquals(
                List.of(new Part("Ibu, \u00fcber 7 m \ud83e\udda7", false)),
                Directions.parts("Ibu, \u00fcber 7 m \ud83e\udda7"));
        assertEquals(List.of(), Directions.parts(""));
    }

    @Test
    void whatTurnsTheDirectionIsShownAsUnknown() {
        assertEquals("a\ufffdb\ufffdc", Xml.shown("a\u202eb\u2066c"));
        assertEquals("a\ufffd&amp;", Xml.escape("a\u202d&"));
    }
}
