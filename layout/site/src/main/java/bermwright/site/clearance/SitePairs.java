// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.finding.Finding;
import bermwright.finding.PairingRule;
import bermwright.finding.Sentence;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.footprint.GearRole;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.plan.BorrowGround;
import bermwright.site.plan.HatchName;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LandingPad;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Compares outlines pair by pair; of each rule and each two plan objects the worst pair is kept. */
final class SitePairs {
    private static final double TOUCH = 1e-9;
    /** Overlaps below this (m2) are touches. */
    private static final double SLIVER = 0.01;
    private static final double TOUCH_SEARCH = 1e-3;
    private static final PairRule LANDING_ON_OWN_GEAR = own(PairingRule.LANDING_ON_OWN_GEAR);
    private static final PairRule GEAR_IN_OWN_SWEEP = own(PairingRule.GEAR_IN_OWN_SWEEP);

    private final Plan plan;
    private final TrueMetres metres;
    private final double greatestReach;
    private final Set<String> moundsInSpace;
    private final StatedOrder order;
    private final Map<String, Double> dispersion;
    private final Map<String, BorrowGround> borrow;
    private final Map<String, Set<String>> related = new HashMap<>();

    /** Compares outlines; covers of the hulls named are compared in space with what falls, not here. */
    SitePairs(Plan plan, TrueMetres metres, Set<String> moundsInSpace) {
        this.moundsInSpace = moundsInSpace;
        this.plan = plan;
        this.metres = metres;
        this.order = new StatedOrder(plan);
        this.dispersion = plan.hulls().stream()
                .collect(Collectors.toMap(Hull::id, Hull::landingDispersion, Math::max));
        this.borrow = plan.borrowGrounds().stream()
                .collect(Collectors.toMap(BorrowGround::id, b -> b, (a, b) -> a));
        double clear = plan.borrowGrounds().stream().mapToDouble(BorrowGround::keepClear).max().orElse(0);
        double spread = dispersion.values().stream().mapToDouble(d -> d).max().orElse(0);
        this.greatestReach = Math.max(plan.rules().hullSpacing(), clear) + 2 * spread;
        relate();
    }

    private static PairRule own(PairingRule rule) {
        return new PairRule(rule, Set.of(), Set.of(), PairRule.Kept.NOTHING);
    }

    /** The worst pair so far: apart by a distance, or with an area of projected square metres in common. */
    private record Worst(PairRule rule, Outlined mine, Outlined theirs, double distance, double limit, double area) {
        static Worst overlap(PairRule rule, Outlined mine, Outlined theirs, double limit) {
            return new Worst(rule, mine, theirs, 0, limit, mine.commonArea(theirs));
        }

        boolean isOverlap() {
            return area > 0;
        }

        /** Whether this is worse than another: any overlap than a gap, the larger overlap, the larger shortfall. */
        boolean isWorseThan(Worst other) {
            return isOverlap() ? area > other.area : !other.isOverlap() && limit - distance
                    > other.limit - other.distance;
        }

        /** Whether two outlines could have more in common than these, by their boxes. */
        boolean canBeWorse(Outlined one, Outlined another) {
            return !isOverlap() || one.box().intersection(another.box()).getArea() > area;
        }
    }

    /** Tunnels touch the hulls they join, walls the hulls whose covers they hold, hulls the pads they land on. */
    private void relate() {
        plan.tunnels().forEach(t -> {
            relate(t.id(), HatchName.of(t.from()).hull());
            relate(t.id(), HatchName.of(t.to()).hull());
        });
        for (Hull hull : plan.hulls()) {
            hull.cover().ifPresent(c -> {
                c.baseEndWall().ifPresent(w -> relate(w, hull.id()));
                c.farEndWall().ifPresent(w -> relate(w, hull.id()));
            });
            hull.lowering().flatMap(g -> g.landing()).flatMap(l -> l.pad()).ifPresent(p -> relate(p, hull.id()));
        }
    }

    private void relate(String a, String b) {
        related.computeIfAbsent(a, k -> new HashSet<>()).add(b);
        related.computeIfAbsent(b, k -> new HashSet<>()).add(a);
    }

    private boolean areRelated(String a, String b) {
        return related.getOrDefault(a, Set.of()).contains(b);
    }

    /** Compares the outlines of one group with those of another, or with each other where it is the same group. */
    List<Finding> compare(OutlinedGroup first, OutlinedGroup second) {
        Map<String, Worst> worst = new LinkedHashMap<>();
        Set<Ring> shared = toes(first);
        shared.retainAll(first == second ? Set.of() : toes(second));
        double reach = metres.onPlan(greatestReach) + TOUCH_SEARCH;
        for (int i = 0; i < first.outlines().size(); i++) {
            Outlined one = first.outlines().get(i);
            for (int j : second.near(one, reach)) {
                Outlined other = second.outlines().get(j);
                if ((first != second || j > i) && !isOwnMound(shared, one, other)) {
                    compare(worst, one, other);
                }
            }
        }
        List<Finding> findings = new ArrayList<>();
        worst.values().forEach(w -> findings.add(finding(w)));
        return findings;
    }

    private static Set<Ring> toes(OutlinedGroup group) {
        Set<Ring> toes = new HashSet<>();
        group.outlines().stream().map(Outlined::shape).filter(s -> s.kind() == ShapeKind.COVER_TOE)
                .forEach(s -> toes.add(s.outline()));
        return toes;
    }

    /**
     * Whether one is the one mound over both hulls and the other a hull under it or that mound again: nothing there
     * meets another. That covers are one mound is said where they are raised.
     */
    private static boolean isOwnMound(Set<Ring> shared, Outlined one, Outlined other) {
        return isUnder(shared, one.shape(), other.shape()) || isUnder(shared, other.shape(), one.shape());
    }

    private static boolean isUnder(Set<Ring> shared, Shape mound, Shape hull) {
        return mound.kind() == ShapeKind.COVER_TOE && shared.contains(mound.outline())
                && (hull.kind() == ShapeKind.LYING || hull.kind() == ShapeKind.COVER_TOE);
    }

    private void compare(Map<String, Worst> worst, Outlined a, Outlined b) {
        if (a.shape().subject().equals(b.shape().subject())) {
            ownGear(worst, a, b);
            return;
        }
        PairRule rule = PairRules.of(a.shape().kind(), b.shape().kind());
        if (rule != null) {
            measure(worst, rule, a, b);
        } else {
            rule = PairRules.of(b.shape().kind(), a.shape().kind());
            if (rule != null) {
                measure(worst, rule, b, a);
            }
        }
    }

    private void measure(Map<String, Worst> worst, PairRule rule, Outlined mine, Outlined theirs) {
        String a = mine.shape().subject();
        String b = theirs.shape().subject();
        if (areRelated(a, b) || isSettled(rule, a, b)) {
            return;
        }
        double limit = switch (rule.kept()) {
            case NOTHING -> 0;
            case HULL_SPACING -> plan.rules().hullSpacing();
            case BORROW_CLEAR -> borrow.containsKey(a) ? borrow.get(a).keepClear() : 0;
        };
        double spread = spread(rule, mine, theirs);
        if (metres.length(mine.box().distance(theirs.box())) > limit + spread) {
            return;
        }
        String key = String.join("\n", rule.rule().id(), a, b);
        if (rule.mine().contains(theirs.shape().kind()) && rule.theirs().contains(mine.shape().kind())
                && a.compareTo(b) > 0) {
            measure(worst, rule, theirs, mine);
            return;
        }
        Worst known = worst.get(key);
        if (known != null && !known.canBeWorse(mine, theirs)) {
            return;
        }
        Worst found = mine.overlaps(theirs) ? Worst.overlap(rule, mine, theirs, limit)
                : new Worst(rule, mine, theirs, metres.length(mine.distance(theirs)), limit, 0);
        boolean broken = found.isOverlap() ? limit > 0 || found.area >= SLIVER
                : found.distance < Math.max(limit, limit + spread) - TOUCH;
        if (broken && (known == null || found.isWorseThan(known))) {
            worst.put(key, found);
        }
    }

    /** Whether the plan's order of work keeps the two apart in time. */
    private boolean isSettled(PairRule rule, String mine, String theirs) {
        return switch (rule.rule()) {
            case SWEEP_OVER_COVER -> moundsInSpace.contains(theirs)
                    || order.lowersBeforeCovering(mine, theirs);
            case COVER_AGAINST_STANDING, COVER_OVER_GEAR -> order.lowersBeforeCovering(theirs, mine);
            default -> false;
        };
    }

    /** How far both may have moved with their landings; only what is refused must hold for every landing. */
    private double spread(PairRule rule, Outlined mine, Outlined theirs) {
        return rule.level() != Finding.Level.REFUSE ? 0 : dispersion.getOrDefault(mine.shape().subject(), 0.0)
                + dispersion.getOrDefault(theirs.shape().subject(), 0.0);
    }

    /** A hull's own poles, winches and anchors must not stand under its own sweep, nor where it may land on them. */
    private void ownGear(Map<String, Worst> worst, Outlined a, Outlined b) {
        Outlined landing = a.shape().kind() == ShapeKind.LANDING ? a : b;
        Outlined set = landing == a ? b : a;
        if (landing.shape().kind() == ShapeKind.LANDING) {
            if (isSetOut(set) && landing.overlaps(set)) {
                worst.putIfAbsent("landing-on-own-gear\n" + landing.shape().subject() + '\n' + set.shape().part(),
                        Worst.overlap(LANDING_ON_OWN_GEAR, landing, set, 0));
            }
            return;
        }
        Outlined sweep = a.shape().kind() == ShapeKind.SWEEP ? a : b;
        Outlined gear = sweep == a ? b : a;
        if (sweep.shape().kind() == ShapeKind.SWEEP && isSetOut(gear) && sweep.overlaps(gear)) {
            String hull = sweep.shape().subject();
            worst.putIfAbsent("gear-in-own-sweep\n" + hull + '\n' + gear.shape().part(),
                    Worst.overlap(GEAR_IN_OWN_SWEEP, gear, sweep, 0));
        }
    }

    /** Gear that may be set out before the landing; the hold at the pivot never is. */
    private static boolean isSetOut(Outlined gear) {
        return gear.shape().kind() == ShapeKind.POLE_FOOT || gear.shape().kind() == ShapeKind.WINCH
                || gear.shape().kind() == ShapeKind.ANCHOR && gear.shape().role() != GearRole.PIVOT_HOLD;
    }

    /** Two covers that are one mound: there is no overlap to measure. */
    private static Finding oneMound(Worst found) {
        String mine = found.mine.shape().subject();
        String theirs = found.theirs.shape().subject();
        return Finding.of(found.rule.rule(), found.rule.level(), mine, Finding.Figures.NONE,
                "The covers of hulls %s and %s are one mound.".formatted(mine, theirs)).with(theirs)
                .at(found.mine.shape().outline().centre());
    }

    private Finding finding(Worst found) {
        if (found.rule.rule() == PairingRule.COVERS_RUN_TOGETHER
                && found.mine.shape().outline().equals(found.theirs.shape().outline())) {
            return oneMound(found);
        }
        boolean overlap = found.isOverlap();
        boolean together = overlap && found.rule.rule() == PairingRule.HULL_SPACING;
        double spread = spread(found.rule, found.mine, found.theirs);
        boolean onlySpread = !overlap && found.distance >= found.limit - TOUCH;
        PairingRule rule = together ? PairingRule.HULLS_IN_ONE_PLACE
                : onlySpread ? PairingRule.LANDING_DISPERSION : found.rule.rule();
        String pair = found.mine.shape().title() + " and " + found.theirs.shape().title();
        String text;
        Finding.Figures figures;
        if (overlap) {
            double area = metres.area(found.area);
            figures = found.limit > 0 ? Finding.Figures.of(0, found.limit, "m") : Finding.Figures.of(area, 0, "m2");
            text = "%s overlap by %s m², on ground %s m wide.".formatted(pair, number(area),
                    number(metres.length(found.mine.commonWidth(found.theirs))));
        } else if (onlySpread && found.limit > 0) {
            double least = Math.max(0, found.distance - spread);
            figures = Finding.Figures.of(least, found.limit, "m");
            text = ("%s are %s m apart, but only %s m for some landings inside the dispersion; %s m required for"
                    + " every landing (%s).").formatted(pair, number(found.distance), number(least),
                    number(found.limit), found.rule.rule().id());
        } else if (onlySpread) {
            figures = Finding.Figures.of(found.distance, spread, "m");
            text = ("%s are %s m apart and landings inside the dispersion can bring them %s m nearer, so that some"
                    + " overlap (%s).").formatted(pair, number(found.distance), number(spread), found.rule.rule().id());
        } else {
            figures = Finding.Figures.of(found.distance, found.limit, "m");
            text = "%s are %s m apart; %s m required.".formatted(pair, number(found.distance),
                    number(found.limit));
        }
        Point place = found.mine.between(found.theirs);
        String capital = Sentence.begin(text);
        return Finding.of(rule, found.rule.level(), found.mine.shape().subject(), figures,
                capital).with(concerned(found, onlySpread)).at(place).from(found.rule.rule().entry().source())
                .todo(found.rule.rule().entry().todo() + (found.rule.level() != Finding.Level.REFUSE ? ""
                        : " Clear by %s m.".formatted(number(found.limit + (overlap
                                ? metres.length(found.mine.commonWidth(found.theirs)) : spread - found.distance)))));
    }

    /** What else a finding concerns: the other object, or the part of the gear where both are one. */
    private static String[] concerned(Worst found, boolean onlySpread) {
        Shape mine = found.mine.shape();
        Shape theirs = found.theirs.shape();
        String other = !theirs.subject().equals(mine.subject()) ? theirs.subject()
                : found.rule == GEAR_IN_OWN_SWEEP ? mine.part() : theirs.part();
        return onlySpread ? new String[] {other, found.rule.rule().id()} : new String[] {other};
    }

    /** Hulls inside the stand-off of a pad they do not land on, measured from the pad's centre. */
    List<Finding> pads(OutlinedGroup hulls) {
        List<Finding> findings = new ArrayList<>();
        for (LandingPad pad : plan.landingPads()) {
            double limit = Math.max(pad.standOff(), pad.radius());
            Map<String, Double> nearest = new LinkedHashMap<>();
            for (Outlined one : hulls.outlines()) {
                ShapeKind kind = one.shape().kind();
                boolean body = kind == ShapeKind.STANDING || kind == ShapeKind.LYING;
                if (body && !areRelated(pad.id(), one.shape().subject())) {
                    nearest.merge(one.shape().subject(), metres.length(one.distanceFrom(pad.centre())), Math::min);
                }
            }
            nearest.forEach((hull, distance) -> {
                double spread = dispersion.getOrDefault(hull, 0.0);
                if (distance < limit + spread - TOUCH) {
                    findings.add(standOff(pad, hull, distance, limit));
                }
            });
        }
        return findings;
    }

    private Finding standOff(LandingPad pad, String hull, double distance, double limit) {
        boolean onlySpread = distance >= limit;
        double measured = onlySpread ? Math.max(0, distance - dispersion.get(hull)) : distance;
        return Finding.of(onlySpread ? PairingRule.LANDING_DISPERSION : PairingRule.PAD_STAND_OFF,
                Finding.Level.REFUSE, hull,
                Finding.Figures.of(measured, limit, "m"),
                ("Hull %s comes within %s m of the centre of pad %s%s; its traffic harms what is nearer than %s m."
                        ).formatted(hull, number(measured), pad.id(),
                        onlySpread ? " for some landings inside the dispersion" : "", number(limit)))
                .with(pad.id()).at(plan.hull(hull).map(Hull::baseCentre).orElse(pad.centre()))
                .from("stand-off of the pad in the plan");
    }

    static String number(double value) {
        return String.format(Locale.ROOT, Math.abs(value) < 10 ? "%.2f" : "%.1f", value);
    }
}
