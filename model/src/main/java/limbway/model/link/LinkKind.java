package limbway.model.link;

import limbway.model.enclosure.Material;
import limbway.model.enclosure.SupportKind;

/** What a new link is built as. */
public enum LinkKind {
    /** A fibre rope that hangs in its sag. */
    ROPE("rope", SupportKind.ROPE, Material.FIBRE_ROPE, 0.05),
    /** A straight pole of timber, laid from one place to the other; a scenario calls it a beam. */
    POLE("pole", SupportKind.BEAM, Material.TIMBER, 0);

    private final String word;
    private final SupportKind support;
    private final Material material;
    private final double sagShare;

    LinkKind(String word, SupportKind support, Material material, double sagShare) {
        this.word = word;
        this.support = support;
        this.material = material;
        this.sagShare = sagShare;
    }

    /**
     * What it is called.
     *
     * @return a lower-case English word
     */
    public String word() {
        return word;
    }

    /**
     * What kind of support it is.
     *
     * @return rope or beam
     */
    public SupportKind support() {
        return support;
    }

    /**
     * What it is made of.
     *
     * @return fibre rope or timber
     */
    public Material material() {
        return material;
    }

    /**
     * How far its middle hangs below the straight line between its ends, as a share of their distance in plan: for a rope
     * what a scenario assumes where it says nothing.
     *
     * @return share, 0 for a straight one
     */
    public double sagShare() {
        return sagShare;
    }
}
