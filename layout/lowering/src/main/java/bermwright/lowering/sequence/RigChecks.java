// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.motion.HeldBody;
import bermwright.lowering.motion.Shock;
import bermwright.lowering.rig.Anchor;
import bermwright.lowering.rig.DesignFactors;
import bermwright.lowering.rig.GearPoints;
import bermwright.lowering.rig.Poles;
import bermwright.lowering.rig.PullOver;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.rig.Stay;
import bermwright.lowering.rig.Winch;
import bermwright.lowering.strength.Column;
import bermwright.lowering.strength.ThinTube;
import bermwright.regolith.Bearing;
import bermwright.regolith.Regolith;
import bermwright.regolith.SoilSensitivity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** Every part of a rig held against the forces of a scan, held still. */
final class RigChecks {
    private static final String RULES = "rules of the plan";
    /** Density of a steel pole (kg/m3). */
    private static final double STEEL = 7850;
    /** Least factor of a line against a shock; common practice, no source. */
    private static final double SHOCK_FACTOR = 1.5;
    private final LoweringCase what;
    private final TiltScan scan;
    private final List<PartCheck> checks = new ArrayList<>();
    private final List<String> missing = new ArrayList<>();
    private final Map<PartCheck, SoilSensitivity> soil = new HashMap<>();
    private OptionalDouble line = OptionalDouble.empty();
    private OptionalDouble winch = OptionalDouble.empty();
    private OptionalDouble pole = OptionalDouble.empty();
    private OptionalDouble anchor = OptionalDouble.empty();
    private OptionalDouble pivotHold = OptionalDouble.empty();

    RigChecks(LoweringCase what, TiltScan scan) {
        this.what = what;
        this.scan = scan;
        linesAndWinches();
        what.rig().poles().ifPresent(this::poles);
        stays();
        what.rig().pullOver().ifPresent(this::pullOver);
        pivotHold();
        brakes();
        checks.sort(Comparator.comparingDouble(PartCheck::margin));
    }

    List<PartCheck> checks() {
        return checks;
    }

    /** How the factors of the checks that the soil bears move with its strength. */
    Map<PartCheck, SoilSensitivity> soil() {
        return soil;
    }

    /** Ratings that were not given, in words. */
    List<String> missing() {
        return missing;
    }

    Factors factors() {
        return new Factors(line, winch, pole, anchor, pivotHold);
    }

    private DesignFactors asked() {
        return what.rig().factors();
    }

    private void linesAndWinches() {
        Optional<TiltState> worst = worst(TiltState::lineEach);
        if (worst.isEmpty()) {
            return;
        }
        double tension = worst.get().lineEach();
        double tilt = worst.get().tilt();
        double efficiency = what.rig().lines().sheaveEfficiency();
        OptionalDouble breaking = what.rig().lines().line().breakingLoad();
        if (breaking.isPresent()) {
            line = add(new PartCheck("lowering line", "held still", tension, breaking.getAsDouble(), "N",
                    asked().line(), tilt, RULES));
            if (efficiency < 1) {
                add(new PartCheck("lowering line behind the head", "hauling back over the sheave",
                        tension / efficiency, breaking.getAsDouble(), "N", asked().line(), tilt, RULES));
            }
        } else {
            missing.add("breaking load of the lowering lines");
        }
        Winch gear = what.rig().lines().winch();
        if (gear.rating().isPresent()) {
            winch = add(new PartCheck("lowering winch", "held still", tension, gear.rating().getAsDouble(), "N", 1,
                    tilt, "rating of the winch; ASME B30.7, from memory"));
            if (efficiency < 1) {
                add(new PartCheck("lowering winch", "hauling back over the sheave", tension / efficiency,
                        gear.rating().getAsDouble(), "N", 1, tilt, "rating of the winch"));
            }
        } else {
            missing.add("rating of the lowering winches");
        }
        PlanePoint lead = LineGeometry.leadPoint(what.rig());
        if (gear.anchor().isPresent()) {
            winchAnchor(gear, lead, worst.get());
        } else {
            missing.add("anchor of the lowering winches");
        }
    }

    private void winchAnchor(Winch gear, PlanePoint lead, TiltState worst) {
        double elevation = elevation(what.rig().poles().isPresent() ? gear.at().directionTo(lead)
                : LineGeometry.at(what.tipping(), what.rig(), GearPoints.of(what.rig()), worst.tilt()).direction());
        anchorCheck("anchor of a lowering winch", gear.anchor().get(), worst.lineEach(), elevation, worst.tilt());
    }

    private void poles(Poles poles) {
        Optional<TiltState> worst = worst(TiltState::poleEach);
        if (worst.isEmpty()) {
            return;
        }
        double thrust = worst.get().poleEach();
        double tilt = worst.get().tilt();
        if (poles.tube().isPresent()) {
            Column column = Column.of(poles.tube().get(), poles.length());
            add(new PartCheck("pole", "thrust against Euler", thrust, column.euler(), "N", asked().pole(), tilt,
                    "Euler; " + RULES));
            add(new PartCheck("pole", "thrust against code column, cold-formed", thrust,
                    column.curve(Column.CURVE_C), "N", asked().pole(), tilt, "EN 1993-1-1, 6.3.1; " + RULES));
            add(new PartCheck("pole", "thrust against code column", thrust, column.flexural(), "N",
                    asked().pole(), tilt, "ANSI/AISC 360, E3, from memory; " + RULES));
            add(new PartCheck("pole wall", "thrust against buckling of the wall", thrust,
                    ThinTube.capacity(poles.tube().get()), "N", asked().pole(), tilt,
                    "NASA SP-8007, from memory; " + RULES));
            pole = OptionalDouble.of(Math.min(column.capacity(), ThinTube.capacity(poles.tube().get())) / thrust);
        } else {
            missing.add("tube of the poles");
        }
        poleFoot(poles, worst.get());
        sheaveFriction(poles);
    }

    /** Hauling back adds to the pole's thrust, paying out to the stays: the winch line then helps less. */
    private void sheaveFriction(Poles poles) {
        double efficiency = what.rig().lines().sheaveEfficiency();
        if (!(efficiency < 1)) {
            return;
        }
        GearPoints points = GearPoints.of(what.rig());
        PoleHead head = new PoleHead(points, poles.count() - 1);
        double thrust = 0;
        double stay = 0;
        TiltState atThrust = null;
        TiltState atStay = null;
        for (int i = 0; i < scan.states().size(); i += TiltScan.STEPS_A_DEGREE) {
            TiltState s = scan.states().get(i);
            if (!(s.lineEach() > 0)) {
                continue;
            }
            LineGeometry line = LineGeometry.at(what.tipping(), what.rig(), points, s.tilt());
            double[] alike = new double[what.rig().lines().count()];
            Arrays.fill(alike, s.lineEach());
            double hauling = head.forces(line.paths(), alike, 1 / efficiency).thrust();
            double paying = head.forces(line.paths(), alike, efficiency).stay();
            atThrust = hauling > thrust ? s : atThrust;
            thrust = Math.max(thrust, hauling);
            atStay = paying > stay ? s : atStay;
            stay = Math.max(stay, paying);
        }
        if (atThrust != null && poles.tube().isPresent()) {
            double bears = Math.min(Column.of(poles.tube().get(), poles.length()).capacity(),
                    ThinTube.capacity(poles.tube().get()));
            add(new PartCheck("pole", "thrust while hauling back over the sheave", thrust, bears, "N", asked().pole(),
                    atThrust.tilt(), RULES));
        }
        OptionalDouble breaking = what.rig().stays().stream().map(Stay::breakingLoad)
                .filter(OptionalDouble::isPresent).findFirst().orElse(OptionalDouble.empty());
        if (atStay != null && breaking.isPresent()) {
            add(new PartCheck("stay", "paying out over the sheave", stay,
                    breaking.getAsDouble(), "N", asked().line(), atStay.tilt(), RULES));
        }
    }

    private void poleFoot(Poles poles, TiltState worst) {
        if (poles.footArea().isEmpty()) {
            missing.add("foot area of the poles");
            return;
        }
        double area = poles.footArea().getAsDouble();
        double gravity = what.tipping().ground().gravity();
        double lean = Math.abs(Math.atan2(poles.head().x() - poles.foot().x(), poles.head().z() - poles.foot().z()));
        ToDoubleFunction<Regolith> bears = ground -> area
                * Bearing.ultimate(Bearing.Footing.square(area), ground, gravity, lean).sum();
        double own = poles.tube().map(t -> t.area() * STEEL * poles.length() * gravity).orElse(0.0);
        add(onSoil(new PartCheck("ground under a pole foot", "thrust and the pole's own weight", worst.poleEach() + own,
                bears.applyAsDouble(what.soil()), "N", asked().pole(), worst.tilt(),
                "Vesic (1973) at lunar gravity; factor of the poles in the rules of the plan"), bears));
    }

    /** Heat of all that falls, and the shock of a winch that stops dead at the set rate. */
    private void brakes() {
        Rig rig = what.rig();
        double balance = Math.max(0, what.tipping().balanceTilt());
        double rest = what.tipping().restTilt();
        int count = rig.lines().count();
        double heat = what.tipping().weight() * what.tipping().fall(balance, rest) / count;
        if (rig.lines().winch().brakeHeat().isPresent()) {
            add(new PartCheck("brake of a lowering winch", "heat of the whole lowering", heat,
                    rig.lines().winch().brakeHeat().getAsDouble(), "J", 1, rest,
                    "energy of the fall, none of it carried off"));
        } else {
            missing.add("brake heat of the lowering winches");
        }
        OptionalDouble stiffness = rig.lines().line().stiffness();
        OptionalDouble breaking = rig.lines().line().breakingLoad();
        if (stiffness.isEmpty()) {
            missing.add("stiffness of the lowering lines");
        } else if (breaking.isPresent()) {
            emergencyStop(what.held().orElseThrow(), breaking.getAsDouble());
        }
    }

    private void emergencyStop(HeldBody held, double breaking) {
        TiltState worst = null;
        double peak = 0;
        for (int i = 0; i < scan.states().size(); i += TiltScan.STEPS_A_DEGREE) {
            TiltState s = scan.states().get(i);
            if (s.lineTotal() > 0) {
                double now = s.lineEach() * Shock.emergencyStop(held, s.tilt(), what.rate()).factor();
                if (now > peak) {
                    peak = now;
                    worst = s;
                }
            }
        }
        if (worst != null) {
            add(new PartCheck("lowering line", "winch stopping dead at the set rate", peak, breaking, "N",
                    SHOCK_FACTOR, worst.tilt(), "stiffness and inertia; factor 1.5, common practice, no source"));
        }
    }

    private void stays() {
        List<Stay> stays = what.rig().stays();
        Optional<TiltState> worst = worst(s -> s.head().stay());
        if (stays.isEmpty() || worst.isEmpty() || what.rig().poles().isEmpty()) {
            return;
        }
        double each = worst.get().head().stay();
        PlanePoint head = what.rig().poles().get().head();
        for (Stay stay : stays) {
            if (stay.breakingLoad().isPresent()) {
                add(new PartCheck("stay", "held still", each, stay.breakingLoad().getAsDouble(), "N",
                        asked().line(), worst.get().tilt(), RULES));
            } else {
                missing.add("breaking load of the stays");
            }
            double elevation = elevation(stay.anchorAt().directionTo(head));
            if (stay.anchor().isPresent()) {
                anchorCheck("anchor of a stay", stay.anchor().get(), each, elevation, worst.get().tilt());
            } else {
                missing.add("anchor of the stays");
            }
        }
    }

    private void pullOver(PullOver over) {
        Optional<TiltState> worst = worst(TiltState::pullOver);
        if (worst.isEmpty()) {
            return;
        }
        double tilt = worst.get().tilt();
        if (over.rating().isPresent()) {
            add(new PartCheck("pull-over winch", "held still", worst.get().pullOver(), over.rating().getAsDouble(),
                    "N", 1, tilt, "rating of the winch"));
        } else {
            missing.add("rating of the pull-over winch");
        }
        PlanePoint lug = what.tipping().point(over.lug().along(), over.lug().offAxis(), tilt);
        double elevation = elevation(over.anchorAt().directionTo(lug));
        if (over.anchor().isPresent()) {
            anchorCheck("anchor of the pull-over line", over.anchor().get(), worst.get().pullOver(), elevation, tilt);
        } else {
            missing.add("anchor of the pull-over line");
        }
    }

    private void pivotHold() {
        double held = what.rig().pivotHold().map(a -> capacity(a, what.soil(), 0)).orElse(0.0);
        double mu = what.tipping().ground().friction();
        Optional<TiltState> worst = scan.states().stream().filter(s -> Math.abs(s.pivotAlong()) > 0)
                .min(Comparator.comparingDouble(s -> (held + mu * s.pivotUp()) / Math.abs(s.pivotAlong())));
        if (worst.isPresent()) {
            TiltState s = worst.get();
            PartCheck check = new PartCheck("hold along the ground at the pivot",
                    what.rig().pivotHold().isPresent() ? "friction and anchor" : "friction alone",
                    Math.abs(s.pivotAlong()), held + mu * s.pivotUp(), "N", asked().pivotHold(), s.tilt(), RULES);
            pivotHold = add(what.rig().pivotHold().map(a -> onSoil(check,
                    ground -> capacity(a, ground, 0) + mu * s.pivotUp())).orElse(check));
        }
    }

    private void anchorCheck(String part, Anchor held, double pull, double elevation, double tilt) {
        double factor = add(onSoil(new PartCheck(part, held.kind() + ", held still", pull,
                capacity(held, what.soil(), elevation), "N", asked().anchor(), tilt,
                "earth pressure at lunar gravity; " + RULES),
                ground -> capacity(held, ground, elevation))).getAsDouble();
        anchor = OptionalDouble.of(Math.min(factor, anchor.orElse(factor)));
    }

    private static double elevation(PlanePoint line) {
        return Math.abs(Math.atan2(line.z(), Math.abs(line.x())));
    }

    private double capacity(Anchor held, Regolith ground, double elevation) {
        return held.capacity(ground, what.tipping().ground().gravity(), elevation);
    }

    private Optional<TiltState> worst(ToDoubleFunction<TiltState> figure) {
        return scan.greatest(figure).filter(s -> figure.applyAsDouble(s) > 0);
    }

    /** Notes how the factor of a check moves with the soil's strength, at the same demand and tilt. */
    private PartCheck onSoil(PartCheck check, ToDoubleFunction<Regolith> bears) {
        soil.put(check, SoilSensitivity.of(what.soil(), ground -> bears.applyAsDouble(ground) / check.demand()));
        return check;
    }

    private OptionalDouble add(PartCheck check) {
        checks.add(check);
        return OptionalDouble.of(check.factor());
    }
}
