// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.choice;

import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.lowering.body.Body;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.rig.Stay;
import bermwright.lowering.sequence.Lowered;
import bermwright.lowering.sequence.Lowering;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.statics.LoweringCase;
import bermwright.lowering.thrust.LyingLanding;
import bermwright.lowering.thrust.ThrusterLowering;
import bermwright.lowering.thrust.ThrusterResult;
import bermwright.lowering.thrust.Thrusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * All means side by side for one hull.
 *
 * <p>Gear mass from first principles, each part stated: lines by their length, poles and anchors by their steel, a
 * winch at a tenth of its pull as Earth weight, stays at the mass of steel rope for their breaking load, thrusters at
 * a fortieth of their thrust as Earth weight with tanks of a tenth of the propellant. Common practice, no source;
 * good to a factor of two, and for ranking only.
 */
public final class Comparison {
    private static final double EARTH = 9.80665;
    private static final double WINCH_PULL_PER_WEIGHT = 10;
    private static final double THRUST_PER_WEIGHT = 40;
    private static final double ROPE_PER_STRENGTH = 6.5e-6;
    private static final double STEEL = 7850;

    private Comparison() {
    }

    /**
     * What is compared.
     *
     * @param lines     the case by lines; absent where no lines are given
     * @param thrusters the thrusters; absent where none are given
     * @param landing   descent speed (m/s) and pitch (rad) of a landing on the side
     */
    public record Candidates(Optional<LoweringCase> lines, Optional<Thrusters> thrusters, Touchdown landing) {
    }

    /**
     * A touchdown on the side.
     *
     * @param speed descent speed (m/s), zero or more
     * @param pitch pitch (rad), 0 up to a right angle
     */
    public record Touchdown(double speed, double pitch) {
        /** A slow and nearly level touchdown: 1 m/s, 3 degrees. */
        public static final Touchdown USUAL = new Touchdown(1, Math.toRadians(3));
    }

    /**
     * Puts all means side by side.
     *
     * @param tipping    the body on its pivot and ground
     * @param rate       tilting rate of thrusters (rad/s), positive
     * @param candidates what is compared
     * @return a row for each means that is given, and for landing on the side
     */
    public static List<MeansRow> of(TippingBody tipping, double rate,
            Candidates candidates) {
        List<MeansRow> rows = new ArrayList<>();
        candidates.lines.ifPresent(c -> {
            if (c.rig().poles().isPresent()) {
                rows.add(byLines("lines over poles", c));
                rows.add(byLines("lines without poles", c.with(withoutPoles(c.rig()))));
            } else {
                rows.add(byLines("lines without poles", c));
            }
        });
        candidates.thrusters.ifPresent(t -> rows.add(byThrusters(tipping, t, rate)));
        rows.add(lying(tipping, candidates.landing));
        return rows;
    }

    private static Rig withoutPoles(Rig rig) {
        return new Rig(rig.lines(), Optional.empty(), List.of(), rig.pullOver(), rig.pivotHold(), rig.factors());
    }

    private static MeansRow byLines(String means, LoweringCase setup) {
        Lowered lowered = Lowering.of(setup);
        List<String> against = lowered.findings().stream().filter(t -> t.level() == Level.REFUSE)
                .map(Finding::text).toList();
        List<String> gear = new ArrayList<>();
        double mass = gearOfLines(setup, lowered.result(), gear);
        Optional<LoweringResult> result = lowered.result();
        double tension = result.map(LoweringResult::greatestLineTension).orElse(0.0);
        double pole = result.map(r -> r.tilts().stream().mapToDouble(s -> s.poleEach()).max().orElse(0)).orElse(0.0);
        return new MeansRow(means, result.isPresent() && !lowered.isRefused(), Math.max(tension, pole),
                pole > tension ? "a pole" : "a lowering line", mass, gear,
                "anchors, pole feet and a held pivot; a bed the hull cannot roll from",
                result.map(r -> r.holdPoints().size()).orElse(0),
                setup.tipping().restTilt() / setup.rate(),
                result.map(LoweringResult::governingPart).orElse("cannot be done"), against);
    }

    private static double gearOfLines(LoweringCase setup, Optional<LoweringResult> result, List<String> gear) {
        Rig rig = setup.rig();
        int count = rig.lines().count();
        double tension = result.map(LoweringResult::greatestLineTension).orElse(0.0);
        double length = result.map(r -> r.tilts().get(r.tilts().size() - 1).lineLength()).orElse(0.0)
                + rig.poles().map(p -> p.head().distance(rig.lines().winch().at())).orElse(0.0);
        double sum = say(gear, "lowering lines", count * length * rig.lines().line().massPerLength());
        double pull = rig.lines().winch().rating().orElse(tension);
        sum += say(gear, "winches", count * pull / (WINCH_PULL_PER_WEIGHT * EARTH));
        sum += rig.poles().flatMap(p -> p.tube().map(t -> say(gear, "poles",
                p.count() * t.area() * p.length() * STEEL))).orElse(0.0);
        for (Stay stay : rig.stays()) {
            double run = rig.poles().map(p -> p.head().distance(stay.anchorAt())).orElse(0.0);
            sum += say(gear, "stays", count * run * stay.breakingLoad().orElse(0) * ROPE_PER_STRENGTH);
            sum += say(gear, "stay anchors", count * stay.anchor().map(a -> a.gearMass()).orElse(0.0));
        }
        sum += say(gear, "winch anchors", count * rig.lines().winch().anchor().map(a -> a.gearMass()).orElse(0.0));
        sum += say(gear, "pull-over winch and anchor", rig.pullOver().map(p -> p.rating().orElse(0)
                / (WINCH_PULL_PER_WEIGHT * EARTH) + p.anchor().map(a -> a.gearMass()).orElse(0.0)).orElse(0.0));
        sum += say(gear, "pivot anchor", rig.pivotHold().map(a -> a.gearMass()).orElse(0.0));
        return sum;
    }

    private static MeansRow byThrusters(TippingBody tipping, Thrusters thrusters,
            double rate) {
        ThrusterResult result = ThrusterLowering.of(tipping, thrusters, rate);
        List<String> gear = new ArrayList<>();
        double mass = say(gear, "thrusters", thrusters.count() * thrusters.thrustEach()
                / (THRUST_PER_WEIGHT * EARTH));
        mass += say(gear, "propellant and tanks", 1.1 * result.propellant());
        List<String> against = new ArrayList<>();
        if (result.thrustMargin() < 1 + ThrusterLowering.IN_HAND) {
            against.add(text("Thrust is %.2f times what is needed, a quarter in hand asks for 1.25.",
                    result.thrustMargin()));
        }
        if (result.oneOutMargin() < 1) {
            against.add("With one thruster out and its counterpart shut off the hull is not held all the way.");
        }
        against.add("The jets fire at the ground as the hull comes down: soil flies at its fastest at the end.");
        return new MeansRow("side thrusters", result.thrustMargin() >= 1 + ThrusterLowering.IN_HAND,
                Math.max(result.greatestBrake(), result.greatestPush()) / thrusters.count(), "a thruster", mass, gear,
                "a ring kept clear of everything the jets can throw", 4, result.time(),
                "thrust near the end, and the plume", against);
    }

    private static MeansRow lying(TippingBody tipping, Touchdown touchdown) {
        Body body = tipping.body();
        LyingLanding landing = LyingLanding.of(new LyingLanding.Lander(body.mass(), body.outline().length(),
                body.centre().along()), tipping.ground().gravity(), touchdown.speed, touchdown.pitch);
        List<String> gear = new ArrayList<>();
        double mass = say(gear, "thrusters to hover with a quarter in hand",
                landing.thrustInHand() / (THRUST_PER_WEIGHT * EARTH));
        mass += say(gear, "propellant and tanks for 20 s of hover", 1.1 * landing.hoverPropellant());
        return new MeansRow("lands lying", true, landing.thrustInHand(), "the thrusters together", mass, gear,
                "a level pad as long as the hull, free of stones, away from everything", 2, 20,
                text("slap of the far end at %.1f m/s", landing.slapSpeed()),
                List.of("Jets at both ends, and the hull must bear its touchdown along its side."));
    }

    private static double say(List<String> gear, String setup, double mass) {
        if (mass > 0) {
            gear.add(text("%s %.0f kg", setup, mass));
        }
        return mass;
    }

    private static String text(String format, Object... parts) {
        return String.format(Locale.ROOT, format, parts);
    }
}
