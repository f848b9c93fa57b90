// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.finding.DoseRule;
import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Station;
import java.util.Locale;

/** Stations that no dose can be given for. */
final class StationFindings {
    private StationFindings() {
    }

    static Finding outsideItsHull(Hull hull, Station station, String subject) {
        double off = Math.hypot(station.across(), station.up());
        boolean isPastAnEnd = !(station.along() >= 0 && station.along() <= hull.length());
        return Finding.of(DoseRule.STATION_OUTSIDE_HULL, Level.REFUSE, subject,
                isPastAnEnd ? Figures.of(station.along(), hull.length(), "m") : Figures.of(off, hull.radius(), "m"),
                String.format(Locale.ROOT, "The station lies %.2f m along the hull of %.2f m and %.2f m off its axis,"
                        + " outside its skin or in the soil; no dose is computed for it.", station.along(),
                        hull.length(), off))
                .from((isPastAnEnd ? "length_m" : "diameter_m") + " of the hull in the plan");
    }

    static Finding groundUnknown(String subject) {
        return Finding.of(DoseRule.STATION_GROUND_UNKNOWN, Level.REFUSE, subject, Figures.NONE,
                "The ground under the station is not known, so no dose is computed for it.");
    }
}
