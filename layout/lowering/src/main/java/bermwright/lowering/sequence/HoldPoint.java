// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

/**
 * Where to stop and check before going on.
 *
 * @param tilt  the tilt (rad)
 * @param check what to check, in words
 */
public record HoldPoint(double tilt, String check) {
}
