// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.lowering.body.SweptProfile;
import bermwright.lowering.choice.Comparison;
import bermwright.lowering.choice.Limits;
import bermwright.lowering.choice.MeansRow;
import bermwright.lowering.choice.PayloadSweep;
import bermwright.lowering.choice.Suggestions;
import bermwright.lowering.statics.LoweringCase;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.Plan;
import bermwright.site.pose.LyingPose;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What else could be done with a hull.
 *
 * @param hull        id of the hull
 * @param suggestions poles that fit the winch; absent where no lines or no winch rating are given
 * @param comparison  all means side by side; empty where there is no ground
 * @param byMass      load against mass, from half to one and a half times; empty without lines
 * @param byCentre    load against the centre of mass, a tenth of the hull's length to either side; empty without lines
 * @param unusable    why nothing is worked out; empty where it is
 */
public record Alternatives(String hull, Optional<Suggestions> suggestions, List<MeansRow> comparison,
        List<PayloadSweep.PayloadPoint> byMass, List<PayloadSweep.PayloadPoint> byCentre, String unusable) {
    private static final int POINTS = 11;

    /** Copies the lists. */
    public Alternatives {
        Objects.requireNonNull(hull, "hull");
        Objects.requireNonNull(suggestions, "suggestions");
        comparison = List.copyOf(comparison);
        byMass = List.copyOf(byMass);
        byCentre = List.copyOf(byCentre);
        Objects.requireNonNull(unusable, "unusable");
    }

    /**
     * What else could be done with each hull of a plan that is to lie.
     *
     * @param plan   the plan
     * @param ground its ground
     * @return one answer for each such hull, in the plan's order
     */
    public static List<Alternatives> all(Plan plan, ElevationGrid ground) {
        return plan.hulls().stream().filter(h -> h.arrival() != Hull.Arrival.STAYS_UPRIGHT)
                .map(h -> of(plan, h, ground)).toList();
    }

    /**
     * What else could be done with a hull.
     *
     * @param plan   the plan
     * @param hull   the hull
     * @param ground its ground
     * @return the answer
     */
    public static Alternatives of(Plan plan, Hull hull, ElevationGrid ground) {
        Optional<LyingPose> pose = LyingPose.of(hull, ground);
        if (pose.isEmpty()) {
            return none(hull, "there is no ground under the lying hull");
        }
        try {
            return of(plan, hull, ground, HullCase.of(plan, hull, pose.get(), ground));
        } catch (IllegalArgumentException unusable) {
            return none(hull, unusable.getMessage());
        }
    }

    private static Alternatives of(Plan plan, Hull hull, ElevationGrid ground, HullCase hullCase) {
        Optional<LoweringCase> lines = hullCase.byLines(plan, hull, ground);
        Optional<LoweringGear.Landing> touch = hull.lowering().flatMap(LoweringGear::landing);
        Comparison.Touchdown touchdown = touch.map(t -> new Comparison.Touchdown(
                t.touchdownSpeed().orElse(Comparison.Touchdown.USUAL.speed()),
                Math.abs(t.touchdownPitch().orElse(Comparison.Touchdown.USUAL.pitch()))))
                .orElse(Comparison.Touchdown.USUAL);
        double rate = hull.lowering().map(LoweringGear::rate).orElse(Math.toRadians(1) / 60);
        List<MeansRow> rows = Comparison.of(hullCase.tipping(), rate,
                new Comparison.Candidates(lines, HullCase.thrusters(hull), touchdown));
        double length = hull.length();
        double centre = hull.centreOfMassFromBase();
        List<PayloadSweep.PayloadPoint> byMass = lines.map(c -> PayloadSweep.byMass(c, hull.mass() / 2,
                hull.mass() * 1.5, POINTS)).orElse(List.of());
        List<PayloadSweep.PayloadPoint> byCentre = lines.map(c -> PayloadSweep.byCentre(c,
                Math.max(0.1 * length, centre - 0.1 * length), Math.min(0.9 * length, centre + 0.1 * length), POINTS))
                .orElse(List.of());
        return new Alternatives(hull.id(), lines.flatMap(Alternatives::suggest), rows, byMass, byCentre, "");
    }

    private static Optional<Suggestions> suggest(LoweringCase lines) {
        OptionalDouble rating = lines.rig().lines().winch().rating();
        if (rating.isEmpty()) {
            return Optional.empty();
        }
        double back = -SweptProfile.of(lines.tipping()).least();
        return Optional.of(Suggestions.of(lines, Limits.of(rating.getAsDouble(),
                lines.tipping().body().outline().length(), back)));
    }

    private static Alternatives none(Hull hull, String why) {
        return new Alternatives(hull.id(), Optional.empty(), List.of(), List.of(), List.of(), why);
    }
}
