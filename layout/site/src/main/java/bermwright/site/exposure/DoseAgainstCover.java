// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.shielding.dose.Band;
import bermwright.shielding.dose.DoseCurve;
import bermwright.shielding.dose.Response;
import bermwright.shielding.dose.Responses;
import bermwright.shielding.fold.DoseUncertainty;
import bermwright.shielding.fold.Tolerances;
import bermwright.shielding.material.Shield;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Plan;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Dose against areal density for one kind of skin and the plan's soil, sun and event, and the particles that make it.
 *
 * @param hulls       hulls with this skin
 * @param shield      soil and skin
 * @param sunAndSoil  sun and soil of the plan
 * @param cosmic      cosmic rays, a day's doses, beside published figures
 * @param event       the event, empty where the plan names none
 * @param reviewed    a table that the plan takes in place of one of the curves, empty where it takes the built-in ones
 */
public record DoseAgainstCover(List<String> hulls, Shield shield, SunAndSoil sunAndSoil, DoseCurve cosmic,
        Optional<Event> event, Optional<Response> reviewed) {
    /**
     * What the plan says of the sun and of how well the soil is known.
     *
     * @param modulationW   solar modulation W (1)
     * @param placedDensity density of the placed soil (kg/m3), positive
     * @param off           how far the cover may be off
     */
    public record SunAndSoil(double modulationW, double placedDensity, Tolerances off) {
        /** Those of a plan. */
        static SunAndSoil of(Plan plan) {
            GroundPlan ground = plan.ground();
            return new SunAndSoil(plan.exposure().modulation(), ground.regolith().placedDensity(),
                    new Tolerances(ground.regolith().densitySpreadShare(), ground.elevationSpread()));
        }
    }

    /**
     * The event's curve.
     *
     * @param name  the event
     * @param curve doses of the whole event
     */
    public record Event(String name, DoseCurve curve) {
        /** Refuses missing parts. */
        public Event {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(curve, "curve");
        }
    }

    /** Copies the list. */
    public DoseAgainstCover {
        hulls = List.copyOf(hulls);
        Objects.requireNonNull(shield, "shield");
        Objects.requireNonNull(sunAndSoil, "sun and soil");
        Objects.requireNonNull(cosmic, "cosmic");
    }

    /**
     * Solar modulation of the plan.
     *
     * @return modulation W (1)
     */
    public double modulationW() {
        return sunAndSoil.modulationW();
    }

    /**
     * What makes a dose under a dome uncertain: the model, the sun, the soil's density, the cover's thickness.
     *
     * @param curve one of the two curves
     * @param point one of its points
     * @return the doubts, each by itself
     */
    public DoseUncertainty uncertainty(DoseCurve curve, DoseCurve.Point point) {
        double skin = Math.min(point.arealDensity(), shield.skinArealDensity() * Responses.skinEquivalence(shield));
        double soil = point.arealDensity() - skin;
        double layer = Math.min(soil, sunAndSoil.off().coverThickness() * sunAndSoil.placedDensity());
        return new DoseUncertainty(point.band(), point.sun(),
                band(curve, point, soil * sunAndSoil.off().densityShare()),
                band(curve, point, layer));
    }

    private static Band band(DoseCurve curve, DoseCurve.Point point, double off) {
        double best = point.dome();
        if (!(best > 0 && off > 0)) {
            return Band.NONE;
        }
        double one = curve.at(point.arealDensity() - off).underDome().total() / best;
        double other = curve.at(point.arealDensity() + off).underDome().total() / best;
        return new Band(Math.min(1, Math.min(one, other)), Math.max(1, Math.max(one, other)));
    }

    /**
     * Soil and skin in words.
     *
     * @return such as {@code highland soil and a skin of steel 3.6 g/cm2}
     */
    public String materials() {
        StringBuilder words = new StringBuilder(shield.soil().name()).append(" soil");
        for (int i = 0; i < shield.skin().size(); i++) {
            words.append(i == 0 ? " and a skin of " : ", ").append(shield.skin().get(i).material().name()).append(' ')
                    .append(Math.round(shield.skin().get(i).arealDensity() * 10) / 100.0).append(" g/cm2");
        }
        return words.toString();
    }
}
