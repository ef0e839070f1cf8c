package limbway.reports.lesson;

import java.util.List;

import limbway.reports.chart.DataTable;
import limbway.reports.chart.Picture;

/** Something that a step shows. */
public sealed interface Block {

    /**
     * A paragraph.
     *
     * @param text one or more sentences
     */
    record Words(String text) implements Block {}

    /**
     * Several things one below the other.
     *
     * @param items sentences or clauses
     */
    record Points(List<String> items) implements Block {

        /** Keeps a copy of the list. */
        public Points {
            items = List.copyOf(items);
        }
    }

    /**
     * A picture with the numbers behind it.
     *
     * @param picture what is drawn
     */
    record Shown(Picture picture) implements Block {}

    /**
     * A table.
     *
     * @param caption what it tells
     * @param table its cells
     */
    record Tabled(String caption, DataTable table) implements Block {}

    /**
     * Where the ways of the trip are played, if the page can play them; without that nothing stands here.
     *
     * @param words what is played
     */
    record Played(String words) implements Block {}
}
