// SPDX-License-Identifier: Apache-2.0
/**
 * Landforms given by a formula, to make test ground and berms.
 *
 * <p>Everything here is a value: made once, never changed, safe to share between threads. Lengths are in metres,
 * angles in radians. A landform knows nothing of grids; {@link bermwright.terrain.grid} samples it. Sines and powers
 * are taken from {@link java.lang.StrictMath}, so that a ground is the same to the last bit on every machine.
 */
package bermwright.terrain.shape;
