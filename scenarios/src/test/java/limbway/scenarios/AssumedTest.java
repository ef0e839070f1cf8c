package limbway.scenarios;

import java.nio.file.Path;
import java.util.Map;

import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;

/** A scenario sets numbers of the model by a situation and by their names. */
class AssumedTest {

    private static Reading with(String lines) {
        return ScenarioReader.read("yard.yaml", SmallYard.TEXT + lines, Path.of("."), Examples.ASSUMABLE);
    }

    private static Map<String, Double> assumed(String lines) {
        return Examples.sound(with(lines)).study().assumed();
    }

    @Test
    void nothingIsSetUnlessTheScenarioSaysSo() {
        assertEquals(Map.of(), assumed(""));
        assertEquals(Map.of(), assumed("situation: long settled\n"));
    }

    @Test
    void singleNumbersWinAgainstTheSituation() {
        assertEquals(Map.of("worth.bedding", 0.05, "worth.cover", 0.1), assumed("situation: moved in lately\n"));
        assertEquals(
                Map.of("worth.bedding", 0.2, "worth.cover", 0.1, "need.tiring", 300.0),
                assumed("assume: {worth.bedding: 0.2, need.tiring: 300 min}\nsituation: Moved in lately\n"));
    }

    @Test
    void theEndsOfTheRangeAreAllowed() {
        assertEquals(
                Map.of("worth.bedding", 0.3, "worth.cover", 0.0),
                assumed("assume: {worth.bedding: 0.3, worth.cover: 0}\n"));
    }

    @Test
    void everyMistakeIsToldWithItsPlace() {
        assertEquals("""
                yard.yaml:20:12: unknown situation "moved in latly" of scenario
                  allowed  long settled, moved in lately
                  mend     did you mean "moved in lately"?

                yard.yaml:22:3: there is no parameter "worth.beding" to assume
                  allowed  worth.bedding, worth.ground-wariness, worth.cover
                  mend     did you mean "worth.bedding"?

                yard.yaml:23:3: there is no parameter "sleep" to assume
                  allowed  names that begin with worth., need.
                  mend     take a name of the table of parameters

                yard.yaml:24:16: value of worth.cover is outside the range worth trying
                  found    "0.5"
                  allowed  0 to 0.2
                  mend     it says what cover adds; left out it is 0.03

                yard.yaml:25:16: value of need.tiring is in another unit
                  found    "5 h"
                  allowed  60 min to 600 min
                  mend     it says time in which an animal tires; left out it is 240 min

                yard.yaml:26:18: value of worth.bedding is not a number
                  found    "much"
                  allowed  0 to 0.3
                  mend     it says what bedding adds; left out it is 0.1

                6 problems
                """, Examples.refusal(with("""
                        situation: moved in latly
                        assume:
                          worth.beding: 0.2
                          sleep: 8
                          worth.cover: 0.5
                          need.tiring: 5 h
                          worth.bedding: much
                        """)));
    }

    @Test
    void aListIsNoMapping() {
        assertEquals("""
                yard.yaml:20:9: assume has no keys with values
                  found    a list of 1
                  allowed  keys and values, for example {key: value, other-key: value}

                1 problem
                """, Examples.refusal(with("assume: [worth.bedding]\n")));
    }
}
