// SPDX-License-Identifier: Apache-2.0
/**
 * What moves: start and stop, snatch, emergency stop, run-away and free topple, by inertia and stiffness.
 */
package bermwright.lowering.motion;
