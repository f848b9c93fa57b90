// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.finding.CoverRule;
import bermwright.finding.PairingRule;
import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.foundation.Vec3;
import bermwright.shielding.cover.CoveredHull;
import bermwright.shielding.cover.DepthMap;
import bermwright.shielding.cover.Mound;
import bermwright.shielding.scene.HullSolid;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.HatchName;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Tunnel;
import bermwright.site.plan.Wall;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** What is wrong with the covers of a plan, in findings. */
final class CoverFindings {
    /** Depth by which a place may fall short before it counts as thin, beside what the grid's cells take off (m). */
    private static final double SLACK = 0.02;
    /** Soil no deeper than this leaves skin bare (m), our own planning figure. */
    private static final double BARE = 0.05;
    /** Less bare skin than this is an edge, not a place (m2), our own planning figure. */
    private static final double BARE_AREA = 1;
    /** A wall this near to an end holds the cover there (m). */
    private static final double WALL_AWAY = 0.3;
    /** How far behind a wall its soil is measured, where the surface is not drawn down to its foot (m). */
    private static final double BEHIND = 0.75;
    /** A hull this far in its wall is refused, and less than the smaller is rounding (m); our own planning figures. */
    private static final double IN_WALL = 0.1;
    private static final double IN_WALL_ROUNDING = 0.02;
    private static final int AROUND_END = 24;

    private final Plan plan;
    private final SiteHulls site;
    private final List<Finding> findings = new ArrayList<>();

    private CoverFindings(Plan plan, SiteHulls site) {
        this.plan = plan;
        this.site = site;
    }

    /** Names of the hatches of covered hulls that soil stands over, so that nobody gets out by them. */
    static Set<String> buriedHatches(Plan plan, SiteHulls site, Mound mound) {
        Set<String> buried = new HashSet<>();
        for (Hull hull : plan.hulls()) {
            Optional<HullSolid> solid = site.hull(hull.id()).filter(s -> hull.cover().isPresent());
            solid.ifPresent(s -> hull.hatches().stream().filter(h -> overSill(site, new At(hull, s, h), mound) > 0)
                    .forEach(h -> buried.add(HatchName.of(hull, h).toString())));
        }
        return buried;
    }

    private record At(Hull hull, HullSolid solid, Hatch hatch) {
    }

    /** Soil over the sill of a hatch a metre ahead of it (m); nothing where a tunnel leads to it. */
    private static double overSill(SiteHulls site, At at, Mound mound) {
        if (site.isTunnelled(HatchName.of(at.hull, at.hatch).toString())) {
            return 0;
        }
        Vec3 middle = SiteHulls.middle(at.solid, at.hull, at.hatch);
        Vec3 axis = at.solid.pose().axis();
        Vec3 out = at.hatch.end() == Hatch.End.BASE ? axis.times(-1) : at.hatch.end() == Hatch.End.FAR ? axis
                : at.solid.pose().left().times(Math.sin(at.hatch.around()))
                        .plus(at.solid.pose().crown().times(Math.cos(at.hatch.around())));
        Vec3 ahead = middle.plus(out.times(1));
        double sill = middle.z() - at.hatch.height() / 2;
        return mound.finished().height(ahead.plan()) - Math.max(sill, site.ground().height(ahead.plan()));
    }

    static List<Finding> of(Plan plan, SiteHulls site, Optional<Mound> mound, List<HullCover> covers,
            List<Ring> toes) {
        CoverFindings made = new CoverFindings(plan, site);
        for (Hull hull : plan.hulls()) {
            made.hull(hull, mound);
        }
        for (Tunnel tunnel : plan.tunnels()) {
            made.tunnel(tunnel);
        }
        made.crossings();
        mound.flatMap(Mound::leavesTheGround)
                .ifPresent(place -> made.findings.add(Finding.of(CoverRule.COVER_OFF_GROUND,
                Level.REFUSE, "cover", Figures.NONE, "The mound is still above the ground at the edge of the elevation"
                        + " file or at a hole in it, so its toe, its volume and what lies under it are not known.")
                .at(site.metres().projected(place.at(0)).plan())));
        for (HullCover cover : covers) {
            made.depth(cover, mound.map(Mound::finished).orElse(site.ground()));
        }
        toes.forEach(made::oneMound);
        return made.findings;
    }

    /** Hulls whose covers are one mound, each pair once. */
    private void oneMound(Ring toe) {
        List<Hull> under = plan.hulls().stream().filter(h -> h.cover().isPresent()
                && site.hull(h.id()).map(s -> toe.contains(site.metres().projected(s.middle()).plan())).orElse(false))
                .sorted(Comparator.comparing(Hull::id)).toList();
        for (int i = 1; i < under.size(); i++) {
            findings.add(Finding.of(PairingRule.COVERS_RUN_TOGETHER, Level.NOTE, under.get(i - 1).id(), Figures.NONE,
                    text("The covers of %s and %s are one mound: they share soil, and one cannot be placed to its toe"
                            + " before the other.", under.get(i - 1).id(), under.get(i).id())).at(toe.centre()));
        }
    }

    /** What straight cells take off a rounded crest, and a little (m). */
    static double slack(CoveredHull covered, ElevationGrid surface) {
        Point middle = covered.hull().middle().plan();
        double spacing = surface.around(middle.east(), middle.north()).frame().spacing();
        // Half a diagonal of a cell, as the sagitta of the rounded crest.
        return SLACK + spacing * spacing / (4 * (covered.hull().shape().radius() + covered.thickness().greatest()));
    }

    private void hull(Hull hull, Optional<Mound> mound) {
        Optional<HullSolid> solid = site.hull(hull.id());
        if (solid.isEmpty()) {
            findings.add(Finding.of(CoverRule.COVER_GROUND_UNKNOWN, Level.REFUSE, hull.id(), Figures.NONE,
                    "The ground under the hull is not known, so neither its cover nor its dose can be computed.")
                    .at(hull.baseCentre()));
            return;
        }
        if (hull.cover().isEmpty()) {
            return;
        }
        CoverPlan cover = hull.cover().get();
        double spacing = site.ground().surveyedSpacing();
        double thinnest = Math.min(cover.crownThickness(), cover.flankThickness());
        if (thinnest < spacing) {
            findings.add(Finding.of(CoverRule.COVER_THINNER_THAN_CELL, Level.WARN, hull.id(),
                    Figures.of(thinnest, spacing, "m"),
                    text("A cover of %.2f m is thinner than a cell of the elevation file, %.2f m: stones and steps"
                            + " narrower than the cell are not in its depth and volume.", thinnest,
                            spacing)).at(hull.baseCentre()));
        }
        wall(new Held(hull, solid.get(), 0), cover.baseEnd(), cover.baseEndWall(), mound);
        wall(new Held(hull, solid.get(), solid.get().shape().length()), cover.farEnd(), cover.farEndWall(), mound);
        for (Hatch hatch : hull.hatches()) {
            hatch(hull, solid.get(), hatch, mound);
        }
    }

    private void hatch(Hull hull, HullSolid solid, Hatch hatch, Optional<Mound> mound) {
        double over = mound.map(m -> overSill(site, new At(hull, solid, hatch), m)).orElse(0.0);
        if (over > 0) {
            findings.add(Finding.of(CoverRule.COVER_HATCH_BURIED, Level.REFUSE, HatchName.of(hull, hatch).toString(),
                    Figures.of(over, 0, "m"), text("Soil stands %.1f m over the sill a metre ahead of the hatch, so it"
                            + " cannot be used.", over))
                    .todo(text("Raise the sill by %.2f m, keep that end open, hold the soil with a wall, or lead a"
                            + " tunnel to it.", over))
                    .at(site.metres().projected(SiteHulls.middle(solid, hull, hatch)).plan()));
        }
    }

    /** An end of a hull that a wall holds: its place along the hull (m). */
    private record Held(Hull hull, HullSolid solid, double along) {
        /** How far the end lies from the near face of a wall (m). */
        double from(Wall wall, UnaryOperator<Point> stretched) {
            Point end = solid.pose().point(along, 0, 0).plan();
            return IntStream.range(1, wall.line().size()).mapToDouble(i -> end.distance(
                    stretched.apply(wall.line().get(i - 1)), stretched.apply(wall.line().get(i)))).min()
                    .orElse(Double.POSITIVE_INFINITY) - wall.thickness() / 2;
        }

        /** How far the end's rim or tip reaches past the face of a wall that looks at the hull (m). */
        double inside(Wall wall, UnaryOperator<Point> stretched) {
            Vec3 axis = solid.pose().axis();
            double out = along > 0 ? 1 : -1;
            double deepest = Double.NEGATIVE_INFINITY;
            for (int k = 0; k < AROUND_END; k++) {
                Point rim = solid.skin(along, 2 * Math.PI * k / AROUND_END).plan();
                for (int i = 1; i < wall.line().size(); i++) {
                    Point a = stretched.apply(wall.line().get(i - 1));
                    Point b = stretched.apply(wall.line().get(i));
                    double length = a.distance(b);
                    double share = ((rim.east() - a.east()) * (b.east() - a.east())
                            + (rim.north() - a.north()) * (b.north() - a.north())) / (length * length);
                    if (share >= 0 && share <= 1) {
                        double toLine = out * ((a.east() + share * (b.east() - a.east()) - rim.east()) * axis.x()
                                + (a.north() + share * (b.north() - a.north()) - rim.north()) * axis.y());
                        deepest = Math.max(deepest, wall.thickness() / 2 - toLine);
                    }
                }
            }
            return deepest;
        }
    }

    private void wall(Held held, CoverPlan.End end, Optional<String> id, Optional<Mound> mound) {
        if (end != CoverPlan.End.WALL) {
            return;
        }
        Hull hull = held.hull();
        Optional<Wall> wall = id.flatMap(w -> plan.walls().stream().filter(k -> k.id().equals(w)).findFirst());
        if (wall.isEmpty()) {
            findings.add(Finding.of(CoverRule.COVER_WALL_MISSING, Level.REFUSE, hull.id(), Figures.NONE,
                    "The cover's end is to be held by a wall that the plan does not have: "
                            + id.orElse("no wall is named") + ".").at(hull.baseCentre()));
            return;
        }
        double inside = held.inside(wall.get(), site.metres()::stretched);
        if (inside > IN_WALL_ROUNDING) {
            findings.add(Finding.of(CoverRule.HULL_IN_WALL, inside > IN_WALL ? Level.REFUSE : Level.WARN, hull.id(),
                    Figures.of(inside, 0, "m"), text("The end of the hull stands %.2f m inside wall %s, which is %.2f m"
                            + " thick: one of them cannot be where the plan has it. Move the wall's line out by as"
                            + " much, or the hull.", inside, wall.get().id(), wall.get().thickness()))
                    .at(wall.get().line().get(0)));
        }
        double away = Double.isFinite(inside) ? -inside : held.from(wall.get(), site.metres()::stretched);
        if (away > WALL_AWAY) {
            findings.add(Finding.of(CoverRule.COVER_WALL_AWAY, Level.WARN, hull.id(), Figures.of(away, WALL_AWAY, "m"),
                    text("Wall %s stands %.1f m from the end of the hull whose cover it is to hold. The cover is"
                            + " computed to that end: the soil between, without which the wall holds nothing, is"
                            + " neither in the volume nor in the dose.", wall.get().id(),
                            away)).at(wall.get().line().get(0)));
        }
        if (mound.isPresent()) {
            double highest = highestBehind(held.solid(), wall.get(), mound.get());
            if (highest > wall.get().height()) {
                findings.add(Finding.of(CoverRule.COVER_WALL_LOW, Level.WARN, hull.id(),
                        Figures.of(wall.get().height(), highest, "m"),
                        text("The soil behind wall %s stands %.1f m high and the wall %.1f m: what is above it will"
                                + " run over.", wall.get().id(), highest, wall.get().height()))
                        .with(wall.get().id()).todo(text("Raise the wall by %.2f m.", highest - wall.get().height()))
                        .at(wall.get().line().get(0)));
            }
        }
    }

    /** Height of placed soil along the side of a wall that faces the hull's middle. */
    private double highestBehind(HullSolid solid, Wall wall, Mound mound) {
        Point middle = solid.middle().plan();
        double highest = 0;
        for (int i = 0; i + 1 < wall.line().size(); i++) {
            Point a = site.metres().stretched(wall.line().get(i));
            Point b = site.metres().stretched(wall.line().get(i + 1));
            for (int k = 0; k <= 20; k++) {
                double s = k / 20.0;
                Point on = new Point(a.east() + s * (b.east() - a.east()), a.north() + s * (b.north() - a.north()));
                double away = on.distance(middle);
                double inwards = BEHIND + wall.thickness();
                Point in = new Point(on.east() + (middle.east() - on.east()) * inwards / away,
                        on.north() + (middle.north() - on.north()) * inwards / away);
                double rise = mound.finished().height(in) - site.ground().height(in);
                boolean overHull = solid.contains(in.at(solid.middle().z()));
                highest = rise > highest && !overHull ? rise : highest;
            }
        }
        return highest;
    }

    private void tunnel(Tunnel tunnel) {
        if (site.solids().stream().noneMatch(s -> s.id().equals(tunnel.id()))) {
            findings.add(Finding.of(CoverRule.TUNNEL_UNPLACED, Level.REFUSE, tunnel.id(), Figures.NONE,
                    "The tunnel leads from " + tunnel.from() + " to " + tunnel.to()
                            + "; one of these hatches is not in the plan, lies on unknown ground, or both are one."));
        }
    }

    private void crossings() {
        List<HullSolid> hulls = site.hullSolids();
        for (int i = 0; i < hulls.size(); i++) {
            for (int j = i + 1; j < hulls.size(); j++) {
                HullSolid one = hulls.get(i);
                HullSolid other = hulls.get(j);
                if (one.middle().minus(other.middle()).norm() < one.reach() + other.reach()
                        && (cuts(one, other) || cuts(other, one))) {
                    findings.add(Finding.of(CoverRule.HULLS_CUT_EACH_OTHER, Level.REFUSE, one.id(), Figures.NONE,
                            "Hulls " + one.id() + " and " + other.id() + " are in one place; neither cover nor dose of"
                                    + " either means anything.")
                            .at(site.metres().projected(one.middle()).plan()));
                }
            }
        }
    }

    private static boolean cuts(HullSolid one, HullSolid other) {
        double length = one.shape().length();
        int steps = (int) Math.ceil(length / 0.25);
        for (int i = 0; i <= steps; i++) {
            for (int k = 0; k < 48; k++) {
                if (other.contains(one.skin(length * i / steps, 2 * Math.PI * k / 48))) {
                    return true;
                }
            }
        }
        return false;
    }

    private void depth(HullCover cover, ElevationGrid surface) {
        Hull hull = plan.hull(cover.id()).orElseThrow();
        CoveredHull covered = SiteHulls.covered(site.hull(cover.id()).orElseThrow(), hull.cover().orElseThrow());
        bare(cover, hull, covered);
        double slack = slack(covered, surface);
        List<DepthMap.Place> thin = cover.depth().thinPlaces(slack);
        for (DepthMap.Place place : thin.subList(0, Math.min(3, thin.size()))) {
            Vec3 at = covered.hull().skin(place.along(), place.around());
            findings.add(Finding.of(CoverRule.COVER_THIN, Level.WARN, cover.id(),
                    Figures.of(place.depth(), place.wanted(), "m"),
                    text("Cover depth %4$.2f m at %2$.1f m from the base and %3$.0f degrees from the crown; %5$.2f"
                            + " m required. %1$s of skin lie under less than required.", area(place.area()),
                            place.along(), Math.toDegrees(place.around()), place.depth(), place.wanted()))
                    .todo(text("Raise the berm there by %.2f m, or cut less off its end.",
                            place.wanted() - place.depth()))
                    .at(site.metres().projected(at).plan()));
        }
    }

    /** Skin that was to be covered and is not: people behind it have no cover at all. */
    private void bare(HullCover cover, Hull hull, CoveredHull covered) {
        DepthMap.Bare bare = cover.depth().bare(BARE);
        if (bare.area() < BARE_AREA) {
            return;
        }
        boolean peopleStay = !hull.stations().isEmpty();
        Vec3 at = covered.hull().skin(bare.along(), bare.around());
        findings.add(Finding.of(CoverRule.COVER_BARE, peopleStay ? Level.REFUSE : Level.WARN, cover.id(),
                Figures.of(bare.area(), 0, "m2"),
                text("%s of the skin that is to be covered, %.0f %% of it, lie bare, over %.1f m of the hull's length"
                        + "%s.", area(bare.area()), 100 * bare.share(), bare.length(),
                        peopleStay ? ", and people stay in it" : ""))
                .at(site.metres().projected(at).plan()));
    }

    private static String area(double area) {
        return text(area < 0.05 ? "Less than 0.1 m²" : area < 9.95 ? "%.1f m²" : "%.0f m²", area);
    }

    private static String text(String form, Object... parts) {
        return String.format(Locale.ROOT, form, parts);
    }
}
