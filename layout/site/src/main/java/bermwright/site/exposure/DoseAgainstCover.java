// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.shielding.dose.DoseCurve;
import bermwright.shielding.dose.Response;
import bermwright.shielding.material.Shield;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Dose against areal density for one kind of skin and the plan's soil, sun and event, and the particles that make it.
 *
 * @param hulls       hulls with this skin
 * @param shield      soil and skin
 * @param modulationW solar modulation W of the plan (1)
 * @param cosmic      cosmic rays, a day's doses, beside published figures
 * @param event       the event, empty where the plan names none
 * @param reviewed    a table that the plan takes in place of one of the curves, empty where it takes the built-in ones
 */
public record DoseAgainstCover(List<String> hulls, Shield shield, double modulationW, DoseCurve cosmic,
        Optional<Event> event, Optional<Response> reviewed) {
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
        Objects.requireNonNull(cosmic, "cosmic");
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
