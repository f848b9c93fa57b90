// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.footprint.HullShapes;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.BorrowGround;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Preparation;
import bermwright.site.plan.Seat;
import bermwright.site.plan.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Plans with the hulls of a surveyed plan at a place: hulls, tunnels and walls are moved and turned together; what
 * belongs to the old ground (benches, borrow grounds, stockpiles, the order of work) is left out, a bench under hulls
 * that lie on one and a borrow ground near by are new.
 */
final class PlacePlans {
    private static final double BORROW_SIDES = Math.toRadians(30);
    private static final double BENCH_GRADE = Math.toRadians(1);

    private final SurveySetup setup;
    private final PlanFolders files;
    private final Plan old;
    private final Point oldCentre;

    /** Where a group stands. */
    record Stand(Point centre, Azimuth heading, List<Double> beds) {
    }

    PlacePlans(SurveySetup setup, PlanFolders files) {
        this.setup = setup;
        this.files = files;
        this.old = setup.plan();
        double east = 0;
        double north = 0;
        for (Hull h : old.hulls()) {
            double ahead = h.arrival() == Hull.Arrival.STAYS_UPRIGHT ? 0 : h.pivotAhead() + h.length() / 2;
            Point middle = h.baseCentre().moved(h.layDownAzimuth(), ahead / setup.ground().metreScale(), 0);
            east += middle.east() / old.hulls().size();
            north += middle.north() / old.hulls().size();
        }
        oldCentre = new Point(east, north);
    }

    Plan of(int rank, Stand stand, SurveyGround ground) {
        Azimuth first = old.hulls().get(0).layDownAzimuth();
        double turn = stand.heading.radians() - first.radians();
        List<Hull> hulls = new ArrayList<>();
        for (Hull h : old.hulls()) {
            Azimuth azimuth = hulls.isEmpty() ? stand.heading : h.layDownAzimuth().turned(turn);
            hulls.add(h.withBaseCentre(moved(h.baseCentre(), stand.centre, turn)).withLayDownAzimuth(azimuth));
        }
        List<Wall> walls = old.walls().stream().map(w -> new Wall(w.id(), w.line().stream()
                .map(p -> moved(p, stand.centre, turn)).toList(), w.height(), w.thickness(), w.annotations())).toList();
        Plan placed = old.withHulls(hulls);
        boolean own = setup.bounds().takesGround();
        Optional<BorrowGround> borrow = borrow(placed, stand, ground);
        return new Plan("Place " + rank + " of a survey: " + old.title(), groundPlan(), hulls, walls, old.tunnels(),
                own ? old.keepOuts() : List.of(), own ? old.corridors() : List.of(),
                own ? old.landingPads() : List.of(), benches(hulls, stand), borrow.map(List::of).orElse(List.of()),
                List.of(), old.machines(), exposure(), old.rules(), List.of(), Optional.empty(),
                old.annotations());
    }

    /** A place of the old plan moved and turned with the group, on whole millimetres. */
    private Point moved(Point place, Point centre, double turn) {
        double e = place.east() - oldCentre.east();
        double n = place.north() - oldCentre.north();
        double east = centre.east() + e * Math.cos(turn) + n * Math.sin(turn);
        double north = centre.north() + n * Math.cos(turn) - e * Math.sin(turn);
        return new Point(Math.rint(east * 1000) / 1000, Math.rint(north * 1000) / 1000);
    }

    private GroundPlan groundPlan() {
        GroundPlan g = old.ground();
        return new GroundPlan(files.beside(setup.ground().file()), g.referenceSystem(), g.elevationSpread(),
                g.elevationCorrelation(), g.gravity(), g.pivotFriction(), g.regolith(), g.annotations());
    }

    private ExposurePlan exposure() {
        ExposurePlan x = old.exposure();
        String response = x.response().equals("built in") ? x.response() : files.moved(x.response());
        return new ExposurePlan(x.stayDays(), x.hoursOutsideADay(), x.timeToShelter(), x.solarActivity(),
                x.solarDate(), x.modulationW(),
                x.event(), x.eventSpectrumFile().map(files::moved), x.eventFit(), response,
                x.moreResponses().stream().map(files::moved).toList(), x.limits(), x.people(), x.hazards(),
                x.annotations());
    }

    /** A bench at its mean height under each hull that lies on one. */
    private List<Preparation> benches(List<Hull> hulls, Stand stand) {
        List<Preparation> benches = new ArrayList<>();
        double scale = setup.ground().metreScale();
        for (int i = 0; i < hulls.size(); i++) {
            Hull h = hulls.get(i);
            if (h.seat().kind() == Seat.Kind.BENCH && h.arrival() != Hull.Arrival.STAYS_UPRIGHT) {
                Point base = h.baseCentre().moved(h.layDownAzimuth(), h.pivotAhead() / scale, 0);
                double half = h.radius() / scale;
                double length = h.length() / scale;
                Ring area = new Ring(List.of(base.moved(h.layDownAzimuth(), 0, -half),
                        base.moved(h.layDownAzimuth(), length, -half), base.moved(h.layDownAzimuth(), length, half),
                        base.moved(h.layDownAzimuth(), 0, half)));
                benches.add(new Preparation("bench of " + h.id(), Preparation.Kind.BENCH, area,
                        OptionalDouble.of(Math.rint(stand.beds.get(i) * 1000) / 1000), BENCH_GRADE, BORROW_SIDES,
                        Annotations.NOTHING));
            }
        }
        return benches;
    }

    private Optional<BorrowGround> borrow(Plan placed, Stand stand, SurveyGround ground) {
        double need = setup.soil().volume();
        SurveyLimits limits = setup.limits();
        if (!(need > 0)) {
            return Optional.empty();
        }
        double keepClear = BorrowSquare.KEEP_CLEAR;
        return new BorrowSquare(setup, ground).nearest(need, stand.heading).map(square -> {
            double s = setup.ground().frame().spacing();
            Point sw = new Point(stand.centre.east() + square[1] * s, stand.centre.north() + square[0] * s);
            double side = square[2] * s;
            Ring area = new Ring(List.of(sw, new Point(sw.east() + side, sw.north()),
                    new Point(sw.east() + side, sw.north() + side), new Point(sw.east(), sw.north() + side)));
            return new BorrowGround("borrow near " + placed.hulls().get(0).id(), area, limits.borrowDepth(),
                    BORROW_SIDES, limits.borrowYield(), keepClear, Annotations.NOTHING);
        });
    }

    /** Lying and standing hulls and sweeps of a plan. */
    List<Ring> outlines(Plan plan) {
        List<Ring> rings = new ArrayList<>();
        Plan level = plan;
        SiteShapes shapes = SiteShapes.of(scaled(level), Optional.empty(), Map.of());
        for (HullShapes hull : shapes.hulls()) {
            for (ShapeKind kind : List.of(ShapeKind.LYING, ShapeKind.STANDING, ShapeKind.SWEEP)) {
                hull.first(kind).ifPresent(shape -> rings.add(unscaled(shape.outline())));
            }
        }
        return rings;
    }

    private Plan scaled(Plan plan) {
        double k = setup.ground().metreScale();
        return plan.withHulls(plan.hulls().stream().map(h -> h.withBaseCentre(new Point(h.baseCentre().east() * k,
                h.baseCentre().north() * k))).toList());
    }

    private Ring unscaled(Ring ring) {
        double k = setup.ground().metreScale();
        return new Ring(ring.corners().stream().map(p -> new Point(p.east() / k, p.north() / k)).toList());
    }
}
