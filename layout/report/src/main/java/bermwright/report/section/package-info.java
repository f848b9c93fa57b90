// SPDX-License-Identifier: Apache-2.0
/**
 * Drawings of a hull under its cover: long and cross section, depth unrolled around the skin, the sky from a station.
 */
package bermwright.report.section;
