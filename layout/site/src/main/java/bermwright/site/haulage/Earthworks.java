// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.finding.Finding;
import bermwright.finding.WorkRule;
import bermwright.foundation.ModelNote;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.regolith.SoilStates;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Machine;
import bermwright.site.plan.Plan;
import bermwright.site.plan.PlanSoil;
import bermwright.terrain.earthworks.BenchFit;
import bermwright.terrain.earthworks.BorrowPit;
import bermwright.terrain.earthworks.CutAndFill;
import bermwright.terrain.earthworks.GradedWay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * Plans the earthworks: which borrow ground feeds which cover, so that machine hours or energy are least.
 *
 * <p>Soil keeps its mass: a volume placed at one density was a volume in place at another. Bank volume is placed
 * volume times placed density over bank density; the factor can be above or below one. A ramp is hauled there and back
 * to where it was dug; its soil is not part of the placed, bank and loose volumes, its hauls are part of the hours.
 */
public final class Earthworks {
    /** Kilogrammes below which soil is not worth a haul. */
    private static final double DUST = 1;
    private static final double SECONDS = 3600;

    private final EarthworksInput input;
    private final Plan plan;
    private final GroundPlan.Regolith soil;
    private final SoilStates states;
    private final List<SoilOffer> offers = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private Earthworks(EarthworksInput input) {
        this.input = input;
        this.plan = input.plan();
        this.soil = plan.ground().regolith();
        this.states = PlanSoil.borrowed(plan);
    }

    /**
     * Ways and pits of one answer, to answer again where only soil and volumes are others: the needs and offers must be
     * the same in number and order, and lie where they lay.
     *
     * @param first the soil that it was worked out for
     * @return what answers again
     */
    public static Again keeping(EarthworksInput first) {
        SiteShapes site = SiteShapes.of(first.plan(), Optional.of(first.ground()), Map.of());
        BorrowOffers borrowed = BorrowOffers.of(first, site);
        List<SoilOffer> offered = new ArrayList<>(borrowed.offers());
        offered.addAll(first.offers());
        return new Again(borrowed, WayNet.of(first, site, offered, Progress.NONE));
    }

    /** Answers again with the ways and pits of an earlier answer. */
    public static final class Again {
        private final BorrowOffers borrowed;
        private final WayNet net;

        private Again(BorrowOffers borrowed, WayNet net) {
            this.borrowed = borrowed;
            this.net = net;
        }

        /**
         * The answer for other soil.
         *
         * @param other the soil
         * @return the result
         */
        public EarthworksResult of(EarthworksInput other) {
            Earthworks works = new Earthworks(other);
            works.densities();
            return works.result(borrowed.with(other), offers -> net, Progress.NONE);
        }
    }

    /**
     * Plans the earthworks.
     *
     * @param input    what they are planned from
     * @param progress how far it has come
     * @return hauls, hours, what is left and what was found
     */
    public static EarthworksResult of(EarthworksInput input, Progress progress) {
        return new Earthworks(input).result(progress);
    }

    /**
     * What the plan's borrow grounds give in all: dug to their depth with their side slopes, clear of what must not be
     * undercut, times their yield.
     *
     * @param input what the earthworks are planned from; covers keep their distance by the outlines of their needs
     * @return usable volume (m3, in place), zero or more
     */
    public static double usable(EarthworksInput input) {
        SiteShapes site = SiteShapes.of(input.plan(), Optional.of(input.ground()), Map.of());
        return BorrowOffers.of(input, site).grounds().stream().mapToDouble(DugGround::usable).sum();
    }

    private EarthworksResult result(Progress progress) {
        densities();
        SiteShapes site = SiteShapes.of(plan, Optional.of(input.ground()), Map.of());
        return result(BorrowOffers.of(input, site), (offered) -> WayNet.of(input, site, offered,
                progress.part(0, 0.9)), progress);
    }

    private EarthworksResult result(BorrowOffers borrowed, Function<List<SoilOffer>, WayNet> ways, Progress progress) {
        findings.addAll(borrowed.findings());
        offers.addAll(borrowed.offers());
        offers.addAll(input.offers());
        progress.report(0, "ways over the ground");
        WayNet net = ways.apply(offers);
        progress.check();
        TransportProblem.Allocation allocation = allocated(costs(net));
        List<Haul> hauls = hauls(net, allocation);
        shortages(net, allocation);
        double unmet = 0;
        for (int j = 0; j < input.needs().size(); j++) {
            if (input.needs().get(j).kind() != SoilNeed.Kind.RAMP) {
                unmet += allocation.shortage()[j] / states.bank();
            }
        }
        progress.report(1, "earthworks");
        List<DugGround> dug = borrowed.grounds().stream().map(g -> g.withUsed(hauls.stream()
                .filter(h -> h.from().equals(g.from())).mapToDouble(Haul::bank).sum())).toList();
        return total(hauls, unmet, dug);
    }

    private EarthworksResult total(List<Haul> hauls, double shortage, List<DugGround> dug) {
        List<SoilNeed> lasting = input.needs().stream().filter(n -> n.kind() != SoilNeed.Kind.RAMP).toList();
        double placed = lasting.stream().mapToDouble(SoilNeed::placed).sum();
        double mass = lasting.stream().mapToDouble(SoilNeed::mass).sum();
        double bank = hauls.stream().filter(h -> h.kind() != SoilNeed.Kind.RAMP
                && h.kind() != SoilNeed.Kind.RAMP_REMOVED).mapToDouble(Haul::bank).sum() + shortage;
        double loose = mass / states.loose();
        EarthworksResult.Spread spread = new EarthworksResult.Spread(states.ratioSpread() * bank,
                states.ratioSpread() * loose, states.spread() * mass);
        double left = dug.stream().mapToDouble(g -> Math.max(0, g.usable() - g.used())).sum();
        boolean driven = !plan.machines().isEmpty();
        OptionalDouble hours = driven
                ? OptionalDouble.of(hauls.stream().mapToDouble(h -> h.machineHours().orElse(0)).sum())
                : OptionalDouble.empty();
        OptionalDouble energy = driven
                ? OptionalDouble.of(hauls.stream().mapToDouble(h -> h.energy().orElse(0)).sum())
                : OptionalDouble.empty();
        return new EarthworksResult(placed, bank, loose, mass, spread, hauls, hours, energy, days(hauls), left,
                shortage, dug, notes(), findings);
    }

    private List<EarthworksResult.MachineDays> days(List<Haul> hauls) {
        Map<String, Double> hours = new LinkedHashMap<>();
        hauls.forEach(h -> h.machineHours().ifPresent(v -> hours.merge(h.machine(), v, Double::sum)));
        List<EarthworksResult.MachineDays> days = new ArrayList<>();
        for (Machine machine : plan.machines()) {
            if (hours.containsKey(machine.id())) {
                double work = hours.get(machine.id());
                days.add(new EarthworksResult.MachineDays(machine.id(), work,
                        work / (machine.count() * machine.hoursADay() * machine.availabilityShare())));
            }
        }
        return days;
    }

    /** The cheapest; where soil is short, covers and fills come first and ramps are made of their covers' own soil. */
    private TransportProblem.Allocation allocated(double[][] costs) {
        double[] supply = offers.stream().mapToDouble(SoilOffer::mass).toArray();
        TransportProblem.Allocation all = new TransportProblem(supply, demand(k -> true), costs).cheapest();
        if (Arrays.stream(all.shortage()).noneMatch(s -> s > DUST)
                || input.needs().stream().noneMatch(n -> n.kind() == SoilNeed.Kind.RAMP)) {
            return all;
        }
        TransportProblem.Allocation lasting = new TransportProblem(supply, demand(k -> k != SoilNeed.Kind.RAMP), costs)
                .cheapest();
        double[] left = supply.clone();
        for (int i = 0; i < left.length; i++) {
            left[i] = Math.max(0, left[i] - Arrays.stream(lasting.amount()[i]).sum());
        }
        TransportProblem.Allocation ramps = new TransportProblem(left, demand(k -> k == SoilNeed.Kind.RAMP), costs)
                .cheapest();
        double[][] amount = new double[left.length][];
        for (int i = 0; i < left.length; i++) {
            amount[i] = lasting.amount()[i].clone();
            for (int j = 0; j < amount[i].length; j++) {
                amount[i][j] += ramps.amount()[i][j];
            }
        }
        for (int j = 0; j < input.needs().size(); j++) {
            if (ramps.shortage()[j] > DUST) {
                SoilNeed ramp = input.needs().get(j);
                double volume = ramps.shortage()[j] / ramp.density();
                findings.add(Finding.of(WorkRule.RAMP_OF_COVER_SOIL, Finding.Level.NOTE, ramp.to(),
                        Finding.Figures.measured(volume, "m3"), String.format(Locale.ROOT, "Soil is short: %.0f m3 of"
                        + " the ramp up the cover of %s are made of soil meant for that cover and pushed onto it last;"
                        + " no machine hours are counted for that.", volume, ramp.to()))
                        .at(ramp.mainOutline().centre()));
            }
        }
        return new TransportProblem.Allocation(amount, lasting.shortage(), lasting.cost() + ramps.cost());
    }

    private double[] demand(Predicate<SoilNeed.Kind> counts) {
        return input.needs().stream().mapToDouble(n -> counts.test(n.kind()) ? n.mass() : 0).toArray();
    }

    private double[][] costs(WayNet net) {
        double[][] costs = new double[offers.size()][input.needs().size()];
        for (int i = 0; i < offers.size(); i++) {
            for (int j = 0; j < input.needs().size(); j++) {
                WayToNeed way = net.way(i, j);
                costs[i][j] = way.blocked().isPresent() ? Double.POSITIVE_INFINITY : net.machine(j)
                        .map(m -> input.objective() == EarthworksInput.Objective.ENERGY
                                ? way.energy(m, plan.ground().gravity()) / m.load() : way.cycle(m) / m.load())
                        .orElse(way.distance());
            }
        }
        return costs;
    }

    private List<Haul> hauls(WayNet net, TransportProblem.Allocation allocation) {
        List<Haul> hauls = new ArrayList<>();
        for (int j = 0; j < input.needs().size(); j++) {
            for (int i = 0; i < offers.size(); i++) {
                double mass = allocation.amount()[i][j];
                if (mass > DUST) {
                    Haul haul = haul(net, i, j, mass);
                    hauls.add(haul);
                    if (haul.kind() == SoilNeed.Kind.RAMP) {
                        hauls.add(haul.back());
                    }
                }
            }
        }
        return hauls;
    }

    private Haul haul(WayNet net, int i, int j, double mass) {
        SoilOffer offer = offers.get(i);
        SoilNeed need = input.needs().get(j);
        WayToNeed way = net.way(i, j);
        double loads = net.machine(j).map(m -> mass / m.load()).orElse(0.0);
        OptionalDouble hours = net.machine(j).map(m -> OptionalDouble.of(loads * way.cycle(m) / SECONDS))
                .orElse(OptionalDouble.empty());
        OptionalDouble energy = net.machine(j)
                .map(m -> OptionalDouble.of(loads * way.energy(m, plan.ground().gravity())))
                .orElse(OptionalDouble.empty());
        return new Haul(offer.from(), need.to(), need.kind(), net.machine(j).map(Machine::id).orElse(""), mass,
                mass / offer.density(), mass / states.loose(), mass / need.density(), way.distance(),
                way.up() + way.down(), loads, hours, energy, way.way());
    }

    private void densities() {
        for (String key : List.of("placed_density_kg_m3", "bank_density_kg_m3", "loose_density_kg_m3")) {
            boolean profile = key.startsWith("bank") && !soil.densityProfile().isEmpty();
            if (!soil.annotations().given().contains(key) && !profile) {
                double taken = key.startsWith("placed") ? soil.placedDensity()
                        : key.startsWith("bank") ? soil.bankDensity() : soil.looseDensity();
                findings.add(Finding.of(WorkRule.DENSITY_MISSING, Finding.Level.WARN, "ground",
                        Finding.Figures.measured(taken, "kg/m3"),
                        "The plan does not state %s; the default of %s kg/m3 is taken. Volumes dug follow it directly."
                                .formatted(key, whole(taken))));
            }
        }
        if (plan.machines().isEmpty() && !input.needs().isEmpty()) {
            findings.add(Finding.of(WorkRule.NO_MACHINE, Finding.Level.WARN, "plan", Finding.Figures.NONE,
                    "The plan has no machine; machine hours are not known and soil goes straight to the next place."));
        }
    }

    private void shortages(WayNet net, TransportProblem.Allocation allocation) {
        for (int j = 0; j < input.needs().size(); j++) {
            double mass = allocation.shortage()[j];
            if (!(mass > DUST)) {
                continue;
            }
            SoilNeed need = input.needs().get(j);
            double bank = mass / states.bank();
            boolean cutOff = true;
            for (int i = 0; i < offers.size(); i++) {
                WayToNeed way = net.way(i, j);
                cutOff &= way.blocked().isPresent();
                String from = offers.get(i).from();
                way.blocked().ifPresent(place -> findings.add(noWay(from, need, place)));
            }
            if (offers.isEmpty() || !cutOff) {
                findings.add(Finding.of(WorkRule.BORROW_SHORTAGE, Finding.Level.REFUSE, need.to(),
                        Finding.Figures.of(bank, 0, "m3"), ("%s requires %s m3 of bank volume more than the borrow"
                                + " grounds give.").formatted(need.to(), whole(bank)))
                        .at(need.mainOutline().centre()));
            }
        }
    }

    private static Finding noWay(String from, SoilNeed need, Point place) {
        return Finding.of(WorkRule.NO_WAY_ROUND, Finding.Level.REFUSE, need.to(), Finding.Figures.NONE,
                ("No way leads from %s to %s for the machine; it gets no farther than this place.").formatted(from,
                need.to())).at(place);
    }

    private static String whole(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }

    private List<ModelNote> notes() {
        return List.of(CutAndFill.note(), Ramp.note(), states.note(), BorrowPit.note(), BenchFit.note(),
                GradedWay.note(),
                new ModelNote("haul-time", "round trips at the machine's level speed, slowed uphill at constant power;"
                        + " fill and dump times of the plan; ways over a lattice no finer than the machine's width",
                        "ground below the machine's greatest grade; no waiting, one machine does not hinder another",
                        "resistance to rolling 0.15 of the weight, 0.05 to 0.2 in the field: up to a third on hilly"
                        + " ways, nothing on level ones", ModelNote.Status.COMPUTED,
                        "constant power; resistance from memory"),
                new ModelNote("haul-energy", "driving energy against rolling and rise, nothing won back downhill",
                        "machines whose own mass equals their load", "a factor of two", ModelNote.Status.PROVISIONAL,
                        "common practice, no source"),
                new ModelNote("haul-allocation", "least total of machine time or energy by the simplex method",
                        "any number of borrow grounds and needs", "a true optimum for the costs given",
                        ModelNote.Status.COMPUTED, "linear programming"));
    }
}
