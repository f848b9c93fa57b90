// SPDX-License-Identifier: Apache-2.0
/**
 * Cables, winches, anchors and what each can bear.
 */
package bermwright.lowering.rig;
