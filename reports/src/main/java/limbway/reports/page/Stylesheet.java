package limbway.reports.page;

/** How the page looks, on a screen of any width and on paper. */
final class Stylesheet {

    static final String CSS = """
            :root { color-scheme: light; }
            * { box-sizing: border-box; }
            body { margin: 0 auto; max-width: 76rem; padding: 0 1rem 3rem; background: #fff; color: #222;
              font: 1rem/1.5 system-ui, -apple-system, "Segoe UI", "Liberation Sans", sans-serif;
              overflow-wrap: anywhere; }
            h1 { font-size: 1.6rem; line-height: 1.2; margin: 1rem 0 .25rem; }
            h2 { font-size: 1.25rem; margin: 2.5rem 0 .5rem; border-top: 2px solid #222; padding-top: .5rem; }
            h3 { font-size: 1.05rem; margin: 1.5rem 0 .25rem; }
            p, ul { max-width: 46rem; }
            .caution { border: 2px solid #222; padding: .5rem .75rem; margin: .75rem 0; max-width: none;
              font-size: .95rem; }
            .big { font-size: 2.4rem; line-height: 1; font-weight: 700; margin: .5rem 0 0; }
            .answer { font-size: 1.15rem; }
            .first { display: grid; gap: 1.5rem; grid-template-columns: minmax(0, 1fr); }
            @media (min-width: 60rem) { .first { grid-template-columns: minmax(0, 5fr) minmax(0, 6fr); } }
            .pair { display: grid; gap: 1.5rem; grid-template-columns: minmax(0, 1fr); }
            @media (min-width: 72rem) { .pair { grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); } }
            figure { margin: 1rem 0; max-width: 46rem; break-inside: avoid; }
            figcaption { font-size: .95rem; }
            .scroll { overflow-x: auto; max-width: 100%; }
            :focus-visible { outline: 3px solid #0072b2; outline-offset: 2px; }
            figure svg { display: block; width: 100%; min-width: 34rem; height: auto; }
            .first figure svg { min-width: 30rem; }
            table { border-collapse: collapse; font-size: .9rem; margin: .5rem 0 1rem; min-width: 30rem; }
            caption { text-align: left; font-weight: 600; padding: .25rem 0; }
            th, td { text-align: left; vertical-align: top; padding: .3rem .75rem .3rem 0; border-bottom: 1px solid #ccc;
              overflow-wrap: break-word; min-width: 4.5rem; }
            thead th { border-bottom: 2px solid #222; }
            tbody th { font-weight: 600; }
            td.wide, th.wide { min-width: 16rem; }
            details { margin: .25rem 0; }
            summary { cursor: pointer; text-decoration: underline; }
            .mend { font-weight: 700; }
            code { font-size: .9em; }
            pre { font-size: .85rem; white-space: pre-wrap; background: #f3f3f0; padding: .5rem .75rem; max-width: 60rem; }
            nav ul { padding-left: 1.2rem; columns: 2 14rem; }
            a { color: #00507d; }
            .narrow { display: none; }
            @media (max-width: 30rem) {
              figure svg, .first figure svg { min-width: 30rem; }
              table { min-width: 0; font-size: .8rem; }
              th, td { min-width: 3.5rem; padding-right: .5rem; }
              .broad { display: none; }
              .narrow { display: block; }
              figure .narrow svg { min-width: 0; }
            }
            @page { size: A4; margin: 15mm; }
            @media print {
              body { max-width: none; padding: 0; font-size: 10pt; }
              .scroll { overflow: visible; }
              figure svg, .first figure svg { min-width: 0; max-height: 12cm; }
              .broad { display: block; }
              .narrow { display: none; }
              table { min-width: 0; font-size: 8pt; }
              th, td { min-width: 0; padding-right: .4rem; }
              tr, figure, .caution { break-inside: avoid; }
              h2, h3 { break-after: avoid; }
              nav, summary { display: none; }
              .first, .pair { display: block; }
              a { color: inherit; text-decoration: none; }
            }
            """;

    private Stylesheet() {}
}
