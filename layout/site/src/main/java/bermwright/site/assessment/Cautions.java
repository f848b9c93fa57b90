// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import java.util.List;
import java.util.stream.Stream;

/** What every page, screen and answer says beside its figures. */
public final class Cautions {
    private static final List<String> ALL = List.of(
            "Planning figures only. They prepare decisions; they do not replace them.",
            "Lowering: a lift plan signed by qualified riggers and engineers decides; local codes and licensed practice"
                    + " go before anything shown here.",
            "Radiation: planning estimates, not a radiation-protection record. Qualified health physics decides; keep"
                    + " every dose as low as reasonably achievable (ALARA), also below a limit.",
            "Cover and structure: a qualified structural engineer decides what soil a hull may carry, with pressure on"
                    + " and with pressure off.",
            "Ground: what is smaller than the elevation file's cell or its spread is not known. Survey before work.",
            "A figure marked provisional or extrapolated must be replaced by a better one before anyone relies on it.");

    private Cautions() {
    }

    /**
     * The cautions, in the order in which they are shown.
     *
     * @return one sentence or two each
     */
    public static List<String> all() {
        return ALL;
    }

    /**
     * The cautions, and what is to be said of the elevation file.
     *
     * @param ground the ground of a plan
     * @return the cautions in the order in which they are shown
     */
    static List<String> of(SiteGround ground) {
        return Stream.concat(ALL.stream(), ground.cautions().stream()).toList();
    }
}
