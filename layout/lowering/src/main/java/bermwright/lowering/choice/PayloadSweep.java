// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.choice;

import bermwright.foundation.Require;
import bermwright.lowering.body.Body;
import bermwright.lowering.body.MassCentre;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.sequence.Lowered;
import bermwright.lowering.sequence.Lowering;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.statics.LoweringCase;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The load of a lowering against mass and centre of mass, as curves. */
public final class PayloadSweep {
    private PayloadSweep() {
    }

    /**
     * One point of a curve.
     *
     * @param mass            mass (kg)
     * @param centre          centre of mass from the base (m)
     * @param balanceTilt     balance tilt (rad)
     * @param lineEach        greatest tension of one lowering line (N)
     * @param pullOver        greatest tension of the pull-over line (N)
     * @param poleEach        greatest thrust of one pole (N)
     * @param pivotAlong      greatest pull along the ground at the pivot (N)
     * @param lineFactor      breaking load over tension (1); absent without a rating
     * @param refused         whether the lowering is refused there
     */
    public record PayloadPoint(double mass, double centre, double balanceTilt, double lineEach, double pullOver,
            double poleEach, double pivotAlong, OptionalDouble lineFactor, boolean refused) {
    }

    /**
     * The load against the mass, centre of mass kept.
     *
     * @param setup     the case
     * @param least    least mass (kg), positive
     * @param greatest greatest mass (kg), more than the least
     * @param points   number of points (1), at least 2
     * @return the points at which a lowering can be worked out, by rising mass
     */
    public static List<PayloadPoint> byMass(LoweringCase setup, double least, double greatest, int points) {
        Require.positive("least mass", least, "kg");
        return sweep(setup, least, greatest, points, true);
    }

    /**
     * The load against the centre of mass, mass kept.
     *
     * @param setup     the case
     * @param least    least distance from the base (m), positive
     * @param greatest greatest distance (m), more than the least
     * @param points   number of points (1), at least 2
     * @return the points at which a lowering can be worked out, by rising distance
     */
    public static List<PayloadPoint> byCentre(LoweringCase setup, double least, double greatest, int points) {
        Require.positive("least centre of mass", least, "m");
        return sweep(setup, least, greatest, points, false);
    }

    private static List<PayloadPoint> sweep(LoweringCase setup, double least, double greatest, int points,
            boolean mass) {
        Require.that(greatest > least, "a sweep from %s to %s; accepted: a rising range.", least, greatest);
        Require.atLeast("points of the sweep", points, 2, "1");
        List<PayloadPoint> curve = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            double value = least + (greatest - least) * i / (points - 1);
            Body body = setup.tipping().body();
            MassCentre centre = body.centre();
            Body changed = mass ? body.withMass(value)
                    : body.withCentre(new MassCentre(value, centre.offAxis(), centre.spread()));
            TippingBody tipping = setup.tipping().with(changed);
            Lowered lowered = Lowering.of(setup.with(tipping));
            lowered.result().ifPresent(r -> curve.add(point(tipping, r, lowered.isRefused())));
        }
        return curve;
    }

    private static PayloadPoint point(TippingBody tipping, LoweringResult r, boolean refused) {
        double pole = r.tilts().stream().mapToDouble(s -> s.poleEach()).max().orElse(0);
        double along = r.tilts().stream().mapToDouble(s -> Math.abs(s.pivotAlong())).max().orElse(0);
        return new PayloadPoint(tipping.body().mass(), tipping.body().centre().along(), r.balanceTilt(),
                r.greatestLineTension(), r.greatestPullOver(), pole, along, r.factors().line(), refused);
    }
}
