// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.finding.CoverRule;
import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.finding.Rule;
import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.shielding.cover.KeptClear;
import bermwright.shielding.cover.LeastCover;
import bermwright.shielding.scene.HullEnd;
import bermwright.shielding.scene.HullPose;
import bermwright.shielding.scene.HullShape;
import bermwright.shielding.scene.HullSolid;
import bermwright.site.plan.Hull;
import bermwright.site.plan.PassThrough;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What passes through the covers of a plan: strips that soil keeps off, voids that rays run through, and what soil
 * spoils.
 *
 * <p>A shaft rises straight up from the upper half of the skin, an open feed-through leaves square to it; both are
 * round, of the same open area, and end where they come out of the soil. Lid and wall count as much as the hull's skin,
 * which they stand for: nothing else is behind them. The rays of a station are halved until its dose changes by less
 * than half a per cent, so a mouth in its sky is counted as well as the rest of it; where that does not come about, the
 * station's own finding says so. The placed soil they take up is taken off the mound's volume.
 */
final class PassThroughs {
    private static final String UNCOVERED = "pass-throughs of the plan, which reach the open where no soil lies";
    /** Step of the walk to the open, and how far a void reaches into the hull so that no film of soil stays (m). */
    private static final double STEP = 0.05;
    /** Where the walk to the open ends (m). */
    private static final double FARTHEST = 60;
    /** Soil thinner than this is dust (m). */
    private static final double DUST = 0.02;
    /** Places looked at along and around. */
    private static final int PLACES = 9;

    private final Plan plan;
    private final SiteHulls site;

    PassThroughs(Plan plan, SiteHulls site) {
        this.plan = plan;
        this.site = site;
    }

    private record Placed(Hull hull, HullSolid solid, PassThrough thing) {
        String subject() {
            return hull.named(thing.id());
        }

        Vec3 normal() {
            return solid.pose().left().times(Math.sin(thing.around()))
                    .plus(solid.pose().crown().times(Math.cos(thing.around())));
        }

        boolean isOnUpperHalf() {
            return hull.arrival() != Hull.Arrival.STAYS_UPRIGHT && Math.cos(thing.around()) > 0;
        }

        boolean isOnHull() {
            return thing.along() <= hull.length();
        }
    }

    private List<Placed> all() {
        List<Placed> all = new ArrayList<>();
        for (Hull hull : plan.hulls()) {
            Optional<HullSolid> solid = site.hull(hull.id());
            if (solid.isPresent() && hull.cover().isPresent()) {
                hull.cover().get().passThroughs().forEach(p -> all.add(new Placed(hull, solid.get(), p)));
            }
        }
        return all;
    }

    /** The strips that the plan asks to be left free, each a little wider so that straight cells keep off it too. */
    List<KeptClear> strips() {
        List<KeptClear> strips = new ArrayList<>();
        for (Placed one : all()) {
            OptionalDouble clear = one.thing.clear();
            if (clear.isPresent() && one.isOnHull() && one.hull.arrival() != Hull.Arrival.STAYS_UPRIGHT) {
                strips.add(strip(one, clear.getAsDouble()));
            }
        }
        return strips;
    }

    private KeptClear strip(Placed one, double clear) {
        double radius = one.hull.radius();
        double half = one.thing.width() / 2 + clear;
        double least = Double.POSITIVE_INFINITY;
        double greatest = Double.NEGATIVE_INFINITY;
        double floor = Double.POSITIVE_INFINITY;
        double from = Math.max(0, one.thing.along() - one.thing.length() / 2 - clear);
        double to = Math.min(one.hull.length(), one.thing.along() + one.thing.length() / 2 + clear);
        for (int i = 0; i < PLACES; i++) {
            double around = one.thing.around() + half / radius * (2.0 * i / (PLACES - 1) - 1);
            double across = Math.cos(around) > 0 ? radius * Math.sin(around)
                    : Math.copySign(radius + clear, Math.sin(around));
            least = Math.min(least, across);
            greatest = Math.max(greatest, across);
            floor = Math.min(floor, Math.min(one.solid.skin(from, around).z(), one.solid.skin(to, around).z()));
        }
        double cell = LeastCover.FINE_SPACING;
        double across = (least + greatest) / 2;
        HullPose pose = one.solid.pose();
        return new KeptClear(pose.point(from - cell, across, 0).plan(), pose.point(to + cell, across, 0).plan(),
                greatest - least + 2 * cell, OptionalDouble.of(floor));
    }

    /** Open shafts and pipes as voids under a surface in true metres. */
    List<HullSolid> voids(ElevationGrid surface) {
        List<HullSolid> voids = new ArrayList<>();
        for (Placed one : all()) {
            if (one.thing.isVoid() && one.isOnHull()) {
                pipe(one, surface).ifPresent(voids::add);
            }
        }
        return voids;
    }

    private static Optional<HullSolid> pipe(Placed one, ElevationGrid surface) {
        Vec3 skin = one.solid.skin(one.thing.along(), one.thing.around());
        Vec3 out = one.thing.kind() == PassThrough.Kind.SHAFT && one.isOnUpperHalf() ? Vec3.UP : one.normal();
        double radius = Math.sqrt(one.thing.width() * one.thing.length() / Math.PI);
        Vec3 side = one.solid.pose().axis().minus(out.times(out.dot(one.solid.pose().axis()))).direction();
        double way = wayOut(skin, out, surface);
        // The mouth ends where all its rim is out of the soil, so that a slope does not close part of it.
        for (int i = 0; i < PLACES && way > 0; i++) {
            double turn = 2 * Math.PI * i / PLACES;
            Vec3 rim = skin.plus(side.times(radius * Math.cos(turn)))
                    .plus(out.cross(side).times(radius * Math.sin(turn)));
            way = Math.max(way, wayOut(rim, out, surface));
        }
        if (!(way > 0)) {
            return Optional.empty();
        }
        // The foot reaches in as far as the round of the skin falls away under it.
        double rim = Math.min(radius, one.hull.radius());
        double into = STEP + one.hull.radius() - Math.sqrt(one.hull.radius() * one.hull.radius() - rim * rim);
        return Optional.of(new HullSolid(one.subject(), new HullShape(into + way, radius, HullEnd.FLAT,
                HullEnd.FLAT, one.hull.skinArealDensity()), new HullPose(skin.minus(out.times(into)), out, side)));
    }

    /** How each fares under a surface in true metres; what does not lie on its hull is left out. */
    List<PassedThrough> states(ElevationGrid surface) {
        List<PassedThrough> states = new ArrayList<>();
        for (Placed one : all()) {
            if (one.isOnHull()) {
                Optional<HullSolid> pipe = one.thing.isVoid() ? pipe(one, surface) : Optional.empty();
                Over over = one.thing.isVoid() ? Over.NOTHING : over(one, surface);
                states.add(new PassedThrough(one.hull.id(), one.thing, over.deepest, over.share,
                        pipe.map(p -> p.shape().length()).orElse(0.0),
                        pipe.map(p -> displaced(p, surface)).orElse(0.0)));
            }
        }
        return states;
    }

    /** Placed soil that a pipe takes up (m3): its section along the part of its axis in the mound. */
    private double displaced(HullSolid pipe, ElevationGrid surface) {
        double length = pipe.shape().length();
        int steps = (int) Math.max(1, Math.ceil(length / STEP));
        double within = 0;
        for (int i = 0; i < steps; i++) {
            Vec3 at = pipe.pose().point(length * (i + 0.5) / steps, 0, 0);
            boolean isSoil = at.z() < surface.height(at.plan()) && at.z() > site.ground().height(at.plan())
                    && site.hullSolids().stream().noneMatch(h -> h.contains(at));
            within += isSoil ? length / steps : 0;
        }
        return within * Math.PI * pipe.shape().radius() * pipe.shape().radius();
    }

    /** Length of the way through soil from the skin to the open (m); nothing where there is none or no end. */
    private static double wayOut(Vec3 skin, Vec3 out, ElevationGrid surface) {
        for (double t = STEP; t < FARTHEST; t += STEP) {
            Vec3 at = skin.plus(out.times(t));
            double height = surface.height(at.plan());
            if (Double.isNaN(height)) {
                return 0;
            }
            if (at.z() > height) {
                return t <= STEP ? 0 : t;
            }
        }
        return 0;
    }

    /** What is wrong with them under a surface in true metres. */
    List<Finding> findings(ElevationGrid surface) {
        List<Finding> findings = new ArrayList<>();
        for (Placed one : all()) {
            if (!one.isOnHull()) {
                findings.add(finding(one, CoverRule.PASS_THROUGH_OFF_HULL, Level.REFUSE,
                        Figures.of(one.thing.along(), one.hull.length(), "m"), text("The %s lies %.1f m from the base"
                                + " of a hull that is %.1f m long.", one.thing.kind().word(), one.thing.along(),
                                one.hull.length())).from("length_m of the hull in the plan"));
            } else if (one.thing.isVoid()) {
                pipe(one, surface).ifPresent(pipe -> findings.add(pierced(one, pipe)));
            } else {
                soilOver(one, surface, findings);
            }
        }
        return findings;
    }

    private Finding pierced(Placed one, HullSolid pipe) {
        double area = one.thing.width() * one.thing.length();
        double wanted = one.hull.cover().orElseThrow().thickness();
        return finding(one, CoverRule.COVER_PIERCED, Level.WARN, Figures.of(0, wanted, "m"),
                text("The open %s of %.2f m²"
                + " runs %.1f m through the cover: behind it is the hull's skin alone. The dose at the stations counts"
                + " it.",
                one.thing.kind().word(), area, pipe.shape().length())).from("thickness of the cover in the plan");
    }

    private record Over(double deepest, double share) {
        static final Over NOTHING = new Over(0, 0);
    }

    /** Soil over what does not open it: the deepest, and the share of it under more than dust. */
    private static Over over(Placed one, ElevationGrid surface) {
        double deepest = 0;
        int under = 0;
        for (int i = 0; i < PLACES; i++) {
            for (int j = 0; j < PLACES; j++) {
                double along = one.thing.along() + one.thing.length() * (i / (PLACES - 1.0) - 0.5);
                double around = one.thing.around()
                        + one.thing.width() / one.hull.radius() * (j / (PLACES - 1.0) - 0.5);
                double soil = soilOver(one, along, around, surface);
                deepest = Math.max(deepest, soil);
                under += soil > DUST ? 1 : 0;
            }
        }
        return under == 0 ? Over.NOTHING : new Over(deepest, (double) under / (PLACES * PLACES));
    }

    private void soilOver(Placed one, ElevationGrid surface, List<Finding> findings) {
        Over over = over(one, surface);
        double share = over.share;
        double deepest = over.deepest;
        if (!(share > 0)) {
            return;
        }
        if (one.thing.kind().isSpoiltBySoil()) {
            findings.add(finding(one, CoverRule.PASS_THROUGH_BURIED, share > 0.5 ? Level.REFUSE : Level.WARN,
                    Figures.of(deepest, 0, "m"), text("Soil lies on %.0f %% of the %s, up to %.2f m deep, and stops"
                            + " its work.", share * 100,
                            one.thing.kind().word(), deepest)).from(UNCOVERED));
        } else {
            findings.add(finding(one, CoverRule.PASS_THROUGH_UNDER_SOIL, Level.NOTE, Figures.of(deepest, 0, "m"),
                    text("The %s lies under up to %.2f m of soil and cannot be reached afterwards.", one.thing.kind()
                    .word(), deepest)).from(UNCOVERED));
        }
    }

    /** Soil standing over a point of skin (m); on the lower half, soil beside the hull above that point. */
    private static double soilOver(Placed one, double along, double around, ElevationGrid surface) {
        double inside = Math.max(0, Math.min(one.hull.length(), along));
        Vec3 skin = one.solid.skin(inside, around);
        Point plan = one.hull.arrival() == Hull.Arrival.STAYS_UPRIGHT || Math.cos(around) <= 0
                ? one.solid.pose().point(inside, Math.copySign(one.hull.radius() + STEP, Math.sin(around)), 0).plan()
                : skin.plan();
        double soil = surface.height(plan) - skin.z();
        return soil > 0 ? soil : 0;
    }

    private Finding finding(Placed one, Rule rule, Level level, Figures figures, String words) {
        Vec3 at = one.solid.skin(Math.min(one.thing.along(), one.hull.length()), one.thing.around());
        return Finding.of(rule, level, one.subject(), figures, words)
                .at(site.metres().projected(at).plan());
    }

    private static String text(String form, Object... parts) {
        return String.format(Locale.ROOT, form, parts);
    }
}
