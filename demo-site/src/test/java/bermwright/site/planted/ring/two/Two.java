// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planted.ring.two;

import bermwright.site.planted.ring.one.One;

/** Planted: the other half of a ring of packages. */
public final class Two {
    private Two() {
    }

    /** The first half. */
    public static Class<?> next() {
        return One.class;
    }
}
