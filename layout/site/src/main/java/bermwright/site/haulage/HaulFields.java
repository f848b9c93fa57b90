// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.foundation.Ring;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.plan.Machine;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What hauling costs to any place, looked up in microseconds: the cheapest ways from every borrow ground to all places
 * are worked out once, around what does not move.
 *
 * <p>The ways are those of {@link Earthworks} before they are pulled straight, up to 3 % longer, and covers that move
 * do not stand in each other's way; what is found with it is to be confirmed by {@link Earthworks}.
 */
public final class HaulFields {
    private static final double SECONDS = 3600;
    /** What a way to a place that cannot be reached counts as (m of level way): dearer than any real one. */
    private static final double NO_WAY = 1e5;
    /** How far from a place the nearest open lattice point is looked for, in steps of the lattice. */
    private static final double REACH = 6;

    private final Map<String, Machine> machines = new HashMap<>();
    private final List<SoilOffer> offers;
    private final Map<String, Field> fields = new LinkedHashMap<>();
    private final TrueMetres metres;

    private HaulFields(List<SoilOffer> offers, TrueMetres metres) {
        this.offers = List.copyOf(offers);
        this.metres = metres;
    }

    private record Field(HaulGround ground, List<Optional<HaulWays>> from) {
        double levelled(int offer, Point place) {
            Optional<HaulWays> ways = from.get(offer);
            return ways.map(w -> levelled(w, place)).orElse(NO_WAY);
        }

        private double levelled(HaulWays ways, Point place) {
            double least = ground.costAround(ways, place);
            if (Double.isFinite(least)) {
                return least;
            }
            int near = ground.openNear(place, REACH * ground.trueStep());
            return near >= 0 && ways.isReached(near) ? ways.costTo(near) + ground.distance(near, place) : NO_WAY;
        }
    }

    /**
     * Works out the ways.
     *
     * @param plan     the plan
     * @param ground   its ground
     * @param standing outlines of what does not move
     * @param progress told how far the work has come; may cancel it
     * @return the fields
     */
    public static HaulFields of(Plan plan, ElevationGrid ground, SiteShapes standing, Progress progress) {
        EarthworksInput input = new EarthworksInput(standing.plan(), ground, List.of(), List.of(),
                EarthworksInput.Objective.MACHINE_HOURS);
        List<SoilOffer> offers = BorrowOffers.of(input, standing).offers();
        HaulFields made = new HaulFields(offers, ground.metres());
        List<Ring> obstacles = WayNet.standing(standing);
        Map<Machine, Field> byMachine = new LinkedHashMap<>();
        plan.hulls().forEach(h -> Hauler.of(plan, h.id()).ifPresent(machine -> {
            progress.check();
            made.machines.put(h.id(), machine);
            made.fields.put(h.id(), byMachine.computeIfAbsent(machine, m -> {
                HaulGround on = HaulGround.of(ground, HaulGround.Mover.of(m), obstacles);
                List<Optional<HaulWays>> from = offers.parallelStream().map(o -> start(on, o)
                        .map(s -> HaulWays.from(on, s))).toList();
                return new Field(on, from);
            }));
        }));
        return made;
    }

    private static Optional<Integer> start(HaulGround on, SoilOffer offer) {
        int start = on.openNear(offer.area().centre(), Math.sqrt(offer.area().area()));
        return start < 0 ? Optional.empty() : Optional.of(start);
    }

    /**
     * Soil wanted for one hull.
     *
     * @param hull   its id
     * @param cover  soil of its cover (kg)
     * @param ramp   soil of the ramp up to it, brought and taken back (kg)
     * @param toe    corners of the cover's toe
     * @param middle where the soil goes
     */
    public record Wanted(String hull, double cover, double ramp, List<Point> toe, Point middle) {
        /** Copies the list. */
        public Wanted {
            toe = List.copyOf(toe);
        }
    }

    /**
     * What bringing it takes.
     *
     * @param hours    machine hours (h); level metres times tonnes where the plan has no machine
     * @param shortage soil that no borrow ground gives (kg)
     */
    public record Work(double hours, double shortage) {
    }

    /**
     * Length of level way from a borrow ground to a hull, there and back halved.
     *
     * @param offer place of the borrow ground among those that give soil
     * @param need  what is wanted
     * @return length (m)
     */
    private double levelled(int offer, Wanted need) {
        Field field = fields.get(need.hull);
        if (field == null) {
            return metres.distance(offers.get(offer).area().centre(), need.middle);
        }
        double least = Double.POSITIVE_INFINITY;
        for (Point at : need.toe) {
            least = Math.min(least, field.levelled(offer, at) + metres.distance(at, need.middle));
        }
        return Math.min(least, NO_WAY);
    }

    /** Hours for a kilogramme brought there; metres of level way where there is no machine. */
    private double cost(int offer, Wanted need) {
        double way = levelled(offer, need);
        return Optional.ofNullable(machines.get(need.hull)).map(m -> (m.fillTime() + m.dumpTime()
                + 2 * way / m.speed()) / m.load() / SECONDS).orElse(way / 1000);
    }

    /**
     * The least work that brings all soil, as {@link Earthworks} shares it out.
     *
     * @param needs what is wanted
     * @return the work
     */
    public Work work(List<Wanted> needs) {
        if (offers.isEmpty()) {
            return new Work(0, needs.stream().mapToDouble(Wanted::cover).sum());
        }
        List<double[]> rows = new ArrayList<>();
        double[] left = offers.stream().mapToDouble(SoilOffer::mass).toArray();
        boolean enough = true;
        double hours = 0;
        for (Wanted need : needs) {
            double[] costs = new double[offers.size()];
            int best = 0;
            for (int i = 0; i < costs.length; i++) {
                costs[i] = cost(i, need);
                best = costs[i] < costs[best] ? i : best;
            }
            rows.add(costs);
            // A ramp goes back to where it was dug, so that its hauls count twice.
            hours += costs[best] * (need.cover + 2 * need.ramp);
            left[best] -= need.cover + need.ramp;
            enough &= left[best] >= 0;
        }
        return enough ? new Work(hours, 0) : shared(needs, rows);
    }

    private Work shared(List<Wanted> needs, List<double[]> rows) {
        double[][] costs = new double[offers.size()][2 * needs.size()];
        double[] demand = new double[2 * needs.size()];
        for (int j = 0; j < needs.size(); j++) {
            demand[2 * j] = needs.get(j).cover;
            demand[2 * j + 1] = needs.get(j).ramp;
            for (int i = 0; i < offers.size(); i++) {
                costs[i][2 * j] = rows.get(j)[i];
                costs[i][2 * j + 1] = rows.get(j)[i];
            }
        }
        TransportProblem.Allocation found = new TransportProblem(
                offers.stream().mapToDouble(SoilOffer::mass).toArray(), demand, costs).cheapest();
        double hours = 0;
        double shortage = 0;
        for (int j = 0; j < demand.length; j++) {
            shortage += found.shortage()[j];
            for (int i = 0; i < offers.size(); i++) {
                hours += found.amount()[i][j] * costs[i][j] * (1 + j % 2);
            }
        }
        return new Work(hours, shortage);
    }
}
