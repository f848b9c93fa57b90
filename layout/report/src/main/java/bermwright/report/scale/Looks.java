// SPDX-License-Identifier: Apache-2.0
package bermwright.report.scale;

import bermwright.report.paper.Hatching;
import bermwright.report.paper.Pen;
import bermwright.site.footprint.GearRole;
import bermwright.site.footprint.Shape;
import java.util.Optional;

/** How outlines of the site look on sheets: told apart by width, dashes and hatching, without colour. */
final class Looks {
    private static final double SLANT = Math.PI / 4;

    private Looks() {
    }

    /**
     * How an outline looks.
     *
     * @param words   its words in the legend
     * @param pen     its outline
     * @param hatch   what fills it; empty for nothing
     * @param isSolid whether it hides what is below it
     */
    record Look(String words, Pen pen, Optional<Hatching> hatch, boolean isSolid) {
        private static Look line(String words, Pen pen) {
            return new Look(words, pen, Optional.empty(), false);
        }

        private static Look hatched(String words, Pen pen, double angle, double spacing) {
            return new Look(words, pen, Optional.of(new Hatching(angle, spacing, Pen.THIN.grey(0.45))), false);
        }
    }

    static Look of(Shape shape) {
        return switch (shape.kind()) {
            case STANDING -> Look.line("hull as it stands before", Pen.THIN.dashed(2.0, 1.0));
            case LYING -> new Look("hull lying", Pen.THICK, Optional.empty(), true);
            case SWEEP -> Look.line("sweep of the lowering, with margin", Pen.MEDIUM.dashed(6.0, 1.5));
            case LANDING -> Look.line("landing dispersion", Pen.THIN.dashed(0.6, 0.8));
            case LINE -> shape.role() == GearRole.PULL_OVER
                    ? Look.hatched("pull-over line", Pen.THIN.dashed(3.0, 0.8), SLANT, 0.8)
                    : Look.line("lowering line", Pen.THIN);
            case STAY -> Look.line("stay", Pen.THIN.dashed(1.2, 0.6));
            case POLE_FOOT -> new Look("pole foot", Pen.MEDIUM, Optional.of(new Hatching(SLANT, 0.5, Pen.THIN)), true);
            case POLE_FALL_ZONE -> Look.line("reach of a falling pole", Pen.THIN.dashed(8.0, 1.5, 0.5, 1.0, 0.5, 1.5));
            case ANCHOR -> new Look("anchor", Pen.MEDIUM, Optional.of(new Hatching(-SLANT, 0.7, Pen.THIN)), true);
            case ANCHOR_SOIL -> Look.hatched("soil that holds an anchor: do not dig", Pen.THIN.dashed(0.5, 0.7), 0,
                    1.4);
            case WINCH -> new Look("winch", Pen.THICK, Optional.of(new Hatching(0, 0.6, Pen.THIN)), true);
            case SNAP_BACK -> Look.line("snap-back zone of a parting line",
                    Pen.THIN.dashed(4.0, 1.0, 0.4, 1.0, 0.4, 1.0));
            case THRUSTER_PLUME, LANDING_PLUME -> Look.line("reach of jets", Pen.THIN.dashed(1.0, 3.0));
            case COVER_TOE -> Look.line("toe of the cover", Pen.MEDIUM.dashed(3.0, 1.2, 0.6, 1.2));
            case PASS_THROUGH -> Look.hatched("passage through the cover", Pen.MEDIUM, Math.PI / 2, 0.6);
            case KEPT_CLEAR -> Look.line("kept clear of soil", Pen.THIN.dashed(1.5, 0.8));
            case TUNNEL -> new Look("tunnel", Pen.MEDIUM, Optional.of(new Hatching(Math.PI / 2, 1.0, Pen.THIN)), true);
            case WALL -> new Look("wall", Pen.MEDIUM, Optional.of(new Hatching(SLANT, 0.45, Pen.THIN)), true);
            case CORRIDOR -> Look.line("haul corridor", Pen.THIN.dashed(10.0, 1.5, 0.5, 1.5));
            case KEEP_OUT -> Look.hatched("keep-out", Pen.MEDIUM, -SLANT, 3);
            case PAD -> Look.line("landing pad", Pen.MEDIUM);
            case PAD_STAND_OFF -> Look.line("stand-off of a pad", Pen.THIN.dashed(5.0, 2.0));
            case PREPARATION -> Look.line("prepared floor", Pen.MEDIUM.dashed(2.0, 0.8));
            case BORROW -> Look.hatched("borrow ground", Pen.MEDIUM, SLANT, 4);
            case STOCKPILE -> Look.hatched("stockpile", Pen.MEDIUM.dashed(4.0, 1.0), 0, 3);
        };
    }
}
