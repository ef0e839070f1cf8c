package limbway.scenarios;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Support;
import limbway.model.parameter.Assumable;
import limbway.model.parameter.Parameter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

/** Tables of trees: sound ones become trunks, each mistake in a bad one is told with its line and column. */
class SurveyTest {

    private static final String SURVEY =
            "survey: {table: trees.csv, prefix: t, columns: {x: x, y: y, diameter: d}}\nanimals:\n";

    @TempDir
    private Path folder;

    private Reading read(String survey, String table) throws IOException {
        Files.writeString(folder.resolve("trees.csv"), table);
        String text = SmallYard.TEXT.replace("animals:\n", survey);
        return ScenarioReader.read("yard.yaml", text, folder, Assumable.nothing());
    }

    private void assertRefused(String expected, String survey, String table) throws IOException {
        String answer = Examples.refusal(read(survey, table));
        assertEquals(expected, answer.replace(folder.resolve("trees.csv").toString(), "trees.csv"));
    }

    @Test
    void stemsBecomeTrunksNamedByTheirRow() throws IOException {
        Reading.Read read = Examples.sound(read(SURVEY, "x,y,d\n1,2,30\n3,4,20\n1,2,40\n"));
        Enclosure enclosure = read.study().base().enclosure();
        assertEquals(
                List.of("mast-1", "mast-2", "rope-1", "t-2", "t-3"),
                enclosure.supports().stream().map(Support::id).toList());
        assertEquals(0.4, enclosure.supports().get(4).diameterM());
    }

    @Test
    void ownColumnsUnitsAndCoefficientsAreUsed() throws IOException {
        String survey = """
                survey:
                  table: trees.csv
                  prefix: t
                  columns: {x: east, y: north, diameter: dbh, height: h, crown-radius: r}
                  diameter-unit: mm
                  tallest: 1
                  allometry: {crown-base-share: 0.5}
                animals:
                """;
        Reading.Read read =
                Examples.sound(read(survey, "id;east;north;dbh;h;r\n\"a;b\";1;2;300;12;2\nb;3;4;200;14;3\n"));
        Enclosure enclosure = read.study().base().enclosure();
        assertEquals(1, enclosure.crowns().size());
        assertEquals("t-2 crown", enclosure.crowns().get(0).id());
        assertEquals(3, enclosure.crowns().get(0).radiusM());
        assertEquals(7, enclosure.crowns().get(0).baseZM());
        assertEquals(14, enclosure.crowns().get(0).topZM());
        assertEquals(0.2, enclosure.supports().get(3).diameterM());
        assertEquals(
                List.of("allometry.crown-base-share"),
                read.parameters().stream().map(Parameter::name).toList());
    }

    @Test
    void aSurveyedTreeCanBeAlteredInAVariant() throws IOException {
        Files.writeString(folder.resolve("trees.csv"), "x,y,d\n1,2,30\n");
        String text = SmallYard.TEXT
                .replace("animals:\n", SURVEY)
                .replace("[{move: hatch, on: mast-2 at 5.5}]", "[{alter: t-1, height: 9.5, crown-base: 3}]");
        Reading.Read read = Examples.sound(ScenarioReader.read("yard.yaml", text, folder, Assumable.nothing()));
        assertEquals(
                9.5, read.study().variants().get(0).enclosure().crowns().get(0).topZM());
    }

    @Test
    void theHashCoversTheTable() throws IOException {
        String one = Examples.sound(read(SURVEY, "x,y,d\n1,2,30\n")).sha256Hex();
        String other = Examples.sound(read(SURVEY, "x,y,d\n1,2,31\n")).sha256Hex();
        assertNotEquals(one, other);
    }

    @Test
    void everyBadCellIsTold() throws IOException {
        assertRefused("""
                trees.csv:2:1: x of a stem is not a number
                  found    "one"
                  allowed  -2000 m to 2000 m

                trees.csv:3:5: diameter of a stem is outside what is plausible
                  found    -0.2 m
                  allowed  0.005 m to 4 m
                  mend     correct the number, or the diameter-unit of the survey

                trees.csv:4:3: y of a stem is not a number
                  found    ""
                  allowed  -2000 m to 2000 m

                3 problems
                """, SURVEY, "x,y,d\none,2,30\n3,4,-20\n5,,20\n");
    }

    @Test
    void aStemOutsideTheGroundIsTold() throws IOException {
        assertRefused("""
                trees.csv:3:1: foot of trunk "t-2" lies outside the outline of the ground
                  found    [90, 4]
                  mend     move it inside, or make the ground larger

                1 problem
                """, SURVEY, "x,y,d\n1,2,30\n90,4,20\n");
    }

    @Test
    void aMissingColumnIsToldWhereItIsNamed() throws IOException {
        assertRefused("""
                yard.yaml:14:71: the table has no column "d"
                  allowed  x, y, dbh
                  mend     take a name of its first line

                1 problem
                """, SURVEY, "x,y,dbh\n1,2,30\n");
    }

    @Test
    void rowsOfAnotherLengthAndEmptyTablesAreTold() throws IOException {
        assertRefused("""
                trees.csv:3:1: this row does not fit the first line
                  found    2 cells
                  allowed  3 cells

                1 problem
                """, SURVEY, "x,y,d\n1,2,30\n3,4\n");
        assertRefused("""
                trees.csv:1:1: this table is empty
                  allowed  a line with the names of the columns, then a line for each tree

                1 problem
                """, SURVEY, "");
    }

    @Test
    void aTableOfTooManyRowsIsTold() throws IOException {
        assertRefused("""
                trees.csv:20002:1: this table has too many rows
                  allowed  at most 20000
                  mend     cut the table, for example to the thicker stems

                1 problem
                """, SURVEY, "x,y,d\n" + "1,2,30\n".repeat(20_001));
    }

    @Test
    void aMissingTableIsToldWhereItIsNamed() {
        String text = SmallYard.TEXT.replace("animals:\n", SURVEY);
        assertEquals(
                """
                yard.yaml:14:17: there is no such file
                  found    %s
                  mend     check the name and the folder

                1 problem
                """.formatted(folder.resolve("trees.csv")),
                Examples.refusal(ScenarioReader.read("yard.yaml", text, folder, Assumable.nothing())));
    }

    /** A pipe that nobody writes into would keep the reader waiting for ever. */
    @Test
    void aTableThatIsNoOrdinaryFileIsRefusedUnread() {
        assumeTrue(Files.exists(Path.of("/dev/zero")), "only where there are devices");
        String survey = SURVEY.replace("trees.csv", "/dev/zero");
        assertEquals(
                """
                yard.yaml:14:17: this is no ordinary file
                  found    /dev/zero
                  mend     save the table as a file on a disk

                1 problem
                """,
                Examples.refusal(ScenarioReader.read(
                        "yard.yaml", SmallYard.TEXT.replace("animals:\n", survey), folder, Assumable.nothing())));
    }

    @Test
    void aColumnNameThatStandsTwiceIsTold() throws IOException {
        assertRefused("""
                yard.yaml:14:52: the table has more than one column "x"
                  mend     give each column its own name in the first line of the table

                1 problem
                """, SURVEY, "x,x,y,d\n1,2,3,30\n");
    }

    @Test
    void aQuotationMarkThatIsNotClosedIsTold() throws IOException {
        assertRefused("""
                trees.csv:2:5: this quotation mark is not closed on its line
                  mend     close it, or take it out; a cell may not run over several lines

                1 problem
                """, SURVEY, "x,y,d\n1,2,\"30\n");
    }
}
