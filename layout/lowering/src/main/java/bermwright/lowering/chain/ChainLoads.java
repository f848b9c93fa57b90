// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.chain;

import bermwright.foundation.Vec3;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.rig.Anchor;
import bermwright.lowering.rig.DesignFactors;
import bermwright.lowering.rig.GearPoints;
import bermwright.lowering.rig.HeadGear;
import bermwright.lowering.rig.Poles;
import bermwright.lowering.rig.PullOver;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.rig.Stay;
import bermwright.lowering.rig.Winch;
import bermwright.lowering.statics.HeadForces;
import bermwright.lowering.statics.LoweringCase;
import bermwright.lowering.statics.PoleHead;
import bermwright.regolith.Regolith;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** Asks every part of the chain for the tensions of one load case. */
final class ChainLoads {
    static final String RULES = "rules of the plan";
    /** What a brake must hold over the pull of its line; ASME B30.7, from memory. */
    private static final double BRAKE_FACTOR = 1.25;
    private static final double GROUND_FACTOR = 2;
    private static final double NEGLIGIBLE = 1e-6;
    /** Pull of all heads together across the plane that nobody rigs side stays for, over the weight (1). */
    private static final double ACROSS = 1e-3;

    private final LoweringCase setup;
    private final Rig rig;
    private final TippingBody tipping;
    private final PartCapacities bears;
    private final LoadCase load;
    private final double shift;
    private final Asked asked;

    /** The loads of a case on a body whose centre of mass is shifted so far already. */
    ChainLoads(LoweringCase setup, PartCapacities bears, LoadCase load, double shift, Asked asked) {
        this.setup = setup;
        this.rig = setup.rig();
        this.tipping = setup.tipping();
        this.bears = bears;
        this.load = load;
        this.shift = shift;
        this.asked = asked;
    }

    /**
     * Tensions at a tilt.
     *
     * @param tilt     tilt (rad)
     * @param paths    every line there
     * @param settled  tension of each between lug and head once all is at rest (N)
     * @param peak     the greatest tension of each (N)
     * @param passedOn share of it behind the head (1)
     */
    record Pull(double tilt, List<GearPoints.LinePath> paths, double[] settled, double[] peak, double passedOn) {
        static double greatest(double[] values) {
            double greatest = 0;
            for (double v : values) {
                greatest = Math.max(greatest, v);
            }
            return greatest;
        }
    }

    void lines(Pull pull, GearPoints points) {
        double each = Pull.greatest(pull.peak);
        double behind = Math.max(each, each * pull.passedOn);
        DesignFactors factors = rig.factors();
        add(Part.LOWERING_LINE, pull.tilt, each, bears.line, new Asks(factors.line(), RULES));
        add(Part.TERMINATION, pull.tilt, each, bears.termination, new Asks(factors.line(),
                "breaking load times termination efficiency; " + RULES));
        add(Part.LUG, pull.tilt, each, rig.lines().ends().lugCapacity(), new Asks(factors.line(), RULES));
        Winch winch = rig.lines().winch();
        boolean works = load.kind() != LoadCase.Kind.SHOCK;
        double atWinch = rig.poles().isPresent() ? pull.passedOn : 1;
        if (works) {
            add(Part.WINCH, pull.tilt, Pull.greatest(pull.settled) * atWinch, winch.rating(),
                    new Asks(1, "rating of the winch; ASME B30.7, from memory"));
        }
        if (load != LoadCase.HAULING_BACK) {
            add(Part.WINCH_BRAKE, pull.tilt, each * atWinch, winch.holding(), new Asks(BRAKE_FACTOR,
                    "holding pull of the brake; 1.25 by ASME B30.7, from memory"));
        }
        for (int i = 0; i < pull.paths.size(); i++) {
            Vec3 from = pull.paths.get(i).winch();
            Vec3 to = rig.poles().isPresent() ? pull.paths.get(i).lead() : pull.paths.get(i).lug();
            anchor(Part.WINCH_ANCHOR, winch.anchor(), pull.peak[i] * atWinch, to.minus(from), pull.tilt);
        }
        if (rig.poles().isPresent()) {
            add(Part.LINE_OVER_SHEAVE, pull.tilt, behind, bears.overSheave, new Asks(factors.line(),
                    "strength left by sheave over rope diameter, rigging handbooks; " + RULES));
            heads(pull, points, rig.poles().get());
        }
    }

    private void heads(Pull pull, GearPoints points, Poles poles) {
        DesignFactors factors = rig.factors();
        double across = 0;
        double greatest = 0;
        for (int p = 0; p < points.poles().size(); p++) {
            HeadForces f = new PoleHead(points, p).forces(pull.paths, pull.peak, pull.passedOn);
            double foot = f.thrust() > 0 ? f.thrust() + bears.poleWeight : 0;
            add(Part.POLE, pull.tilt, f.thrust(), bears.pole, new Asks(factors.pole(), "lowest of Euler, EN 1993-1-1"
                    + " 6.3.1 cold-formed, ANSI/AISC 360 E3 and wall buckling by NASA SP-8007; " + RULES));
            add(Part.POLE_FOOT, pull.tilt, foot, bears.poleFoot, new Asks(factors.pole(),
                    "Vesic (1973) at lunar gravity; factor of the poles in the rules of the plan")
                    .on(ground -> bears.poleFootOn(ground, poles)));
            if (f.leftOver() > 0) {
                add(Part.POLE_HEAD, pull.tilt, f.leftOver(), OptionalDouble.of(0), new Asks(factors.pole(),
                        "no stay holds it back"));
            }
            stays(pull, points, p, f.stay());
            across += f.lateral();
            greatest = Math.max(greatest, Math.abs(f.lateral()));
        }
        HeadGear gear = poles.headGear();
        boolean loose = load == LoadCase.POLE_LOST && points.poles().size() == 2;
        if (points.poles().size() > 1 && !loose) {
            add(Part.HEAD_TIE, pull.tilt, greatest, gear.tieCapacity(), new Asks(factors.pole(), RULES));
        }
        if (Math.abs(across) > ACROSS * tipping.weight()) {
            add(Part.HEADS_ACROSS, pull.tilt, Math.abs(across), OptionalDouble.empty(), new Asks(factors.pole(),
                    "side stays are not stated"));
        }
        for (int i = 0; i < pull.paths.size(); i++) {
            GearPoints.LinePath line = pull.paths.get(i);
            Vec3 on = line.winch().minus(line.lead());
            Vec3 sum = line.pull().times(-pull.peak[i])
                    .plus(on.norm() > 0 ? on.direction().times(pull.peak[i] * pull.passedOn) : Vec3.ZERO);
            add(Part.HEAD_SHEAVE, pull.tilt, sum.norm(), gear.sheaveCapacity(), new Asks(factors.line(), RULES));
        }
    }

    private void stays(Pull pull, GearPoints points, int pole, double tension) {
        double before = load != LoadCase.STAY_LOST ? tension
                : new PoleHead(bears.points, pole).forces(pull.paths, pull.peak, pull.passedOn).stay();
        double peak = tension + Math.max(0, tension - before);
        for (GearPoints.StayPoints at : points.staysOf(pole)) {
            Stay stay = rig.stays().get(at.set());
            add(Part.STAY, pull.tilt, peak, bears.stay(stay), new Asks(rig.factors().line(), RULES));
            anchor(Part.STAY_ANCHOR, stay.anchor(), peak, at.head().minus(at.anchor()), pull.tilt);
        }
    }

    /** The pull-over line and the pivot before balance. */
    void pullOver(PullOver over, double tilt, double tension, Vec3 toLug) {
        DesignFactors factors = rig.factors();
        OptionalDouble breaking = over.line().breakingLoad();
        add(Part.PULL_OVER_LINE, tilt, tension, breaking, new Asks(factors.line(), RULES));
        add(Part.PULL_OVER_TERMINATION, tilt, tension, PartCapacities.times(breaking, over.ends().termination()),
                new Asks(factors.line(), "breaking load times termination efficiency; " + RULES));
        add(Part.PULL_OVER_LUG, tilt, tension, over.ends().lugCapacity(), new Asks(factors.line(), RULES));
        add(Part.PULL_OVER_WINCH, tilt, tension, over.rating(), new Asks(1, "rating of the winch"));
        anchor(Part.PULL_OVER_ANCHOR, over.anchor(), tension, toLug, tilt);
    }

    /**
     * The pivot under a pull of all lines together in the lay-down plane.
     *
     * @param tilt  tilt (rad)
     * @param force the pull on the hull (N): x along, z along the normal
     * @param turn  how fast the hull is slowed down (rad/s2), negative while it is slowed
     */
    void pivot(double tilt, Vec3 force, double turn, boolean ground) {
        double slope = tipping.ground().slopeAlong();
        double weight = tipping.weight();
        double mass = tipping.body().mass();
        double x = tipping.centreOfMass(tilt).x();
        double z = tipping.centreOfMass(tilt).z();
        double up = weight * Math.cos(slope) - force.z() - mass * turn * x;
        double along = -force.x() - weight * Math.sin(slope) + mass * turn * z;
        double held = load == LoadCase.PIVOT_HOLD_LOST ? 0 : rig.pivotHold().map(a -> bears.anchor(
                Optional.of(a), 0).getAsDouble()).orElse(0.0);
        double friction = tipping.ground().friction() * Math.max(0, up);
        boolean lost = load == LoadCase.PIVOT_HOLD_LOST;
        Asks hold = new Asks(rig.factors().pivotHold(), (lost ? "friction; " : "friction and anchor; ") + RULES);
        add(lost ? Part.PIVOT_FRICTION : Part.PIVOT_HOLD, tilt, Math.abs(along), OptionalDouble.of(held + friction),
                rig.pivotHold().filter(a -> !lost).map(a -> hold.on(other -> friction + bears.anchorOn(other, a, 0)))
                        .orElse(hold));
        add(Part.PIVOT_UPLIFT, tilt, weight * Math.cos(slope) - up, OptionalDouble.of(weight * Math.cos(slope)),
                new Asks(1, "statics"));
        if (ground && up > 0 && PivotEdge.isWorkable(tilt)) {
            PivotEdge.Pressed p = PivotEdge.pressed(setup, tilt, up, along);
            add(Part.PIVOT_GROUND, tilt, up, OptionalDouble.of(up * p.bearing(setup, setup.soil()) / p.pressure()),
                    new Asks(GROUND_FACTOR, "Vesic (1973) at lunar gravity; common practice, no source")
                            .on(other -> up * p.bearing(setup, other) / p.pressure()));
        }
    }

    /** What turns the hull in plan against the friction of two shoes or feet that is not used along. */
    void turning(double tilt, double moment, Vec3 force) {
        double slope = tipping.ground().slopeAlong();
        double up = tipping.weight() * Math.cos(slope) - force.z();
        double along = Math.abs(-force.x() - tipping.weight() * Math.sin(slope));
        double held = rig.pivotHold().map(a -> bears.anchor(Optional.of(a), 0).getAsDouble()).orElse(0.0);
        double left = Math.max(0, tipping.ground().friction() * Math.max(0, up) - Math.max(0, along - held));
        add(Part.PIVOT_TURNING, tilt, Math.abs(moment), OptionalDouble.of(left * tipping.pivot().halfWidth()),
                new Asks(rig.factors().pivotHold(), "friction of both shoes or feet; a bare rim holds nothing",
                        "N m"));
    }

    void hull(double tilt, OptionalDouble stress, OptionalDouble bearable, String source) {
        asked.add(new ChainRow(Part.HULL, load, shift, stress, bearable, "Pa", required(1.5), tilt, source));
    }

    void heat(double tilt, double heat) {
        add(Part.BRAKE_HEAT, tilt, heat, rig.lines().winch().brakeHeat(),
                new Asks(1, "energy of the fall, none of it carried off", "J"));
    }

    /** Nothing is left that holds the hull. */
    void nothingLeft(double tilt, double pull) {
        add(Part.LOWERING_LINE, tilt, pull, OptionalDouble.of(0), new Asks(rig.factors().line(),
                "nothing is left to hold the hull"));
    }

    /** The case cannot be worked out for want of a figure. */
    void unknown(Part part, double tilt, String missing) {
        asked.add(new ChainRow(part, load, shift, OptionalDouble.empty(), OptionalDouble.empty(), "N", required(1),
                tilt, missing));
    }

    private void anchor(Part part, Optional<Anchor> anchor, double tension, Vec3 line, double tilt) {
        double elevation = Math.abs(Math.atan2(line.z(), Math.hypot(line.x(), line.y())));
        add(part, tilt, tension, bears.anchor(anchor, elevation), new Asks(rig.factors().anchor(),
                bears.anchorSource(anchor)).on(ground -> bears.anchorOn(ground, anchor.orElseThrow(), elevation)));
    }

    /** The least factor asked of a part by its own rule, and where it is from. */
    private record Asks(double factor, String source, String unit, Optional<ToDoubleFunction<Regolith>> onGround) {
        Asks(double factor, String source) {
            this(factor, source, "N", Optional.empty());
        }

        Asks(double factor, String source, String unit) {
            this(factor, source, unit, Optional.empty());
        }

        Asks on(ToDoubleFunction<Regolith> bears) {
            return new Asks(factor, source, unit, Optional.of(bears));
        }
    }

    private void add(Part part, double tilt, double demand, OptionalDouble capacity, Asks asks) {
        if (demand > NEGLIGIBLE * tipping.weight()) {
            ChainRow row = new ChainRow(part, load, shift, OptionalDouble.of(demand), capacity, asks.unit,
                    required(asks.factor), tilt, capacity.isPresent() ? asks.source : "not given, so not judged");
            if (capacity.isPresent() && asks.onGround.isPresent()) {
                asked.add(row, asks.onGround.get());
            } else {
                asked.add(row);
            }
        }
    }

    private double required(double own) {
        return switch (load.kind()) {
            case WORKING -> own;
            case SHOCK -> Math.min(own, rig.factors().shock());
            case LOSS -> Math.min(own, rig.factors().afterLoss());
        };
    }
}
