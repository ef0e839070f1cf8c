/**
 * Draws measures and enclosures; computes nothing.
 *
 * <p>Knows measures and the model. A {@link limbway.reports.chart.Picture} can be written as SVG and PNG; the classes
 * that end in Chart make pictures of measures, {@link limbway.reports.chart.EnclosureDrawing} one of what stands there.
 * One style serves all: {@link limbway.reports.chart.Style}.
 */
package limbway.reports.chart;
