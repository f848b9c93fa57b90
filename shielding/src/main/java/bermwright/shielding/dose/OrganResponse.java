// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.InputException.Place;

/**
 * A response of an organ that a reviewer hands over.
 *
 * @param organ    the organ whose gray equivalent it is
 * @param response the response (Gy-Eq)
 * @param place    where the file names the quantity
 */
public record OrganResponse(OrganDose.Organ organ, Response response, Place place) {
}
