// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a reader of a survey should know: how far it can be trusted, and what it did not judge. */
final class SurveyNotes {
    private SurveyNotes() {
    }

    static List<String> of(SurveySetup setup, SurveyOrder order) {
        List<String> notes = new ArrayList<>();
        double spacing = setup.ground().trueSpacing();
        notes.add(String.format(Locale.ROOT, "A survey is a first sieve on nodes %.2f m apart. Stones and steps smaller"
                + " than that are not known. Assess each place before it is chosen, and have rigging, ground and"
                + " cover reviewed by qualified people.", spacing));
        notes.add("Line forces, the strength of poles and anchors, and dose are not judged here: they are the same"
                + " wherever the ground is alike, and assess works them out for a place.");
        if (!order.isOwnGround()) {
            notes.add("No keep-outs, corridors or landing pads are known in this region.");
        } else if (!setup.bounds().hasPads()) {
            notes.add("Stand-off of pads is not judged: the plan has no pad.");
        }
        if (!setup.soil().isAsked()) {
            notes.add("Soil is not judged: no lying hull has a cover.");
        } else {
            notes.add(String.format(Locale.ROOT, "The covers need about %.0f m3 of soil in the bank on level ground;"
                    + " it is taken from ground of up to %.0f deg, %.2f m deep, with a yield of %.0f %%. What lies"
                    + " under the surface is not known from heights.", setup.soil().volume(),
                    Math.toDegrees(Math.atan(order.limits().borrowGrade())), order.limits().borrowDepth(),
                    100 * order.limits().borrowYield()));
        }
        if (order.limits().relays().isEmpty()) {
            notes.add("The view to a relay is not judged: none was asked for (--relay).");
        }
        if (order.limits().lights().isEmpty()) {
            notes.add("Light is not judged: none was asked for (--light).");
        }
        for (LaidHull hull : setup.group().hulls()) {
            if (hull.hull().arrival() == bermwright.site.plan.Hull.Arrival.LOWERED && hull.lines().isEmpty()) {
                notes.add("Room for lines is not judged for hull " + hull.hull().id() + ": the plan gives none.");
            }
        }
        notes.addAll(setup.ground().cautions().stream().map(c -> "Elevation file: " + c).toList());
        return notes;
    }
}
