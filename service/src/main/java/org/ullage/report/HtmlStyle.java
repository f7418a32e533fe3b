package org.ullage.report;

/** How the HTML page looks: dark on light, one column, tables that scroll on a screen and wrap on paper. */
final class HtmlStyle {

    static final String CSS = """
            :root { color-scheme: light; }
            * { box-sizing: border-box; }
            body { margin: 0; background: #fff; color: #1f2a33; font: 1rem/1.5 system-ui, sans-serif; }
            main { max-width: 60rem; margin: 0 auto; padding: 1.5rem 1rem 3rem; overflow-wrap: anywhere; }
            h1 { font-size: 1.6rem; line-height: 1.25; margin: 0 0 1rem; }
            h2 { font-size: 1.2rem; line-height: 1.3; margin: 2.2rem 0 .7rem; padding-bottom: .25rem;
              border-bottom: 2px solid #cfd8df; }
            h3 { font-size: 1rem; margin: 1.5rem 0 .5rem; }
            p { margin: .6rem 0; max-width: 46rem; }
            ul { margin: .6rem 0; padding-left: 1.3rem; max-width: 46rem; }
            li { margin: .3rem 0; }
            .wide { overflow-x: auto; margin: .8rem 0; }
            table { border-collapse: collapse; font-size: .9rem; line-height: 1.4; font-variant-numeric: tabular-nums; }
            caption { text-align: left; color: #4a5863; padding: 0 0 .4rem; }
            th, td { text-align: left; vertical-align: top; padding: .4rem .8rem; border-bottom: 1px solid #dde4e9;
              overflow-wrap: break-word; min-width: 4.5rem; }
            th.number, td.number { text-align: right; }
            td.number { white-space: nowrap; }
            thead th { background: #f1f5f7; border-bottom: 2px solid #b9c5ce; vertical-align: bottom; }
            tbody th { font-weight: 600; min-width: 8rem; }
            .cautions { list-style: none; padding: 0; }
            .cautions li { margin: .5rem 0; padding: .5rem .8rem; background: #fdf6ec; border-left: 4px solid #d55e00; }
            small { font-size: .85rem; color: #4a5863; }
            .lines { margin: .8rem 0; padding: .8rem 1rem; background: #f6f8f9; border: 1px solid #dde4e9;
              font: .82rem/1.5 ui-monospace, monospace; }
            .lines p { margin: 0; max-width: none; min-height: 1.5em; white-space: pre-wrap;
              padding-left: calc(var(--indent) + 2ch); text-indent: -2ch; }
            figure { margin: 1.2rem 0; }
            svg { display: block; max-width: 100%; height: auto; }
            .telephone { display: none; }
            @media screen and (max-width: 44rem) {
              .desk { display: none; }
              .telephone { display: block; }
              th, td { padding: .35rem .5rem; }
              .lines { padding: .6rem; font-size: .78rem; }
            }
            @media print {
              @page { margin: 15mm; }
              body { font-size: 10pt; }
              main { max-width: none; padding: 0; }
              p, ul { max-width: none; }
              h1, h2, h3, caption { break-after: avoid; }
              .wide { overflow: visible; }
              table { width: 100%; font-size: 8.5pt; }
              th, td, tbody th { padding: .25rem .4rem; min-width: 0; overflow-wrap: anywhere; }
              table:not(:has(th:nth-child(9))) th { min-width: 6em; }
              thead { display: table-header-group; }
              td.number { white-space: normal; }
              tbody tr:first-child { break-before: avoid; }
              tr, figure, .cautions li, .lines p { break-inside: avoid; }
              thead th, .cautions li, .lines { print-color-adjust: exact; }
            }
            """;

    private HtmlStyle() {}
}
