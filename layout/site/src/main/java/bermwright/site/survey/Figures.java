// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The figures of one place, the tightest of all hulls for each criterion. */
final class Figures {
    private final Map<Criterion, Reason> reasons = new EnumMap<>(Criterion.class);
    private final List<Double> beds = new ArrayList<>();

    /** A slope, given as rise over run and limit likewise. */
    void slope(Criterion what, double grade, double limit) {
        keep(new Reason(what, Math.toDegrees(Math.atan(grade)), Math.toDegrees(Math.atan(limit)),
                1 - Math.abs(grade) / limit));
    }

    void most(Criterion what, double measured, double limit) {
        keep(new Reason(what, measured, limit, 1 - Math.max(0, measured) / limit));
    }

    void least(Criterion what, double measured, double limit) {
        keep(new Reason(what, measured, limit, 1 - limit / measured));
    }

    void seen(double[] seen, SurveyLimits limits) {
        for (int i = 0; i < seen.length; i++) {
            int light = i - limits.relays().size();
            if (light < 0) {
                keep(new Reason(Criterion.RELAY, Math.toDegrees(seen[i]), 0,
                        Math.min(1, seen[i] / FarSight.FULL_SIGHT)));
            } else {
                least(Criterion.LIGHT, seen[i], limits.lights().get(light).leastHours());
            }
        }
    }

    void bed(double height) {
        beds.add(height);
    }

    void keep(Reason reason) {
        reasons.merge(reason.criterion(), reason, (a, b) -> b.margin() < a.margin() ? b : a);
    }

    List<Reason> reasons() {
        return List.copyOf(reasons.values());
    }

    /** Mean height of each hull's bed (m). */
    List<Double> beds() {
        return List.copyOf(beds);
    }
}
