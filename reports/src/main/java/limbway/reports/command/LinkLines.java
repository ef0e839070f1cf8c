package limbway.reports.command;

import java.util.List;

import limbway.reports.page.LinkReport;
import limbway.reports.page.LinkText;
import limbway.reports.words.Figures;
import limbway.reports.words.WrappedLines;
import limbway.sim.experiment.link.Fragile;
import limbway.sim.experiment.link.Proposal;

/** The answer of a search for links as lines of a terminal. */
final class LinkLines {

    private static final int MOST_PROPOSALS = 5;
    private static final int MOST_FALLS = 5;
    private static final String INDENT = "    ";
    private static final String NONE_EXPECTED =
            "Going by today's trips, no single support is expected to bring travel to the ground if it fails.";
    private static final String NONE_LIVED =
            "No failure that was lived with brings travel to the ground, and going by today's trips none of the others is "
                    + "expected to.";

    private final WrappedLines lines = new WrappedLines();

    private LinkLines() {}

    static List<String> of(LinkReport report) {
        LinkLines text = new LinkLines();
        List<Proposal> proposals = report.found().proposals();
        if (report.info().links() > 0) {
            text.add(report.info().layout() + ": " + LinkText.looked(report));
            if (proposals.isEmpty()) {
                text.add("No link within the limits brings a trip of today off the ground.");
            }
        }
        for (Proposal proposal : proposals.subList(0, Math.min(MOST_PROPOSALS, proposals.size()))) {
            text.add(LinkText.sentence(proposal));
            LinkText.lines(report, proposal).forEach(line -> text.lines.row(INDENT + line));
            String heldUp = LinkText.heldUp(proposal);
            if (!heldUp.isEmpty()) {
                text.add(INDENT + heldUp);
            }
        }
        if (proposals.size() > MOST_PROPOSALS) {
            text.add("and " + Figures.count(proposals.size() - MOST_PROPOSALS) + " more, which --json and --out tell");
        }
        List<Fragile> fragile = report.found().fragile().stream()
                .filter(one -> one.offGroundLoss() > 0)
                .limit(MOST_FALLS)
                .toList();
        boolean anyLived =
                report.found().fragile().stream().anyMatch(one -> one.lived().isPresent());
        text.add(
                fragile.isEmpty()
                        ? anyLived ? NONE_LIVED : NONE_EXPECTED
                        : "Look at these first, because they hurt most if they fail:");
        fragile.forEach(one -> text.add("  " + LinkText.sentence(one)));
        text.add("Ropes entangle; anchors and loads are for licensed people to judge.");
        return text.lines.all();
    }

    private void add(String text) {
        lines.add(text);
    }
}
