// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.chain;

/** The units in which pages show a chain, from the SI units it is reckoned in. */
public final class ChainUnits {
    private ChainUnits() {
    }

    /**
     * The unit shown.
     *
     * @param unit the SI unit of a row
     * @return kN, kN m, MJ or MPa; another unit as it is
     */
    public static String shown(String unit) {
        return switch (unit) {
            case "N", "N m" -> "k" + unit;
            case "J", "Pa" -> "M" + unit;
            default -> unit;
        };
    }

    /**
     * How many of the SI unit make one of the shown unit.
     *
     * @param unit the SI unit of a row
     * @return the number (1)
     */
    public static double scale(String unit) {
        return switch (unit) {
            case "N", "N m" -> 1e3;
            case "J", "Pa" -> 1e6;
            default -> 1;
        };
    }
}
