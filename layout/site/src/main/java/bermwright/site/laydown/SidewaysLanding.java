// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.rig.Poles;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.sequence.LoweringCase;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.sequence.TiltState;
import bermwright.lowering.sequence.Trouble;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** Lines whose poles and winches stay where they are while the hull landed to one side. */
final class SidewaysLanding {
    private static final String SOURCE = "landing dispersion and wander of the plan; line geometry";

    private SidewaysLanding() {
    }

    /**
     * The worst tilt: the lines then pull the hull out of its plane by atan(off / level length of the lines).
     *
     * @param lines  the lowering
     * @param result what came of working it out
     * @param off    how far to one side it may land (m)
     * @param wander how far the plan lets it swing (rad)
     */
    static Optional<Trouble> of(LoweringCase lines, LoweringResult result, double off, double wander) {
        List<TiltState> held = result.tilts().stream()
                .filter(s -> s.lineTotal() > 0 && s.tilt() >= result.handOverTilt()).toList();
        if (held.isEmpty()) {
            return Optional.empty();
        }
        double worst = DoubleStream.concat(DoubleStream.of(result.handOverTilt()),
                held.stream().mapToDouble(TiltState::tilt)).boxed()
                .min(Comparator.comparingDouble(t -> level(lines, t))).orElseThrow();
        double angle = Math.atan2(off, level(lines, worst));
        double side = held.stream()
                .mapToDouble(s -> s.lineTotal() * off / Math.hypot(off, s.lineLength())).max().orElse(0);
        boolean turns = angle > wander;
        double share = side / lines.tipping().weight();
        if (!turns && share < 0.01) {
            return Optional.empty();
        }
        return Optional.of(Trouble.of("lowering-dispersion-sideways", turns ? Trouble.Level.WARN : Trouble.Level.NOTE,
                new Trouble.Figures(Math.toDegrees(angle), Math.toDegrees(wander), "deg"), SOURCE,
                String.format(Locale.ROOT, "Landed %.1f m to one side, inside its dispersion, with the gear where it"
                        + " is, the lines lead %.1f deg out of the plane at %.0f deg and pull the hull sideways"
                        + " with up to %.1f kN; the plan allows a swing of %.1f deg. Set the poles out after the"
                        + " landing, or turn the azimuth to them.", off, Math.toDegrees(angle),
                        Math.toDegrees(worst), side / 1000, Math.toDegrees(wander))));
    }

    /** Level length of the lines in the plane, from lug to pole head or winch (m). */
    private static double level(LoweringCase lines, double tilt) {
        Rig rig = lines.rig();
        PlanePoint lug = lines.tipping().point(rig.lines().lug().along(), rig.lines().lug().offAxis(), tilt);
        PlanePoint lead = rig.poles().map(Poles::head).orElse(rig.lines().winch().at());
        return Math.abs(lug.x() - lead.x());
    }
}
