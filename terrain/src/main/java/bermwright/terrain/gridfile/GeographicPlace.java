// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

/**
 * A place on a body.
 *
 * @param latitudeDeg  latitude in degrees, -90 to 90, positive to the north
 * @param longitudeDeg longitude in degrees, -180 to 180, positive to the east
 */
public record GeographicPlace(double latitudeDeg, double longitudeDeg) {
}
