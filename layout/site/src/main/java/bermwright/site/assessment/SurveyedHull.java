// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.finding.Finding;
import bermwright.finding.LoweringRule;
import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.WorkStep;
import bermwright.site.pose.LyingPose;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A hull as it was surveyed once it lay, beside its place in the plan.
 *
 * @param step the step after which it was surveyed
 * @param hull the hull's id
 * @param ends the ends that were surveyed
 * @param as   the hull with the base centre and azimuth that put it where it was surveyed; empty where not both ends
 *             were
 */
public record SurveyedHull(String step, String hull, List<End> ends, Optional<Hull> as) {
    private static final String BASE = "base end";
    private static final String FAR = "far end";

    /** Copies the ends. */
    public SurveyedHull {
        ends = List.copyOf(ends);
    }

    /**
     * An end of a surveyed hull.
     *
     * @param name    which end, in words
     * @param place   where it lies
     * @param planned where the plan has it
     * @param aside   how far it lies from there on the plan drawing (m)
     * @param above   how much higher it lies (m); empty where its height was not surveyed
     */
    public record End(String name, Point place, Point planned, double aside, OptionalDouble above) {
        /** How far it lies from there in space (m), or on the plan drawing where its height is not known. */
        double off() {
            return Math.hypot(aside, above.orElse(0));
        }

        private String words() {
            double azimuth = Math.toDegrees(Math.atan2(place.east() - planned.east(), place.north()
                    - planned.north()));
            return String.format(Locale.ROOT, "%s %.2f m towards %.0f deg of the grid, %s", name, aside,
                    (azimuth + 360) % 360, above.isEmpty() ? "its height not surveyed" : String.format(Locale.ROOT,
                    "%.2f m %s", Math.abs(above.getAsDouble()), above.getAsDouble() < 0 ? "lower" : "higher"));
        }
    }

    /** The hulls that were surveyed, in the order of the work. */
    static List<SurveyedHull> of(Plan plan, ElevationGrid bed) {
        List<SurveyedHull> all = new ArrayList<>();
        for (WorkStep step : plan.orderOfWork()) {
            Optional<Hull> hull = plan.hull(step.of());
            Optional<LyingPose> pose = hull.flatMap(h -> LyingPose.of(h, bed));
            if (step.asBuilt().isPresent() && pose.isPresent()) {
                WorkStep.AsBuilt survey = step.asBuilt().get();
                List<End> ends = new ArrayList<>();
                survey.baseEnd().ifPresent(p -> ends.add(end(BASE, p,
                        pose.get().axisStart(), bed)));
                survey.farEnd().ifPresent(p -> ends.add(end(FAR, p,
                        pose.get().axisEnd(), bed)));
                if (!ends.isEmpty()) {
                    all.add(new SurveyedHull(step.id(), step.of(), ends, ends.size() < 2 ? Optional.empty()
                            : Optional.of(moved(hull.get(), pose.get(), ends))));
                }
            }
        }
        return all;
    }

    private static End end(String name, WorkStep.SurveyedEnd end, Vec3 planned, ElevationGrid bed) {
        Point place = end.place();
        Point there = planned.plan();
        return new End(name, place, there, bed.metreScale() * Math.hypot(place.east() - there.east(),
                place.north() - there.north()), end.height().isEmpty() ? end.height()
                : OptionalDouble.of(end.height().getAsDouble() - planned.z()));
    }

    /** The hull that lies with its base plane where it was surveyed, and along the line between both ends. */
    private static Hull moved(Hull hull, LyingPose pose, List<End> ends) {
        Point base = ends.get(0).place();
        Point far = ends.get(1).place();
        Azimuth way = new Azimuth(Math.atan2(far.east() - base.east(), far.north() - base.north()));
        Point planned = pose.axisStart().plan();
        double[] from = {hull.baseCentre().east() - planned.east(), hull.baseCentre().north() - planned.north()};
        double turn = way.radians() - hull.layDownAzimuth().radians();
        Point centre = new Point(base.east() + from[0] * Math.cos(turn) + from[1] * Math.sin(turn),
                base.north() - from[0] * Math.sin(turn) + from[1] * Math.cos(turn));
        return hull.withBaseCentre(centre).withLayDownAzimuth(way);
    }

    /** The plan with the hulls where they were surveyed. */
    static Plan moved(Plan plan, List<SurveyedHull> surveyed) {
        Plan moved = plan;
        for (SurveyedHull each : surveyed) {
            moved = each.as.isPresent() ? moved.withHull(each.hull, h -> h.withBaseCentre(each.as.get().baseCentre())
                    .withLayDownAzimuth(each.as.get().layDownAzimuth())) : moved;
        }
        return moved;
    }

    /** Says what of the hull was not surveyed where what was lies as planned. */
    private Optional<Finding> lacking(double allowed) {
        List<String> lacks = new ArrayList<>();
        ends.stream().filter(e -> e.above.isEmpty()).forEach(e -> lacks.add("the height of the " + e.name));
        if (ends.size() < 2) {
            lacks.add(ends.get(0).name.equals(BASE) ? "the " + FAR : "the " + BASE);
        }
        return lacks.isEmpty() ? Optional.empty() : Optional.of(Finding.of(LoweringRule.AS_BUILT_HULL_NOT_SURVEYED,
                Finding.Level.WARN, hull, Finding.Figures.NONE, String.format(Locale.ROOT, "Surveyed after step %s,"
                + " hull %s: %s, %.2f m allowed. Not surveyed: %s. Whether the hull lies as planned there is not"
                + " judged.", step, hull, String.join("; ", ends.stream().map(End::words).toList()), allowed,
                String.join(" and ", lacks))).at(ends.get(0).place()).with(step));
    }

    /** Says where the hull lies where that is not its place in the plan. */
    Optional<Finding> finding(double allowed) {
        End worst = ends.stream().max(Comparator.comparingDouble(End::off)).orElseThrow();
        if (worst.off() <= allowed) {
            return lacking(allowed);
        }
        String text = String.format(Locale.ROOT, "Surveyed after step %s, hull %s lies elsewhere than planned: %s."
                + " %.2f m allowed.%s", step, hull, String.join("; ", ends.stream().map(End::words).toList()), allowed,
                ends.size() < 2 ? " The other end was not surveyed." : "");
        String todo = as.map(h -> String.format(Locale.ROOT, "Enter where it lies (base_centre east %.2f, north %.2f,"
                + " lay_down_azimuth_deg %.2f) and assess the plan again before soil is placed: cover, dose, hatches"
                + " and clearances hold for the planned place.", h.baseCentre().east(), h.baseCentre().north(),
                h.layDownAzimuth().degrees())).orElse(LoweringRule.AS_BUILT_HULL_ELSEWHERE.entry().todo());
        return Optional.of(Finding.of(LoweringRule.AS_BUILT_HULL_ELSEWHERE, Finding.Level.WARN, hull,
                Finding.Figures.of(worst.off(), allowed, "m"), text).at(worst.place()).with(step).todo(todo));
    }
}
