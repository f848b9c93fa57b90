// SPDX-License-Identifier: Apache-2.0
/**
 * Choosing: the rig that fits a winch, all means side by side, and the load against the payload.
 */
package bermwright.lowering.choice;
