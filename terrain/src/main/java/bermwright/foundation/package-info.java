// SPDX-License-Identifier: Apache-2.0
/**
 * The few small types every room needs ({@code Vec3}, {@code Require}, {@code InputException}, {@code Progress});
 * eight types at most.
 *
 * <p>Frame of the whole project: x east, y north, z up, right-handed, in the terrain's projected reference system.
 * Azimuths run clockwise from grid north; the type {@link bermwright.foundation.Azimuth} carries them.
 * A name without a unit is SI (m, kg, s, rad, N, Pa, Sv, kg/m2); anything else carries its unit in the name.
 * This package sits in the {@code terrain} jar because the top-level folders are given.
 */
package bermwright.foundation;
