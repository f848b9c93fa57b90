// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.lowering.rig.Anchor.Footing;
import bermwright.regolith.SoilStates;
import bermwright.site.footprint.BodyProfile;
import bermwright.site.footprint.HullShapes;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.haulage.SoilOffer;
import bermwright.site.plan.Anchor;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.PlanSoil;
import bermwright.site.plan.Preparation;
import bermwright.terrain.earthworks.SlopeStability;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What must be dug for the gear where the plan states no preparation for it: level pads under pole feet, winches and
 * ballast, holes for buried plates and blocks, and the bed of a hull that lies sunk.
 *
 * <p>A square pad of side a on ground of slope s cuts and fills a&#179; tan s / 8. A hole is half a metre wider than
 * what it holds, upright as far as the ground stands so, else with the stable slope; it is filled up again. A bed is
 * the part of the hull's circle below the ground over its length.
 *
 * @param items what is dug, hull by hull
 */
public record GearDigging(List<Item> items) {
    private static final double AROUND = 0.5;
    private static final Set<Preparation.Kind> STATED = EnumSet.of(Preparation.Kind.PAD, Preparation.Kind.BENCH,
            Preparation.Kind.TRENCH);
    private static final double LEAST = 0.05;

    /** Copies the list. */
    public GearDigging {
        items = List.copyOf(items);
    }

    /**
     * Something to be dug.
     *
     * @param hull id of the hull
     * @param part what it is for, such as {@code pad, left pole}
     * @param area where it is
     * @param cut  soil dug, in place (m3), zero or more
     * @param fill soil put back or filled in, once placed (m3), zero or more
     */
    public record Item(String hull, String part, Ring area, double cut, double fill) {
    }

    /**
     * Derives it.
     *
     * @param site   the plan's shapes
     * @param ground the prepared ground
     * @return what is dug
     */
    public static GearDigging of(SiteShapes site, ElevationGrid ground) {
        List<Item> items = new ArrayList<>();
        Trench trench = new Trench(site.plan(), ground);
        for (HullShapes shapes : site.hulls()) {
            trench.bed(shapes.hull()).ifPresent(items::add);
            for (Shape shape : shapes.shapes()) {
                trench.item(shapes.hull(), shape).filter(i -> i.cut() > LEAST).ifPresent(items::add);
            }
        }
        return new GearDigging(items);
    }

    /**
     * Soil that is left over at each hull's gear.
     *
     * @param plan the plan, for its densities
     * @return what may be used elsewhere
     */
    public List<SoilOffer> leftOver(Plan plan) {
        SoilStates soil = PlanSoil.of(plan.ground()).states();
        List<SoilOffer> offers = new ArrayList<>();
        for (String hull : items.stream().map(Item::hull).distinct().toList()) {
            List<Item> own = items.stream().filter(i -> i.hull.equals(hull)).toList();
            double[] left = own.stream().mapToDouble(i -> i.cut - soil.bankFromPlaced(i.fill).best()).toArray();
            double sum = Arrays.stream(left).sum();
            if (sum > 1) {
                offers.add(new SoilOffer(hull + " gear", sum, soil.bank(), middle(own, left)));
            }
        }
        return offers;
    }

    /** The greatest hole, moved to the middle of all that is left over, whichever hole is named first. */
    private static Ring middle(List<Item> items, double[] left) {
        double sum = 0;
        double east = 0;
        double north = 0;
        for (int i = 0; i < left.length; i++) {
            double here = Math.max(0, left[i]);
            Point centre = items.get(i).area.centre();
            sum += here;
            east += here * centre.east();
            north += here * centre.north();
        }
        Ring greatest = items.stream().max(Comparator.comparingDouble(Item::cut)).orElseThrow().area;
        double byEast = east / sum - greatest.centre().east();
        double byNorth = north / sum - greatest.centre().north();
        return new Ring(greatest.corners().stream().map(c -> new Point(c.east() + byEast, c.north() + byNorth))
                .toList());
    }

    /**
     * The model behind the volumes.
     *
     * @return what it is, where it holds and how far it may be off
     */
    public static ModelNote note() {
        return new ModelNote("gear-digging", "pads, holes and beds derived from the gear where no preparation is"
                + " stated",
                "even ground under each; half a metre around it; what is left over is used in the covers, its digging"
                + " is not in the machine hours", "a third; smaller than a cell of the elevation file",
                ModelNote.Status.COMPUTED, "geometry, closed form; working space common practice, no source");
    }

    /** Digs on a plan's ground. */
    private record Trench(Plan plan, ElevationGrid ground) {
        Optional<Item> bed(Hull hull) {
            double sunk = Math.min(hull.seat().sunk(), 2 * hull.radius());
            Ring footprint = hull.bed(ground.metres());
            if (!(sunk > 0) || hull.arrival() == Hull.Arrival.STAYS_UPRIGHT || isStated(footprint.centre())) {
                return Optional.empty();
            }
            return Optional.of(new Item(hull.id(), "bed of the sunk hull", footprint,
                    BodyProfile.segment(hull.radius(), sunk) * hull.length(), 0));
        }

        Optional<Item> item(Hull hull, Shape shape) {
            Ring area = shape.outline();
            if (isStated(area.centre())) {
                return Optional.empty();
            }
            if (shape.kind() == ShapeKind.POLE_FOOT || shape.kind() == ShapeKind.WINCH) {
                return pad(hull, "pad, " + (shape.kind() == ShapeKind.WINCH ? "winch of " : "") + shape.part(), area);
            }
            return shape.anchor().flatMap(a -> switch (a.footing().dug()) {
                case PAD -> pad(hull, "pad, " + a.kind().word() + " of " + shape.part(), area);
                case HOLE -> hole(hull, a, shape);
                case NOTHING -> Optional.empty();
            });
        }

        private Optional<Item> pad(Hull hull, String part, Ring area) {
            double side = ground.metres().length(Math.sqrt(area.area())) + 2 * AROUND;
            double slope = ground.slope(area.centre());
            double wedge = side * side * side * Math.tan(slope) / 8;
            return Double.isFinite(wedge) ? Optional.of(new Item(hull.id(), part, area, wedge, wedge))
                    : Optional.empty();
        }

        private Optional<Item> hole(Hull hull, Anchor anchor, Shape shape) {
            Footing footing = anchor.footing();
            double depth = footing.wedgeDepth();
            double width = footing.across();
            double thick = footing.thickness();
            PlanSoil soil = PlanSoil.of(plan.ground());
            double upright = SlopeStability.uprightCut(new SlopeStability.Soil(soil.inPlace().strength(depth / 2),
                    soil.bankDensity(depth), plan.ground().gravity()));
            double out = depth <= upright ? 0 : depth / Math.tan(soil.keys().stableSlope());
            double l = thick + 2 * AROUND;
            double w = width + 2 * AROUND;
            double middle = (l + out) * (w + out);
            double cut = depth / 6 * (l * w + 4 * middle + (l + 2 * out) * (w + 2 * out));
            double body = thick * width * footing.height();
            return Optional.of(new Item(hull.id(), "hole, " + anchor.kind().word() + " of " + shape.part(),
                    shape.outline(), cut, Math.max(0, cut - body)));
        }

        private boolean isStated(Point place) {
            return plan.preparations().stream().anyMatch(p -> STATED.contains(p.kind()) && p.area().contains(place));
        }
    }
}
