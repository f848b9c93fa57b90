// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.foundation.InputException;
import bermwright.foundation.ModelNote;
import bermwright.foundation.Progress;
import bermwright.shielding.dose.Responses;
import bermwright.shielding.walk.StationWalk;
import bermwright.site.exposure.DoseSources;
import bermwright.site.exposure.StationDose;
import bermwright.site.exposure.WalkedDose;
import java.util.List;

/** Asks for the doses of an assessment by particles that are followed by chance. */
public final class DoseWalks {
    /** Walks from one station after which they stop in any case. */
    private static final long MOST = 1_000_000;

    private DoseWalks() {
    }

    /**
     * What stands behind walks.
     *
     * @return the note
     */
    public static ModelNote model() {
        return WalkedDose.model();
    }

    /**
     * Walks from stations.
     *
     * @param assessment the assessment, with doses
     * @param stations   names as hull/station; all where there are none
     * @param error      standard error at which walks stop, as a share of the dose (1), 0.002 to 0.5
     * @param seed       seed of chance
     * @param progress   told how far the work has come; may cancel it
     * @return for each station cosmic rays, then the event where there is one
     * @throws InputException if a station is named that has no dose
     */
    public static List<WalkedDose> of(Assessment assessment, List<String> stations, double error, long seed,
            Progress progress) {
        List<String> known = assessment.dose().map(d -> d.stations().stream().map(StationDose::name).toList())
                .orElse(List.of());
        for (String name : stations) {
            if (!known.contains(name)) {
                throw InputException.badValue(new InputException.Place("", 0, "--station"), name,
                        known.isEmpty() ? "nothing, since no station of the plan has a dose"
                                : "stations that have a dose: " + String.join(", ", known));
            }
        }
        if (assessment.cover().isEmpty() || assessment.dose().isEmpty()) {
            return List.of();
        }
        return WalkedDose.all(new WalkedDose.Through(assessment.plan(), assessment.cover().get(),
                new DoseSources(Responses.standard(), assessment.ground().directory()), assessment.dose().get()),
                new WalkedDose.Asked(stations, new StationWalk.Asked(error, 0, seed, MOST)), progress);
    }
}
