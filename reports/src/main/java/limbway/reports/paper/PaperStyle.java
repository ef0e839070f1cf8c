package limbway.reports.paper;

/** How a page looks on A4: black on white, nothing that needs colour, nothing cut. */
final class PaperStyle {

    static final String CSS = """
            @page {
              size: A4; margin: 16mm 15mm 18mm 15mm;
              @bottom-right { content: counter(page) " / " counter(pages); font: 8pt Helvetica, "Liberation Sans"; color: #444; }
            }
            body { font: 10pt/1.4 Helvetica, "Liberation Sans"; color: #222; word-wrap: break-word; }
            h1 { font-size: 17pt; line-height: 1.2; margin: 0 0 3mm; }
            h2 { font-size: 13pt; margin: 7mm 0 2mm; border-top: 1.2pt solid #222; padding-top: 2mm; page-break-after: avoid; }
            h3 { font-size: 11pt; margin: 4mm 0 1mm; page-break-after: avoid; }
            p { margin: 0 0 2mm; }
            ul { margin: 0 0 2mm; padding-left: 5mm; }
            .caution { border: 1.2pt solid #222; padding: 2mm 3mm; margin: 2mm 0; font-size: 9pt; page-break-inside: avoid; }
            .big { font-size: 24pt; font-weight: bold; line-height: 1.1; margin: 3mm 0 2mm; }
            .answer { font-size: 12pt; }
            .mend { font-weight: bold; }
            figure { display: block; margin: 3mm 0; page-break-inside: avoid; }
            figcaption { display: block; font-size: 9pt; }
            object { display: block; }
            table { border-collapse: collapse; font-size: 8pt; width: 100%; margin: 2mm 0 4mm; -fs-table-paginate: paginate; }
            caption { text-align: left; font-weight: bold; padding: 1mm 0; page-break-after: avoid; }
            th, td { text-align: left; vertical-align: top; padding: .8mm 2mm .8mm 0; border-bottom: .4pt solid #bbb; }
            th, td { word-wrap: normal; }
            .long { word-wrap: break-word; }
            thead th { border-bottom: 1pt solid #222; }
            tr { page-break-inside: avoid; }
            code, pre { font-family: Courier, "Liberation Sans"; font-size: 8pt; }
            pre { white-space: pre-wrap; background: #f3f3f0; padding: 1.5mm 2mm; }
            a { color: #222; text-decoration: none; }
            """;

    private PaperStyle() {}
}
