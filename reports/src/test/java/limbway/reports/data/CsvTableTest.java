package limbway.reports.data;

import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;

import limbway.reports.Pole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

class CsvTableTest {

    @Test
    void cellsWithCommasQuotesAndLineEndsAreQuoted() {
        CsvTable table = new CsvTable("t", "a row", List.of(Field.text("a", "x"), Field.whole("b", "y")));
        table.row("one, \"two\"\nthree", 4);
        assertEquals("a,b\n\"one, \"\"two\"\"\nthree\",4\n", table.text());
    }

    @Test
    void numbersHaveAPointAndNoNegativeZero() {
        assertEquals("0.000", CsvTable.number(-0.0001, 3));
        assertEquals("-0.001", CsvTable.number(-0.001, 3));
        assertEquals("1234567.5", CsvTable.number(1234567.5, 1));
        assertEquals("", CsvTable.number(OptionalDouble.empty(), 3));
    }

    @Test
    void aRowOfTheWrongLengthIsRefused() {
        CsvTable table = new CsvTable("t", "a row", List.of(Field.text("a", "x")));
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, () -> table.row(1, 2));
        assertEquals("table t: cells = 2, allowed 1", refused.getMessage());
    }

    @Test
    void aTripIsOneRowAndAWayThatDoesNotExistIsEmpty() {
        CsvTable trips = new JournalTables(
                        Pole.outcome(Pole.habitat(), 1, Pole.journal(1, Pole.trip(0, 8, 10, 4, 100, 40))))
                .trips();
        assertEquals("""
                replication,day,animal,body,start_s,end_s,from,to,motive,distance_m,offground_m,energy_j,offground_energy_j,cheapest_j,cheapest_offground_j,seconds,offground_s
                1,1,Ibu,adult female,28800.000,28810.000,food,water,thirst,10.000,4.000,100.000,40.000,100.000,,10.000,4.000
                """, trips.text());
    }
}
