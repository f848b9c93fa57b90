// SPDX-License-Identifier: Apache-2.0
/**
 * Sheets of paper in millimetres: lines, hatches and lettering, written alike as vector PDF and as SVG.
 *
 * <p>The origin is the upper left corner; x runs to the right and y down, in millimetres on paper. Nothing here knows
 * what is drawn. The one typeface is the Liberation Sans that comes with PDFBox (SIL Open Font License 1.1, which
 * allows it to be embedded); what is written has the width here that it has on paper.
 */
package bermwright.report.paper;
