// SPDX-License-Identifier: Apache-2.0
package bermwright.report.page;

/** How pages look on screen and in print. */
final class Styles {
    /** The style sheet. */
    private static final String TEXT = """
            :root { color-scheme: light; }
            * { box-sizing: border-box; }
            body { font: 16px/1.5 "Liberation Sans", Arial, Helvetica, "DejaVu Sans", sans-serif; color: #111;
              background: #fff; max-width: 1260px; margin: 0 auto; padding: 24px 28px 96px; }
            h1 { font-size: 1.9rem; margin: 0 0 .3rem; }
            h2 { font-size: 1.45rem; margin: 2.4rem 0 .6rem; padding-top: .5rem; border-top: 3px solid #111; }
            h3 { font-size: 1.15rem; margin: 1.8rem 0 .4rem; }
            h4 { font-size: 1rem; margin: 1.2rem 0 .3rem; }
            p, ul { max-width: 56rem; margin: .5rem 0; }
            nav { margin: 1rem 0; display: flex; flex-wrap: wrap; gap: .4rem 1.2rem; }
            nav a { color: #004f80; }
            .caution { border: 2px solid #111; padding: .6rem .9rem; max-width: none; background: #fff7dc; }
            .refuse { border-left: 8px solid #a01000; padding: .3rem .8rem; background: #fbeeea; }
            .warn { border-left: 8px double #d55e00; padding: .3rem .8rem; background: #fff5ec; }
            .good { border-left: 8px solid #0072b2; padding: .3rem .8rem; background: #eef5fa; }
            .mark { border-left: 8px dotted #cc79a7; padding: .3rem .8rem; background: #fbf3f7; }
            .small { font-size: .87rem; color: #333; }
            figure { margin: 1.2rem 0; }
            figure svg { max-width: 100%; height: auto; border: 1px solid #bbb; }
            figcaption { font-size: .9rem; color: #333; max-width: 60rem; }
            .file { font-size: .75rem; color: #555; font-family: "Liberation Mono", monospace; }
            .table { overflow-x: auto; margin: 1rem 0; }
            table { border-collapse: collapse; font-size: .88rem; min-width: 40%; }
            caption { text-align: left; font-weight: bold; padding: .2rem 0; break-after: avoid; }
            caption .file { font-weight: normal; }
            th, td { border-bottom: 1px solid #bbb; padding: .25rem .6rem; text-align: left; vertical-align: top;
              overflow-wrap: break-word; max-width: 34rem; }
            thead th { border-bottom: 2px solid #111; }
            .long { min-width: 17rem; }
            tr.more-follows td { border-bottom: none; }
            tr.more td { max-width: none; padding-left: 1.6rem; }
            .decisions td { max-width: none; } .decisions td:first-child { max-width: 13rem; min-width: 8rem; }
            .number { text-align: right; white-space: nowrap; font-variant-numeric: tabular-nums; }
            th.number { white-space: normal; }
            footer { margin-top: 3rem; border-top: 1px solid #777; padding-top: .5rem; font-size: .8rem; color: #333; }
            @page { size: A4 landscape; margin: 12mm 12mm 19mm;
              @bottom-right { content: counter(page) " / " counter(pages); font: 7pt sans-serif; width: 18mm; }
              @bottom-left { content: "FOOTER"; font: 7pt/1.25 sans-serif; } }
            @media print {
              body { font-size: 10.5pt; padding: 0; max-width: none; }
              nav { display: none; }
              section { break-before: page; }
              section.first, section.caution { break-before: auto; }
              h2, h3, h4 { break-after: avoid; }
              tr, figure, .caution, .refuse, .warn { break-inside: avoid; }
              figure { margin: 2mm 0; }
              figure svg { max-height: 160mm; width: auto; border: none; }
              figure.wide svg { max-height: 78mm; }
              table { font-size: 8.5pt; }
              th, td { padding: .8mm 1.6mm; }
              .long { min-width: 62mm; }
              tr.more-follows { break-after: avoid; }
              thead { display: table-header-group; }
              .table { overflow: visible; }
              .caution, .refuse, .warn, .good, .mark { background: none; }
            }
            """;

    private Styles() {
    }

    /**
     * The style sheet with words at the foot of every printed page.
     *
     * @param footer the words
     * @return the style sheet
     */
    static String withFooter(String footer) {
        StringBuilder safe = new StringBuilder();
        footer.codePoints().forEach(c -> {
            if (Character.isLetterOrDigit(c) || " .,;:-/()_".indexOf(c) >= 0) {
                safe.appendCodePoint(c);
            } else {
                safe.append('\\').append(Integer.toHexString(c)).append(' ');
            }
        });
        return TEXT.replace("FOOTER", safe);
    }
}
