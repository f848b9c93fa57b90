// SPDX-License-Identifier: Apache-2.0
package bermwright.report.page;

/** How pages look on screen and in print; the print part is understood by browsers and by the PDF writer. */
final class Styles {
    /** The font that PDF files carry; a screen takes what it has. */
    private static final String FONT = "\"DejaVu Sans Condensed\", \"Liberation Sans\", Arial, Helvetica, sans-serif";
    /** The style sheet. */
    private static final String TEXT = """
            * { box-sizing: border-box; }
            body { font: 16px/1.5 @FONT@; color: #111;
              background: #fff; max-width: 1260px; margin: 0 auto; padding: 24px 28px 96px; }
            section, figure, figcaption { display: block; }
            h1 { font-size: 30px; line-height: 1.2; margin: 0 0 5px; }
            h2 { font-size: 23px; margin: 38px 0 10px; padding-top: 8px; border-top: 3px solid #111; }
            h3 { font-size: 18px; margin: 29px 0 6px; }
            h4 { font-size: 16px; margin: 19px 0 5px; }
            p, ul { max-width: 900px; margin: 8px 0; }
            h1, h2, h3, h4, p, li, td, caption { overflow-wrap: break-word; }
            h1, h2, h3, h4, p, li, caption, .endless { word-wrap: break-word; }
            .endless { overflow-wrap: anywhere; }
            a { color: #004f80; }
            .caution { border: 2px solid #111; padding: 10px 14px; background: #fff7dc; margin: 16px 0; }
            .refuse { border-left: 8px solid #a01000; padding: 5px 13px; background: #fbeeea; }
            .warn { border-left: 8px double #d55e00; padding: 5px 13px; background: #fff5ec; }
            .good { border-left: 8px solid #0072b2; padding: 5px 13px; background: #eef5fa; }
            .mark { border-left: 8px dotted #cc79a7; padding: 5px 13px; background: #fbf3f7; }
            .small { font-size: 14px; color: #333; }
            .answer { border: 3px solid #111; margin: 14px 0; padding: 10px 16px 10px 40px; font-size: 17px; }
            .answer li { margin: 5px 0; }
            .contents { margin: 14px 0; }
            .contents ol { margin: 4px 0; padding-left: 28px; columns: 2; }
            figure { margin: 19px 0; }
            figure svg { max-width: 100%; height: auto; border: 1px solid #bbb; }
            figcaption { font-size: 14px; color: #333; max-width: 960px; }
            .file { font-size: 12px; color: #555; }
            .table { overflow-x: auto; margin: 16px 0; }
            table { border-collapse: collapse; font-size: 14px; min-width: 40%; }
            caption { text-align: left; font-weight: bold; padding: 3px 0; }
            caption .file { font-weight: normal; }
            th, td { border-bottom: 1px solid #bbb; padding: 4px 10px; text-align: left; vertical-align: top;
              max-width: 540px; }
            thead th { border-bottom: 2px solid #111; }
            .long { min-width: 270px; }
            tr.more-follows td { border-bottom: none; }
            tr.more td { max-width: none; padding-left: 26px; }
            .decisions { width: 100%; }
            .decisions td { max-width: none; }
            .decisions td.which { width: 170px; }
            .number { text-align: right; white-space: nowrap; }
            th.number { white-space: normal; }
            .signed td { height: 34px; }
            .signed .blank { min-width: 90px; }
            .foot { margin-top: 48px; border-top: 1px solid #777; padding-top: 8px; font-size: 13px; color: #333; }
            @media screen and (max-width: 620px) {
              body { padding: 12px 10px 48px; font-size: 15px; }
              h1 { font-size: 23px; }
              h2 { font-size: 20px; }
              .answer { font-size: 15px; padding: 6px 8px 6px 30px; }
              .contents ol { columns: 1; }
              figure { overflow-x: auto; }
              .long { min-width: 0; }
              .cards thead { display: none; }
              .cards, .cards tbody, .cards tr, .cards td, .cards caption, .decisions, .decisions tbody, .decisions tr,
                .decisions td { display: block; max-width: none; width: auto; }
              .cards tr { border-bottom: 3px solid #777; padding: 6px 0; }
              .cards td { border-bottom: none; padding: 1px 4px; text-align: left; white-space: normal; height: auto; }
              .cards td:empty { display: none; }
              .cards td::before { content: attr(data-label) ": "; color: #444; font-weight: bold; }
              .cards tr.more td::before { content: ""; }
              .decisions td.which { width: auto; }
            }
            @page { size: A4 landscape; margin: 17mm 12mm 15mm;
              @top-left { content: "@HEAD@"; font: 6.5pt/1.3 @PRINT@; text-align: left; vertical-align: bottom;
                padding-bottom: 2mm; white-space: pre; }
              @bottom-right { content: counter(page) " / " counter(pages); font: 7pt @PRINT@; width: 18mm; }
              @bottom-left { content: "@FOOT@"; font: 6.5pt/1.25 @PRINT@; text-align: left; width: 240mm; } }
            @SHEETS@
            @media print {
              body { font-size: 9.5pt; line-height: 1.35; padding: 0; margin: 0; max-width: none; }
              .foot { display: none; }
              h1 { font-size: 18pt; }
              h2 { font-size: 14pt; margin: 5mm 0 2mm; padding-top: 1mm; border-top: 0.6mm solid #111; }
              h3 { font-size: 11pt; margin: 4mm 0 1mm; }
              h4 { font-size: 9.5pt; margin: 3mm 0 1mm; }
              p, ul { max-width: none; margin: 1.2mm 0; }
              .part { page-break-before: always; }
              h2, h3, h4 { page-break-after: avoid; }
              tr, figure, .caution, .refuse, .warn, .answer, .sign { page-break-inside: avoid; }
              .answer { font-size: 10.5pt; padding: 2mm 3mm 2mm 8mm; margin: 2mm 0; }
              .answer li { margin: 0.8mm 0; }
              .contents { margin: 2mm 0; }
              .contents ol { columns: 1; }
              .contents a { color: #111; text-decoration: none; }
              .contents a::after { content: leader(dotted) target-counter(attr(href), page); }
              .caution { padding: 1.5mm 3mm; border-width: 0.4mm; font-size: 8.5pt; margin: 2mm 0; }
              .small { font-size: 8pt; }
              figure { margin: 2mm 0; }
              figure svg { border: none; max-height: 148mm; width: auto; }
              figure.wide svg { max-height: 76mm; }
              figcaption { font-size: 8pt; max-width: none; }
              .file { font-size: 6.5pt; }
              table { font-size: 7.5pt; line-height: 1.25; -fs-table-paginate: paginate; }
              .table { overflow: visible; margin: 2mm 0; }
              caption { page-break-after: avoid; font-size: 8.5pt; }
              th, td { padding: 0.5mm 1.4mm; max-width: none; border-bottom: 0.2mm solid #bbb; }
              thead th { border-bottom: 0.4mm solid #111; }
              .long { min-width: 50mm; }
              .signed td { height: 7.2mm; }
              .signed .blank { min-width: 23mm; }
              .decisions td.which { width: 34mm; }
              tr.more-follows { page-break-after: avoid; }
              thead { display: table-header-group; }
              .caution, .refuse, .warn, .good, .mark { background: none; }
              .sheet { page-break-before: always; }
              .sheet h2 { margin: 0 0 1mm; }
              .sheet table { width: 100%; font-size: 6.8pt; line-height: 1.2; }
              .sheet .long { min-width: 0; }
              .clear { clear: both; }
              .left { float: left; width: 49%; }
              .right { float: right; width: 49%; }
              .contents { page-break-inside: avoid; }
            }
            """;
    private static final String SHEET = """
            .sheet-@INDEX@ { page: sheet-@INDEX@; }
            @page sheet-@INDEX@ { @top-right { content: "@WORDS@"; font: bold 11pt @PRINT@; text-align: right;
                vertical-align: bottom; padding-bottom: 2mm; } }
            """;

    private Styles() {
    }

    /**
     * The style sheet with words at head and foot of every printed page.
     *
     * @param frame the words
     * @return the style sheet
     */
    static String of(PageFrame frame) {
        StringBuilder sheets = new StringBuilder();
        for (int i = 0; i < frame.sheets().size(); i++) {
            sheets.append(SHEET.replace("@INDEX@", Integer.toString(i))
                    .replace("@WORDS@", safe(frame.sheets().get(i))));
        }
        return TEXT.replace("@SHEETS@\n", sheets).replace("@HEAD@", safe(frame.head()))
                .replace("@FOOT@", safe(frame.foot()))
                .replace("@PRINT@", "\"DejaVu Sans Condensed\", sans-serif").replace("@FONT@", FONT);
    }

    /** Words that cannot end the text they stand in; a line break stays one. */
    private static String safe(String words) {
        StringBuilder safe = new StringBuilder();
        words.codePoints().forEach(c -> {
            if (Character.isLetterOrDigit(c) || " .,;:-/()_".indexOf(c) >= 0) {
                safe.appendCodePoint(c);
            } else {
                safe.append('\\').append(Integer.toHexString(c)).append(' ');
            }
        });
        return safe.toString();
    }
}
