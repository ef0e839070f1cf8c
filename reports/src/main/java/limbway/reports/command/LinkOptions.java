package limbway.reports.command;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

import limbway.model.link.LinkKind;
import limbway.model.link.LinkLimits;

/** What may be tied where. */
final class LinkOptions {

    private static final double ROPE_M = 0.05;
    private static final double POLE_M = 0.08;

    @Option(
            names = "--kind",
            paramLabel = "KIND",
            defaultValue = "rope",
            converter = Kind.class,
            description =
                    "What is added: rope, with the sag that a scenario assumes, or pole, laid straight; without it rope.")
    private LinkKind kind;

    @Option(
            names = "--diameter",
            paramLabel = "M",
            converter = Diameter.class,
            description = "Thickness of the link; without it 0.05 m for a rope, 0.08 m for a pole.")
    private Double diameterM;

    @Option(
            names = "--length",
            paramLabel = "M",
            defaultValue = "12",
            converter = Metres.class,
            description = "Greatest distance between its ends; without it 12 m.")
    private double longestM;

    @Option(
            names = "--shortest",
            paramLabel = "M",
            defaultValue = "1",
            converter = Metres.class,
            description = "Least distance between its ends; without it 1 m.")
    private double shortestM;

    @Option(
            names = "--slope",
            paramLabel = "DEGREES",
            defaultValue = "30",
            converter = NumberInRange.Height.class,
            description = "Steepest line between its ends; without it 30.")
    private double steepestDeg;

    @Option(
            names = "--clearance",
            paramLabel = "M",
            defaultValue = "2.5",
            converter = Metres.class,
            description =
                    "Least height of every part of it above the ground, for the heads of keepers and the hands of visitors; "
                            + "without it 2.5 m.")
    private double clearanceM;

    @Option(
            names = "--spacing",
            paramLabel = "M",
            defaultValue = "1",
            converter = Metres.class,
            description = "Distance between the places along a support that are tried; without it 1 m.")
    private double spacingM;

    @Option(
            names = "--on-ropes",
            description =
                    "Also tie it to ropes and branches, which give way; without it only to poles, trunks, beams and decks.")
    private boolean onRopes;

    LinkLimits limits() throws Refusal {
        if (longestM <= shortestM) {
            throw Refusal.of(
                    "no link is longer than the least length and no longer than the greatest",
                    "--shortest " + shortestM + " and --length " + longestM,
                    "a greatest length above the least",
                    "raise --length or lower --shortest");
        }
        if (shortestM <= 0 || spacingM < 0.1) {
            throw Refusal.of(
                    shortestM <= 0 ? "a link needs a length" : "places are tried too close together",
                    shortestM <= 0 ? "--shortest " + shortestM : "--spacing " + spacingM,
                    shortestM <= 0 ? "above 0 m" : "0.1 m or more",
                    shortestM <= 0 ? "raise --shortest" : "raise --spacing");
        }
        double thickM = diameterM == null ? kind == LinkKind.ROPE ? ROPE_M : POLE_M : diameterM;
        return new LinkLimits(kind, thickM, shortestM, longestM, steepestDeg, clearanceM, spacingM, onRopes);
    }

    /** Reads rope or pole. */
    static final class Kind implements ITypeConverter<LinkKind> {

        @Override
        public LinkKind convert(String text) {
            for (LinkKind known : LinkKind.values()) {
                if (known.word().equals(text)) {
                    return known;
                }
            }
            throw new TypeConversionException("rope or pole");
        }
    }

    /** Reads a thickness. */
    static final class Diameter extends NumberInRange<Double> {

        Diameter() {
            super("a thickness from 0.005 to 2, in metres");
        }

        @Override
        Double fitting(double number) {
            return number >= 0.005 && number <= 2 ? number : null;
        }
    }
}
