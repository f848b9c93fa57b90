// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.lowering.body.Body;
import bermwright.lowering.body.EndShape;
import bermwright.lowering.body.MassCentre;
import bermwright.lowering.body.Outline;
import bermwright.lowering.body.PlanePoint;
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
import bermwright.site.gear.GearPlaces;
import bermwright.site.gear.Spot;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.Pivot;
import bermwright.site.plan.Rules;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Turns what a plan says about a hull and its gear into a body, a rig and a soil. */
final class GearFromPlan {
    private static final double HOUR = 3600;
    /** Length over which the slope at an anchor is taken (m): what its wedge of soil reaches. */
    private static final double SLOPE_BASE = 6;
    private final Landed landed;
    private final LayPlane plane;
    private final ElevationGrid ground;
    private final GearPlaces places;

    /** How far off its planned place a hull landed: ahead along the azimuth and to the left (m). */
    record Landed(double ahead, double left) {
        static final Landed AS_PLANNED = new Landed(0, 0);
    }

    GearFromPlan(GearPlaces places, Landed landed, LayPlane plane, ElevationGrid ground) {
        this.places = places;
        this.landed = landed;
        this.plane = plane;
        this.ground = ground;
    }

    static Body body(Hull hull) {
        Outline outline = new Outline(hull.length(), hull.radius(), end(hull.baseEnd()), end(hull.farEnd()));
        MassCentre centre = new MassCentre(hull.centreOfMassFromBase(), hull.centreOfMassOffAxis(),
                hull.centreOfMassSpread());
        double inertia = hull.inertiaAboutCentre()
                .orElse(Body.uniform(outline, hull.mass(), centre).inertiaAboutCentre());
        return new Body(outline, hull.mass(), centre, inertia, Math.min(hull.residualPropellant(), hull.mass()));
    }

    private static EndShape end(Hull.End end) {
        return new EndShape(EndShape.Kind.valueOf(end.shape().name()), end.depth());
    }

    static bermwright.lowering.body.Pivot pivot(Pivot pivot, double radius) {
        double footArea = pivot.footArea().orElse(Pivot.USUAL_FOOT_AREA);
        return switch (pivot.kind()) {
            case RIM -> new bermwright.lowering.body.Pivot.Rim();
            case SHOES -> new bermwright.lowering.body.Pivot.Shoes(pivot.ahead(radius),
                    pivot.halfSpread().orElse(radius), footArea);
            case LEGS -> new bermwright.lowering.body.Pivot.Legs(pivot.count().orElse(4),
                    pivot.footprintRadius().orElse(radius), footArea);
        };
    }

    static DesignFactors factors(Rules rules) {
        return new DesignFactors(rules.lineDesignFactor(), rules.anchorDesignFactor(), rules.poleDesignFactor(),
                rules.pivotHoldFactor(), rules.shockDesignFactor(), rules.afterLossDesignFactor());
    }

    /** The rig of a plan's gear; absent where no lines are given. */
    Optional<Rig> rig(LoweringGear gear, DesignFactors factors) {
        return gear.lines().map(lines -> new Rig(lines(lines, thermal(gear.temperature())),
                gear.poles().map(this::poles),
                gear.poles().map(p -> IntStream.range(0, gear.stays().size()).mapToObj(i -> stay(gear, i)).toList())
                        .orElse(List.of()),
                gear.pullOver().map(p -> pullOver(gear, p)),
                gear.pivotHold().flatMap(h -> h.anchor().built()), factors));
    }

    /** The temper of the lines; windows that end before they begin are a finding elsewhere and left out. */
    private static ThermalAction thermal(LoweringGear.Temperature temperature) {
        return new ThermalAction(temperature.swing(), temperature.expansion(), temperature.light().stream()
                .filter(w -> w.to() > w.from()).map(w -> new ThermalAction.Light(w.from() * HOUR, w.to() * HOUR,
                        w.shade() == LoweringGear.Shade.SUN)).toList());
    }

    private static Line line(LoweringGear.Line line, ThermalAction thermal) {
        return new Line(line.breakingLoad(), line.massPerLength().orElse(0), line.stiffness(), line.diameter(),
                thermal);
    }

    private LoweringLines lines(LoweringGear.Lines lines, ThermalAction thermal) {
        Line line = line(lines.line(), thermal);
        Winch winch = new Winch(onGround(places.lines().stream().map(GearPlaces.LinePlace::winch).toList()),
                lines.winch().ratingEach(), lines.winch().brakeHeat(),
                lines.winch().anchor().flatMap(a -> anchor(a, -lines.winch().behindPivot(), 1)),
                lines.winch().brakeHolding(), lines.winch().spacing());
        return new LoweringLines(lines.count(), new Lug(lines.lugFromBase(), lines.lugOffAxis(),
                lines.lugHalfSpread()), line, winch, lines.payOutMismatch(), lines.sheaveEfficiency(),
                ends(lines.ends()), lines.slack());
    }

    private static Ends ends(LoweringGear.Ends ends) {
        return new Ends(ends.terminationEfficiency(), ends.lugCapacity());
    }

    private Poles poles(LoweringGear.Poles poles) {
        double level = levelAt(places.poles().stream().map(GearPlaces.PolePlace::foot).toList());
        Optional<Tube> tube = poles.diameter().isPresent() && poles.wall().isPresent() && poles.yield().isPresent()
                && poles.modulus().isPresent()
                ? Optional.of(new Tube(poles.diameter().getAsDouble(), poles.wall().getAsDouble(),
                        poles.yield().getAsDouble(), poles.modulus().getAsDouble()))
                : Optional.empty();
        return new Poles(at(-poles.behindPivot(), level),
                at(-poles.behindPivot(), level + poles.height()), poles.halfSpread(), tube, poles.footArea(),
                poles.poleCount(), new HeadGear(poles.head().sheaveDiameter(), poles.head().sheaveCapacity(),
                        poles.head().tieCapacity()));
    }

    private Stay stay(LoweringGear gear, int set) {
        LoweringGear.Stay stay = gear.stays().get(set);
        double along = -gear.poles().orElseThrow().behindPivot() - stay.behindPole();
        List<Spot> anchors = places.stays().stream().filter(s -> s.set() == set).map(GearPlaces.StayPlace::anchor)
                .toList();
        return new Stay(onGround(anchors), stay.halfSpread(), stay.breakingLoad(),
                stay.anchor().flatMap(a -> anchor(a, along, 1)));
    }

    private PullOver pullOver(LoweringGear gear, LoweringGear.PullOver over) {
        return new PullOver(new Lug(over.lugFromBase(), 0, 0),
                onGround(List.of(places.pullOver().orElseThrow().winch())), over.winchRating(),
                over.anchor().flatMap(a -> anchor(a, over.anchorAhead(), -1)),
                line(over.line(), thermal(gear.temperature())), ends(over.ends()));
    }

    /** The anchor on the slope of its own ground, positive where it falls the way it is pulled: ahead 1, back -1. */
    private Optional<Anchor> anchor(bermwright.site.plan.Anchor anchor, double along, int pulled) {
        double fall = levelAt(new Spot(along - SLOPE_BASE / 2, 0)) - levelAt(new Spot(along + SLOPE_BASE / 2, 0));
        double slope = Math.atan(fall / SLOPE_BASE);
        return anchor.built().map(a -> new Anchor.OnSlope(a, pulled * slope, pulled * (slope - plane.slopeAlong())));
    }

    /** The mean place of parts that stand alike to both sides, on the mean height of their ground. */
    private PlanePoint onGround(List<Spot> spots) {
        return at(spots.get(0).ahead(), levelAt(spots));
    }

    /** A point of the gear, its distance given from the planned pivot line. */
    private PlanePoint at(double along, double level) {
        return plane.at(along - landed.ahead, level);
    }

    private double levelAt(List<Spot> spots) {
        return spots.stream().mapToDouble(this::levelAt).average().orElseThrow();
    }

    /** Height of the ground at a place; the fitted plane carried on where there is no ground (m). */
    private double levelAt(Spot spot) {
        double along = spot.ahead() - landed.ahead;
        double level = ground.height(plane.place(along, spot.left() - landed.left));
        return Double.isFinite(level) ? level : plane.height() - along * Math.tan(plane.slopeAlong());
    }
}
