// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.foundation.Ring;
import bermwright.site.exposure.SiteCover;
import bermwright.site.haulage.EarthworksInput;
import bermwright.site.stages.PreparedGround;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The soil that an assessment's covers and preparations need and give, to work its haul out again. */
public final class SoilNeeds {
    private SoilNeeds() {
    }

    /**
     * The soil of an assessment.
     *
     * @param assessment the assessment
     * @return its needs and offers; empty where it has no cover
     */
    public static Optional<EarthworksInput> of(Assessment assessment) {
        return assessment.cover().map(cover -> of(assessment, cover));
    }

    private static EarthworksInput of(Assessment assessment, SiteCover cover) {
        Map<String, List<Ring>> toes = Assessments.toes(assessment.plan(), cover);
        return new SoilBalance(assessment.plan(), cover, toes).input(PreparedGround.of(assessment.plan(),
                assessment.ground().grid()), assessment.digging());
    }
}
