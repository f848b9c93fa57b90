// SPDX-License-Identifier: Apache-2.0
/**
 * Reads and writes height files of any size, window by window; grid units, reference systems and no-data marks stop
 * here.
 */
package bermwright.terrain.gridfile;
