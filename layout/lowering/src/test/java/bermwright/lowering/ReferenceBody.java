// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering;

import bermwright.lowering.body.Body;
import bermwright.lowering.body.EndShape;
import bermwright.lowering.body.Ground;
import bermwright.lowering.body.MassCentre;
import bermwright.lowering.body.Outline;
import bermwright.lowering.body.Pivot;
import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.rig.Anchor;
import bermwright.lowering.rig.DesignFactors;
import bermwright.lowering.rig.Ends;
import bermwright.lowering.rig.Line;
import bermwright.lowering.rig.LoweringLines;
import bermwright.lowering.rig.Lug;
import bermwright.lowering.rig.Poles;
import bermwright.lowering.rig.PullOver;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.rig.Stay;
import bermwright.lowering.rig.ThermalAction;
import bermwright.lowering.rig.Tube;
import bermwright.lowering.rig.Winch;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A body worked through by hand to many digits, and rigs around it. */
public final class ReferenceBody {
    public static final double LENGTH = 50;
    public static final double RADIUS = 4.5;
    public static final double GRAVITY = 1.62;
    public static final double WEIGHT = 194_400;
    public static final double LUG = 44;
    public static final PlanePoint HEAD = new PlanePoint(-14, 30);

    private ReferenceBody() {
    }

    public static Body body(double centre, double offAxis) {
        return new Body(new Outline(LENGTH, RADIUS, EndShape.FLAT, EndShape.FLAT), 120_000,
                new MassCentre(centre, offAxis, 0), 2.8e7, 0);
    }

    public static TippingBody onRim() {
        return onRim(20);
    }

    public static TippingBody onRim(double centre) {
        return new TippingBody(body(centre, 0), new Pivot.Rim(), new Ground(GRAVITY, 0, 0, 0.5));
    }

    public static TippingBody onSlope(double slope) {
        return new TippingBody(body(20, 0), new Pivot.Rim(), new Ground(GRAVITY, slope, 0, 0.5));
    }

    public static Line rope() {
        double area = Math.PI / 4 * 0.036 * 0.036;
        return line(816_600, 5.3, 80e9 * area, 0.036);
    }

    public static Winch winchAt(double x) {
        return new Winch(new PlanePoint(x, 0), OptionalDouble.of(250_000), OptionalDouble.of(5e6), Optional.empty());
    }

    public static Rig plainRig(PlanePoint head, double lugOffAxis) {
        return plainRig(Optional.of(new Poles(new PlanePoint(head.x(), 0), head, 0, Optional.empty(),
                OptionalDouble.empty())), lugOffAxis, head.x());
    }

    public static Rig groundRig(double behind, double lugOffAxis) {
        return plainRig(Optional.empty(), lugOffAxis, -behind);
    }

    private static Rig plainRig(Optional<Poles> poles, double lugOffAxis, double winch) {
        LoweringLines lines = new LoweringLines(1, new Lug(LUG, lugOffAxis, 0), rope(), winchAt(winch), 0, 1,
                Ends.USUAL, LoweringLines.USUAL_SLACK);
        PullOver over = new PullOver(new Lug(LUG, 0, 0), new PlanePoint(60, 0), OptionalDouble.of(60_000),
                Optional.empty());
        return new Rig(lines, poles, List.of(), Optional.of(over), Optional.empty(), DesignFactors.COMMON_PRACTICE);
    }

    /** Two lines over two poles with stays, winches and anchors. */
    public static Rig fullRig(double winchAt) {
        LoweringLines lines = new LoweringLines(2, new Lug(LUG, 0, 4.5), rope(),
                new Winch(new PlanePoint(winchAt, 0), OptionalDouble.of(250_000), OptionalDouble.of(5e6),
                        Optional.of(new Anchor.Plate(3, 2, 3))), 0.05, 1, Ends.USUAL, LoweringLines.USUAL_SLACK);
        Poles poles = new Poles(new PlanePoint(-14, 0), HEAD, 8, Optional.of(new Tube(0.508, 0.016, 355e6, 210e9)),
                OptionalDouble.of(2));
        Stay stay = new Stay(new PlanePoint(-42, 0), 8, OptionalDouble.of(816_600),
                Optional.of(new Anchor.Plate(4, 2.5, 4)));
        PullOver over = new PullOver(new Lug(LUG, 0, 0), new PlanePoint(60, 0), OptionalDouble.of(60_000),
                Optional.of(new Anchor.Plate(2, 1, 1.5)));
        return new Rig(lines, Optional.of(poles), List.of(stay), Optional.of(over),
                Optional.of(new Anchor.Plate(8, 3, 4)), DesignFactors.COMMON_PRACTICE);
    }

    /**
     * A line of steel of which everything is known.
     *
     * @param breakingLoad  breaking load (N), positive
     * @param massPerLength mass per length (kg/m), zero or more
     * @param stiffness     EA (N), positive
     * @param diameter      diameter (m), positive
     * @return the line
     */
    public static Line line(double breakingLoad, double massPerLength, double stiffness, double diameter) {
        return new Line(OptionalDouble.of(breakingLoad), massPerLength, OptionalDouble.of(stiffness),
                OptionalDouble.of(diameter), ThermalAction.USUAL);
    }
}
