// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.Require;
import bermwright.shielding.material.Table;
import java.util.List;
import java.util.Optional;

/**
 * A dose limit of a published standard. Below a limit too, dose is kept as low as reasonably
 * achievable; qualified health physics decides.
 *
 * @param name     what it protects
 * @param quantity quantity that is limited, such as effective dose
 * @param from     what it counts: cosmic rays, an event, or all
 * @param over     time over which it is counted
 * @param limit    limit, in {@code unit}, positive
 * @param unit     unit of the limit: Sv or Gy-Eq
 * @param source   standard and revision, and how it was read
 */
public record DoseLimit(String name, String quantity, String from, String over, double limit, String unit,
        String source) {
    /** What whoever uses a limit of the table has to do first. */
    public static final String CONFIRM = "confirm the revision before use";

    private static final List<DoseLimit> ALL = Table.rows(DoseLimit.class, "limits.csv", ";").stream()
            .map(r -> new DoseLimit(r[0], r[1], r[2], r[3], Double.parseDouble(r[4]), r[5], r[6])).toList();

    /** Refuses a limit that is none. */
    public DoseLimit {
        Require.positive("limit", limit, unit);
    }

    /**
     * The limits known.
     *
     * @return all of them, in the order of the table
     */
    public static List<DoseLimit> all() {
        return ALL;
    }

    /**
     * The limit of a name.
     *
     * @param name its name in the table
     * @return the limit; empty where there is none of that name
     */
    public static Optional<DoseLimit> named(String name) {
        return all().stream().filter(limit -> limit.name().equals(name)).findFirst();
    }
}
