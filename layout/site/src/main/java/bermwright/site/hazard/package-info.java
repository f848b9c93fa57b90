// SPDX-License-Identifier: Apache-2.0
/**
 * What covers keep off, all in one table: radiation, meteoroids, thrown soil, heat, and the slide of a shaken mound.
 */
package bermwright.site.hazard;
