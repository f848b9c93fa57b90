// SPDX-License-Identifier: Apache-2.0
/**
 * Drawings to scale of a site: plans, sections, contours, borrow pits and setting-out, each on a sheet with border and
 * title block.
 *
 * <p>What is measured on a sheet times its scale is a length in true metres. Line widths and heights of lettering
 * follow ISO 128 and ISO 3098 (0.18, 0.35 and 0.7 mm; capitals of 2 mm and more), margins ISO 5457, what a title block
 * names ISO 7200; all from memory.
 */
package bermwright.report.scale;
