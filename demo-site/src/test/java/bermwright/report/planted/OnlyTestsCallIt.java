// SPDX-License-Identifier: Apache-2.0
package bermwright.report.planted;

/** Planted: a public member that no main code calls. */
public final class OnlyTestsCallIt {
    private OnlyTestsCallIt() {
    }

    public static double half(double whole) {
        return whole / 2;
    }
}
