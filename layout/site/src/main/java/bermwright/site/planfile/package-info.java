// SPDX-License-Identifier: Apache-2.0
/**
 * Reads, writes and migrates plan files; file units and versions stop here.
 */
package bermwright.site.planfile;
