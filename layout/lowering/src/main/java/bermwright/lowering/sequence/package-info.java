// SPDX-License-Identifier: Apache-2.0
/**
 * Steps from upright to flat; every force at every angle and the step that governs.
 */
package bermwright.lowering.sequence;
