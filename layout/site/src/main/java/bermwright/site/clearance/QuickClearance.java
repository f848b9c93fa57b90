// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.finding.Finding;
import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.site.footprint.HullShapes;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.plan.BorrowGround;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LandingPad;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Tunnel;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * By how much hulls that are moved and turned fail to keep apart, in microseconds, by the rules of {@link Clearance}.
 *
 * <p>Outlines are taken once from a plan and move stiffly with their hulls, with few corners and slightly widened, and
 * a sweep may not touch another hull whatever the order of work, nor a cover that the order lets stand by then. So it
 * rather refuses what {@link Clearance} lets pass than the other way round; checks in space and on the ground are left
 * to that. An instance never changes.
 */
public final class QuickClearance {
    /** Air around a line (m). */
    private static final double LINE_AIR = 1;
    private static final Set<ShapeKind> BODY = EnumSet.of(ShapeKind.STANDING, ShapeKind.LYING);
    private static final Set<ShapeKind> IN_THE_AIR = EnumSet.of(ShapeKind.LINE, ShapeKind.STAY);

    private final Plan plan;
    private final TrueMetres metres;
    private final List<List<Piece>> hulls = new ArrayList<>();
    private final List<Piece> site = new ArrayList<>();
    private final Map<String, Integer> owners;
    private final Map<ShapeKind, Map<ShapeKind, Limit>> limits = new EnumMap<>(ShapeKind.class);
    private final Map<String, Double> keptClear = new HashMap<>();
    /** Hulls that are lowered before any soil is placed over another: the first, a line break, the other. */
    private final Set<String> loweredFirst = new HashSet<>();

    private QuickClearance(SiteShapes shapes, Map<String, Integer> owners) {
        this.plan = shapes.plan();
        this.metres = shapes.metres();
        this.owners = owners;
        for (BorrowGround borrow : plan.borrowGrounds()) {
            keptClear.put(borrow.id(), borrow.keepClear());
        }
        table();
        StatedOrder order = new StatedOrder(plan);
        plan.hulls().forEach(a -> plan.hulls().stream().filter(b -> order.lowersBeforeCovering(a.id(), b.id()))
                .forEach(b -> loweredFirst.add(a.id() + '\n' + b.id())));
        for (HullShapes hull : shapes.hulls()) {
            Pose pose = Pose.of(hull.hull());
            List<Piece> own = new ArrayList<>();
            hull.shapes().forEach(s -> pieces(s, own, Optional.of(pose)));
            hulls.add(own);
        }
        for (Shape shape : shapes.site()) {
            OptionalInt owner = owner(shape.subject());
            if (owner.isPresent()) {
                pieces(shape, hulls.get(owner.getAsInt()), Optional.of(Pose.of(plan.hulls().get(owner.getAsInt()))));
            } else if (shape.kind() != ShapeKind.TUNNEL) {
                pieces(shape, site, Optional.empty());
            }
        }
    }

    /**
     * Makes ready for many poses.
     *
     * @param shapes outlines of a plan, toes of its covers included
     * @param owners walls and preparations that move with a hull: id of the thing to place of the hull in the plan
     * @return the check
     */
    public static QuickClearance of(SiteShapes shapes, Map<String, Integer> owners) {
        return new QuickClearance(shapes, Map.copyOf(owners));
    }

    /**
     * Where a hull stands and which way it is laid down.
     *
     * @param east    base centre (m)
     * @param north   base centre (m)
     * @param azimuth lay-down azimuth (rad)
     * @param sine    sine of the azimuth
     * @param cosine  cosine of the azimuth
     */
    public record Pose(double east, double north, double azimuth, double sine, double cosine) {
        /**
         * A pose.
         *
         * @param place   base centre
         * @param azimuth lay-down azimuth
         * @return the pose
         */
        public static Pose of(Point place, Azimuth azimuth) {
            return new Pose(place.east(), place.north(), azimuth.radians(), azimuth.east(), azimuth.north());
        }

        /**
         * The pose of a hull.
         *
         * @param hull the hull
         * @return its pose
         */
        public static Pose of(Hull hull) {
            return of(hull.baseCentre(), hull.layDownAzimuth());
        }

        /**
         * A place ahead of the base centre and to its left.
         *
         * @param ahead along the lay-down azimuth (m)
         * @param left  to the left of it (m)
         * @return the place
         */
        public Point place(double ahead, double left) {
            return new Point(east + ahead * sine - left * cosine, north + ahead * cosine + left * sine);
        }
    }

    /**
     * What a check found.
     *
     * @param shortfall metres by which distances are too small, added up over all pairs of things; none where clear
     * @param warnings  pairs of things that the rules warn of
     */
    public record Outcome(double shortfall, int warnings) {
    }

    private record Piece(ShapeKind kind, String subject, ConvexPiece outline) {
    }

    /** What two kinds of things keep; nothing of it where one is there only before the other comes. */
    private record Limit(boolean isRefused, PairRule.Kept kept, double air, boolean isTurned, Meanwhile meanwhile) {
    }

    /** Which of two things on one ground is gone before the other comes, if the order of work says so. */
    private enum Meanwhile {
        /** Neither: both are there. */
        BOTH,
        /** The first is of the lowering, the second of soil. */
        LOWERED_FIRST,
        /** The first is of soil, the second of the lowering. */
        COVERED_LAST
    }

    private void table() {
        for (ShapeKind one : ShapeKind.values()) {
            limits.put(one, new EnumMap<>(ShapeKind.class));
            for (ShapeKind other : ShapeKind.values()) {
                limit(one, other).ifPresent(l -> limits.get(one).put(other, l));
            }
        }
    }

    private static Optional<Limit> limit(ShapeKind one, ShapeKind other) {
        if (one == ShapeKind.SWEEP && BODY.contains(other) || other == ShapeKind.SWEEP && BODY.contains(one)) {
            return Optional.of(new Limit(true, PairRule.Kept.NOTHING, 0, false, Meanwhile.BOTH));
        }
        if (IN_THE_AIR.contains(one) && BODY.contains(other) || IN_THE_AIR.contains(other) && BODY.contains(one)) {
            return Optional.of(new Limit(true, PairRule.Kept.NOTHING, LINE_AIR, false, Meanwhile.BOTH));
        }
        PairRule rule = PairRules.of(one, other);
        boolean turned = rule == null;
        PairRule found = turned ? PairRules.of(other, one) : rule;
        return found == null ? Optional.empty() : switch (found.rule()) {
            case SWEEP_OVER_COVER -> limit(found, turned, Meanwhile.LOWERED_FIRST);
            case COVER_AGAINST_STANDING, COVER_OVER_GEAR -> limit(found, turned, Meanwhile.COVERED_LAST);
            default -> limit(found, turned, Meanwhile.BOTH);
        };
    }

    private static Optional<Limit> limit(PairRule rule, boolean turned, Meanwhile meanwhile) {
        Meanwhile seen = !turned || meanwhile == Meanwhile.BOTH ? meanwhile
                : meanwhile == Meanwhile.LOWERED_FIRST ? Meanwhile.COVERED_LAST : Meanwhile.LOWERED_FIRST;
        return rule.level() == Finding.Level.NOTE ? Optional.empty()
                : Optional.of(new Limit(rule.level() == Finding.Level.REFUSE, rule.kept(), 0, turned, seen));
    }

    private boolean isApartInTime(Piece one, Piece other, Limit limit) {
        return switch (limit.meanwhile) {
            case BOTH -> false;
            case LOWERED_FIRST -> loweredFirst.contains(one.subject + '\n' + other.subject);
            case COVERED_LAST -> loweredFirst.contains(other.subject + '\n' + one.subject);
        };
    }

    private static void pieces(Shape shape, List<Piece> into, Optional<Pose> within) {
        for (ConvexPiece piece : ConvexPiece.of(shape.outline())) {
            into.add(new Piece(shape.kind(), shape.subject(), within.map(piece::within).orElse(piece)));
        }
    }

    private OptionalInt owner(String id) {
        return owners.containsKey(id) ? OptionalInt.of(owners.get(id)) : OptionalInt.empty();
    }

    /**
     * Checks hulls in other poses.
     *
     * @param poses one for each hull of the plan, in its order
     * @param wider what the toe of each hull's cover is wider than on level ground (m)
     * @return what was found
     */
    public Outcome check(List<Pose> poses, double[] wider) {
        List<List<Piece>> placed = new ArrayList<>();
        for (int i = 0; i < poses.size(); i++) {
            Pose pose = poses.get(i);
            placed.add(hulls.get(i).stream().map(p -> new Piece(p.kind, p.subject, p.outline.at(pose))).toList());
        }
        Tally tally = new Tally();
        List<Piece> tunnels = tunnels(poses);
        for (int i = 0; i < placed.size(); i++) {
            for (int j = i + 1; j < placed.size(); j++) {
                compare(placed.get(i), placed.get(j), new Around(spread(i), spread(j), wider[i], wider[j]), tally);
            }
            Around own = new Around(spread(i), 0, wider[i], 0);
            compare(placed.get(i), site, own, tally);
            pads(i, placed.get(i), tally);
            compareTunnels(tunnels, placed.get(i), plan.hulls().get(i).id(), tally);
        }
        compareTunnels(tunnels, site, "", tally);
        return tally.outcome();
    }

    /**
     * Checks one hull against what does not move.
     *
     * @param hull  place of the hull in the plan
     * @param pose  its pose
     * @param wider what the toe of its cover is wider than on level ground (m)
     * @return what was found
     */
    public Outcome check(int hull, Pose pose, double wider) {
        List<Piece> placed = hulls.get(hull).stream().map(p -> new Piece(p.kind, p.subject, p.outline.at(pose)))
                .toList();
        Tally tally = new Tally();
        compare(placed, site, new Around(spread(hull), 0, wider, 0), tally);
        pads(hull, placed, tally);
        return tally.outcome();
    }

    private double spread(int hull) {
        return plan.hulls().get(hull).landingDispersion();
    }

    private record Around(double spread, double otherSpread, double wider, double otherWider) {
    }

    private static final class Tally {
        private final Map<String, Double> lacking = new HashMap<>();
        private final Set<String> warned = new HashSet<>();

        void refuse(String pair, double by) {
            lacking.merge(pair, by, Math::max);
        }

        Outcome outcome() {
            return new Outcome(lacking.values().stream().mapToDouble(d -> d).sum(), warned.size());
        }
    }

    private void compare(List<Piece> mine, List<Piece> theirs, Around around, Tally tally) {
        for (Piece one : mine) {
            Map<ShapeKind, Limit> of = limits.get(one.kind);
            for (Piece other : theirs) {
                Limit limit = of.get(other.kind);
                if (limit != null) {
                    compare(one, other, limit, around, tally);
                }
            }
        }
    }

    private void compare(Piece one, Piece other, Limit limit, Around around, Tally tally) {
        double kept = limit.air + switch (limit.kept) {
            case NOTHING -> 0;
            case HULL_SPACING -> plan.rules().hullSpacing();
            case BORROW_CLEAR -> keptClear.getOrDefault(limit.isTurned ? other.subject : one.subject, 0.0);
        };
        kept += limit.isRefused ? around.spread + around.otherSpread : 0;
        kept += one.kind == ShapeKind.COVER_TOE ? around.wider : 0;
        kept += other.kind == ShapeKind.COVER_TOE ? around.otherWider : 0;
        double reach = metres.onPlan(kept);
        if (one.outline.isNear(other.outline, reach)) {
            double distance = metres.length(one.outline.distance(other.outline));
            if (distance < kept && !isApartInTime(one, other, limit)) {
                String pair = one.subject + '\n' + other.subject + '\n' + limit.kept;
                if (limit.isRefused) {
                    tally.refuse(pair, kept - distance);
                } else {
                    tally.warned.add(pair + '\n' + one.kind + other.kind);
                }
            }
        }
    }

    private void pads(int hull, List<Piece> placed, Tally tally) {
        Hull one = plan.hulls().get(hull);
        for (LandingPad pad : plan.landingPads()) {
            boolean own = one.lowering().flatMap(g -> g.landing()).flatMap(l -> l.pad()).filter(pad.id()::equals)
                    .isPresent();
            double limit = Math.max(pad.standOff(), pad.radius()) + one.landingDispersion();
            for (Piece piece : own ? List.<Piece>of() : placed) {
                if (BODY.contains(piece.kind)) {
                    double distance = metres.length(piece.outline.distance(pad.centre().east(),
                            pad.centre().north()));
                    if (distance < limit) {
                        tally.refuse(one.id() + "\npad " + pad.id(), limit - distance);
                    }
                }
            }
        }
    }

    private List<Piece> tunnels(List<Pose> poses) {
        List<Piece> drawn = new ArrayList<>();
        for (Tunnel tunnel : plan.tunnels()) {
            MovedTunnel.of(plan, tunnel, metres).filter(t -> t.length(poses) > 0).ifPresent(t -> drawn.add(
                    new Piece(ShapeKind.TUNNEL, tunnel.id(), t.outline(poses))));
        }
        return drawn;
    }

    private void compareTunnels(List<Piece> tunnels, List<Piece> others, String hull, Tally tally) {
        for (Piece tunnel : tunnels) {
            boolean own = plan.tunnels().stream().filter(t -> t.id().equals(tunnel.subject)).anyMatch(t ->
                    t.from().startsWith(hull + '/') || t.to().startsWith(hull + '/'));
            if (!own) {
                compare(List.of(tunnel), others, new Around(0, 0, 0, 0), tally);
            }
        }
    }

    /**
     * How long the tunnels are and how far they lead out of their hatches aslant.
     *
     * @param poses one for each hull of the plan, in its order
     * @return one entry for each tunnel between two hulls whose hatches are known
     */
    public List<TunnelState> tunnelStates(List<Pose> poses) {
        List<TunnelState> states = new ArrayList<>();
        for (Tunnel tunnel : plan.tunnels()) {
            MovedTunnel.of(plan, tunnel, metres).ifPresent(t -> states.add(new TunnelState(tunnel.id(),
                    metres.length(t.length(poses)), t.aslant(poses))));
        }
        return states;
    }

    /**
     * A tunnel between moved hulls.
     *
     * @param id     its id
     * @param length its length (m)
     * @param aslant the greater angle at its two ends between it and the way straight out of the hatch (rad); none
     *               for a hatch in the crown
     */
    public record TunnelState(String id, double length, double aslant) {
    }

    /**
     * Corners of what a hull is compared by, standing and lying.
     *
     * @param hull place of the hull in the plan
     * @param pose its pose
     * @return the corners of its body
     */
    public List<Point> body(int hull, Pose pose) {
        List<Point> corners = new ArrayList<>();
        for (Piece piece : hulls.get(hull)) {
            if (BODY.contains(piece.kind)) {
                ConvexPiece at = piece.outline.at(pose);
                double[] e = at.eastings();
                double[] n = at.northings();
                for (int i = 0; i < e.length; i++) {
                    corners.add(new Point(e[i], n[i]));
                }
            }
        }
        return corners;
    }
}
