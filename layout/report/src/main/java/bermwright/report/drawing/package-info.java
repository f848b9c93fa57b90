// SPDX-License-Identifier: Apache-2.0
/**
 * Drawings as values: an SVG builder, charts, bars and time bars, readable in colour and in black and white.
 *
 * <p>Paper places are in CSS pixels, x to the right and y down; what a drawing shows keeps its own units, written on
 * its axes. A drawing is a value made once and can be written to a file, set into a page or shown by an editor.
 */
package bermwright.report.drawing;
