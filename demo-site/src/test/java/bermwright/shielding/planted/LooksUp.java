// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.planted;

import bermwright.site.plan.Plan;

/** Planted: shielding that sees a plan. */
final class LooksUp {
    private LooksUp() {
    }

    static String title(Plan plan) {
        return plan.title();
    }
}
