// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planted.ring.one;

import bermwright.site.planted.ring.two.Two;

/** Planted: half of a ring of packages. */
public final class One {
    private One() {
    }

    /** The other half. */
    public static Class<?> next() {
        return Two.class;
    }
}
