// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.InputException.Place;

/**
 * A response that a reviewer hands over.
 *
 * @param quantity what its doses are: {@link #EFFECTIVE_DOSE} (Sv), or the gray equivalent of an organ (Gy-Eq)
 * @param response the response
 * @param place    where the file names the quantity, or where it would
 */
public record HandedOver(String quantity, Response response, Place place) {
    /** The quantity of a table that names none. */
    public static final String EFFECTIVE_DOSE = "effective dose";
}
