package limbway.model.link;

import java.math.BigDecimal;
import java.util.Set;

import limbway.model.alteration.Alteration;
import limbway.model.enclosure.Support;
import limbway.model.geometry.HangingLine;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;

/**
 * A link that could be added.
 *
 * @param kind rope or pole
 * @param from one end
 * @param to other end
 * @param diameterM thickness [m], above 0
 */
public record Candidate(LinkKind kind, Tie from, Tie to, double diameterM) {

    /**
     * Its course.
     *
     * @return a line that hangs in its sag
     */
    public Polyline axis() {
        Point a = from.at();
        Point b = to.at();
        return HangingLine.between(a, b, kind.sagShare() * a.planDistanceM(b));
    }

    /**
     * What is to be bought.
     *
     * @return length along it between its ends [m]
     */
    public double lengthM() {
        return axis().lengthM();
    }

    /**
     * Whether it can hang beside another new link: nowhere within a decimetre of it, but near a place where both are tied.
     *
     * @param other another link
     * @return false where they would cross or chafe
     */
    public boolean keepsApart(Candidate other) {
        return Fit.keepApart(this, other);
    }

    /**
     * The change of the layout.
     *
     * @param id name of the link, not in use
     * @return a support that is added, and what it is tied to
     */
    public Alteration.SupportAdded alteration(String id) {
        return new Alteration.SupportAdded(
                new Support(id, kind.support(), axis(), diameterM, kind.material()), Set.of(from.on(), to.on()));
    }

    /**
     * The same change as a line for the changes of a variant.
     *
     * @param id name of the link, not in use
     * @return YAML
     */
    public String scenarioLine(String id) {
        String material =
                kind == LinkKind.POLE ? ", material: " + kind.material().word() : "";
        return "- {add: {" + kind.support().word() + ": " + id + ", from: " + quoted(from.words()) + ", to: "
                + quoted(to.words()) + ", diameter: "
                + BigDecimal.valueOf(diameterM).stripTrailingZeros().toPlainString() + material + "}}";
    }

    private static String quoted(String words) {
        return words.indexOf('[') >= 0 ? '"' + words + '"' : words;
    }
}
