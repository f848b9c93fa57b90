// SPDX-License-Identifier: Apache-2.0
/**
 * Writes files and folders whole: beside their place, synced, then moved there; the one seam to the disk.
 *
 * <p>Whatever stops the work (disk full, no permission, a kill, a power cut), afterwards the old content or the new
 * stands whole in its place. What a killed run left beside it is removed by the next write to the same place.
 * This package sits in the {@code terrain} jar, below every room that writes.
 */
package bermwright.filestore;
