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
import bermwright.lowering.rig.HeadGear;
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
import bermwright.lowering.statics.LoweringCase;
import bermwright.regolith.LunarProfile;
import bermwright.regolith.Soils;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/**
 * Hulls and gear drawn at random, every rating given: sizes, slopes, one to six lines over one to three poles or none,
 * stays in one or two sets splayed at random. One seed gives one case, always the same.
 */
public final class RandomRigs {
    private RandomRigs() {
    }

    /**
     * A case.
     *
     * @param seed the seed
     * @return the case
     */
    public static LoweringCase of(long seed) {
        Random r = new Random(seed * 7919 + 17);
        double length = between(r, 18, 50);
        double radius = between(r, 2, 5);
        double mass = between(r, 20_000, 150_000);
        Outline outline = new Outline(length, radius, EndShape.FLAT, EndShape.FLAT);
        MassCentre centre = new MassCentre(length * between(r, 0.36, 0.5), 0.2 * radius * r.nextGaussian(),
                between(r, 0, 0.6));
        Body body = new Body(outline, mass, centre, mass * length * length / 11, 0);
        Ground ground = new Ground(between(r, 1, 4), Math.toRadians(2 * r.nextGaussian()), 0, between(r, 0.2, 0.7));
        TippingBody tipping = new TippingBody(body, pivot(r, radius), ground);
        return new LoweringCase(tipping, rig(r, length, radius, body.mass() * ground.gravity()),
                LunarProfile.with(Soils.strength(42, 500)),
                Math.toRadians(between(r, 0.5, 20)) / 60,
                Optional.of(new Tube(2 * radius, 0.005, 3e8, 2e11)));
    }

    private static Pivot pivot(Random r, double radius) {
        return switch (r.nextInt(3)) {
            case 0 -> new Pivot.Rim();
            case 1 -> new Pivot.Shoes(radius + between(r, 0.1, 1), between(r, 1, radius), 1.5);
            default -> new Pivot.Legs(4, (radius + between(r, 0.1, 1)) * Math.sqrt(2), 1.2);
        };
    }

    private static Rig rig(Random r, double length, double radius, double weight) {
        int poles = r.nextInt(4);
        int lines = poles == 0 ? 1 + r.nextInt(3) : poles * (1 + r.nextInt(2));
        double lug = length * between(r, 0.65, 0.95);
        double behind = between(r, 1.5, 3) * radius;
        double height = length * between(r, 0.5, 0.9);
        double strong = weight * between(r, 1, 4);
        Line line = new Line(OptionalDouble.of(strong), between(r, 1, 6), OptionalDouble.of(100 * strong),
                OptionalDouble.of(0.03), ThermalAction.USUAL);
        Winch winch = new Winch(new PlanePoint(-behind - (poles == 0 ? 40 : between(r, 0, 40)), r.nextGaussian()),
                OptionalDouble.of(weight * between(r, 0.4, 1)), OptionalDouble.of(weight * length),
                Optional.of(new Anchor.Ballast(weight * between(r, 1, 3))), OptionalDouble.of(weight),
                between(r, 1, 4));
        LoweringLines lowering = new LoweringLines(lines, new Lug(lug, 0.1 * radius * r.nextGaussian(),
                between(r, 0, radius)), line, winch, 0.05, between(r, 0.8, 1),
                new Ends(between(r, 0.7, 1), OptionalDouble.of(strong)), between(r, 0.01, 0.2));
        Optional<Poles> given = poles == 0 ? Optional.empty() : Optional.of(new Poles(
                new PlanePoint(-behind, r.nextGaussian()), new PlanePoint(-behind - 0.5 * r.nextGaussian(), height),
                poles == 1 ? 0 : between(r, 1, 2) * radius, Optional.of(new Tube(0.6, 0.016, 355e6, 210e9)),
                OptionalDouble.of(2), poles, new HeadGear(OptionalDouble.of(0.6), OptionalDouble.of(2 * strong),
                        OptionalDouble.of(strong))));
        List<Stay> stays = new ArrayList<>();
        for (int i = poles == 0 ? 2 : r.nextInt(2); i < 2; i++) {
            stays.add(new Stay(new PlanePoint(-behind - between(r, 0.5, 1.5) * height, r.nextGaussian()),
                    between(r, 0, 4) * radius, OptionalDouble.of(strong),
                    Optional.of(new Anchor.Ballast(weight * between(r, 1, 3)))));
        }
        PullOver over = new PullOver(new Lug(lug, 0, 0), new PlanePoint(1.5 * length, r.nextGaussian()),
                OptionalDouble.of(weight / 3), Optional.of(new Anchor.Ballast(weight)), line, Ends.USUAL);
        return new Rig(lowering, given, stays, Optional.of(over), r.nextBoolean()
                ? Optional.of(new Anchor.Ballast(weight)) : Optional.empty(), DesignFactors.COMMON_PRACTICE);
    }

    private static double between(Random r, double least, double greatest) {
        return least + (greatest - least) * r.nextDouble();
    }
}
