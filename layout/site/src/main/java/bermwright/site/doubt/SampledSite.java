// SPDX-License-Identifier: Apache-2.0
package bermwright.site.doubt;

import bermwright.finding.DoseRule;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.foundation.Progress;
import bermwright.lowering.chain.Chain;
import bermwright.lowering.chain.ChainRow;
import bermwright.lowering.chain.LoadCase;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.SiteGround;
import bermwright.site.assessment.SoilNeeds;
import bermwright.site.burial.HullBurial;
import bermwright.site.burial.HullSupports;
import bermwright.site.burial.SupportFindings;
import bermwright.site.exposure.JudgedLimit;
import bermwright.site.exposure.SiteCover;
import bermwright.site.exposure.SiteDose;
import bermwright.site.exposure.StationDose;
import bermwright.site.haulage.Earthworks;
import bermwright.site.haulage.EarthworksInput;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.haulage.SoilNeed;
import bermwright.site.haulage.SoilOffer;
import bermwright.site.hazard.SiteHazards;
import bermwright.site.laydown.Laydown;
import bermwright.site.laydown.LaydownOfHull;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LimitInForce;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanValues;
import bermwright.site.stages.SlopeChecks;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A site worked out again for inputs a little off. What none of them touches is kept: the prepared ground, the shape
 * of covers, clearances, ways over the ground, landings aside, and the shape of each station's sky.
 *
 * <p>Heights that are off, much alike under near hulls, lower or raise the depth of each cover and add or spare soil by
 * the cover's own spread; they do not move the hulls. A sample knows what it is: the plan's spreads are
 * nothing within it.
 */
final class SampledSite {
    private static final double MILLI = 1000;
    private static final String CREW = "crew-dose-over-";
    private static final String PERSON = "dose-person-";
    private static final double NO_SPREAD = 1e-6;

    private final Assessment nominal;
    private final List<UncertainInput> inputs;
    private final SiteCover cover;
    private final Optional<EarthworksInput> soil;
    private final Optional<Earthworks.Again> again;
    private final ElevationErrors heights;
    private FullResponse shapes = FullResponse.NONE;

    SampledSite(Assessment nominal, List<UncertainInput> inputs) {
        this.nominal = nominal;
        this.inputs = inputs;
        cover = nominal.cover().orElseThrow();
        soil = nominal.earthworks().isPresent() ? SoilNeeds.of(nominal) : Optional.empty();
        again = soil.map(Earthworks::keeping);
        TrueMetres metres = cover.natural().metres();
        heights = new ElevationErrors(Math.max(NO_SPREAD, nominal.plan().ground().elevationSpread()),
                nominal.plan().ground().elevationCorrelation(), metres.scale(), cover.hulls().stream()
                        .map(h -> nominal.plan().hull(h.id()).orElseThrow())
                        .map(h -> ElevationErrors.bed(h.bed(metres).centre(), h.layDownAzimuth(),
                                metres.onPlan(h.length()), metres.onPlan(h.diameter()))).toList());
    }

    /** One sample worked out: figures by name, and findings by id with their level. */
    record Outcome(Map<Figure, Double> figures, Map<String, Level> findings) {
    }

    /** Works out what numbers come to that shape what is built; where there are none, nothing. */
    void learn(Progress progress) {
        boolean isShaped = inputs.stream().anyMatch(i -> i.kind() == UncertainInput.Kind.SHAPE);
        shapes = isShaped ? FullResponse.of(inputs, nominal.planName(), this::onGivenGround, progress)
                : FullResponse.NONE;
    }

    /** The plan of a sample, with every number where it is. */
    Plan plan(double[] off) {
        return plan(off, true);
    }

    /** The plan of a sample; numbers that shape what is built may be left at their best. */
    private Plan plan(double[] off, boolean isShaped) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        numbers.put("ground.regolith.density_spread_share", 0.0);
        numbers.put("ground.regolith.friction_angle_spread_deg", 0.0);
        numbers.put("ground.regolith.cohesion_spread_Pa", 0.0);
        for (int i = 0; i < nominal.plan().hulls().size(); i++) {
            numbers.put("hulls[" + i + "].centre_of_mass_spread_m", 0.0);
        }
        for (int i = 0; i < off.length; i++) {
            UncertainInput input = inputs.get(i);
            if (input.kind() == UncertainInput.Kind.PLAN || input.kind() == UncertainInput.Kind.PLACED_DENSITY
                    || isShaped && input.kind() == UncertainInput.Kind.SHAPE) {
                double deviations = off[i];
                input.targets().forEach(t -> numbers.put(t.path(), t.at(deviations)));
            }
        }
        return PlanValues.with(nominal.plan(), numbers);
    }

    /** A sample, with what it does not touch kept. */
    Outcome at(double[] off) {
        Plan plan = plan(off, false);
        Map<Figure, Double> figures = new LinkedHashMap<>();
        Map<String, Level> findings = new HashMap<>();
        nominal.dose().ifPresent(d -> doses(DoseSample.of(plan, d, off(off, true)), d, figures));
        lowering(plan, figures, findings);
        soil(plan, off, again.map(a -> a::of), figures, findings);
        ground(plan, cover, figures, findings);
        shapes.move(figures, off);
        overLimits(figures, findings);
        return new Outcome(figures, findings);
    }

    /** How another way of hauling is asked. */
    private interface Works {
        EarthworksResult of(EarthworksInput input);
    }

    /**
     * A sample assessed in full on ground that is off as a field, with nothing kept: its figures and all its findings.
     *
     * <p>Model, sun, event and depth of soil move the doses as in the sample. Covers are raised on the ground with its
     * errors, so the soil that reckoned heights spare or cost is not in it.
     */
    Outcome inFull(double[] off, long seed) {
        double[] under = under(off);
        double[] ground = Arrays.stream(under).map(h -> -h).toArray();
        return inFull(off, nominal.plan().ground().elevationSpread() > 0
                ? heights.on(nominal.ground().grid(), ground, seed) : nominal.ground().grid());
    }

    private Map<Figure, Double> onGivenGround(double[] off) {
        return inFull(off, nominal.ground().grid()).figures();
    }

    private Outcome inFull(double[] off, ElevationGrid grid) {
        Plan plan = plan(off);
        Assessment full = Assessments.standard().run(Assessments.Asked.FINISHED, new Assessments.Site(plan,
                nominal.planName(), new SiteGround(nominal.ground().file(), nominal.ground().directory(), grid)),
                Progress.NONE);
        Map<Figure, Double> figures = new LinkedHashMap<>();
        Map<String, Level> findings = new HashMap<>();
        found(full.findings(), findings);
        full.dose().ifPresent(d -> doses(DoseSample.of(plan, d, off(off, false)), d, figures));
        full.hulls().forEach(h -> h.laydown().flatMap(Laydown::lowering).ifPresent(r -> margins(h.hull(), r.chain(),
                figures)));
        full.earthworks().ifPresent(e -> soil(e, figures));
        full.cover().ifPresent(c -> ground(plan, c, figures, findings));
        overLimits(figures, findings);
        return new Outcome(figures, findings);
    }

    /** The same sample by what is kept, soil without what heights spare or cost: to hold against it in full. */
    Map<Figure, Double> likeInFull(double[] off) {
        double[] level = off.clone();
        for (int i = 0; i < off.length; i++) {
            level[i] = inputs.get(i).kind() == UncertainInput.Kind.GROUND_UNDER_HULL ? 0 : off[i];
        }
        Map<Figure, Double> figures = new LinkedHashMap<>(at(off).figures());
        Map<Figure, Double> soils = new LinkedHashMap<>();
        soil(plan(level, false), level, again.map(a -> a::of), soils, new HashMap<>());
        shapes.move(soils, off);
        figures.putAll(soils);
        return figures;
    }

    private DoseSample.Off off(double[] z, boolean withDensity) {
        double[] by = new double[UncertainInput.Kind.values().length];
        for (int i = 0; i < z.length; i++) {
            by[inputs.get(i).kind().ordinal()] += z[i];
        }
        return new DoseSample.Off(by[UncertainInput.Kind.COSMIC_MODEL.ordinal()],
                by[UncertainInput.Kind.EVENT_MODEL.ordinal()], by[UncertainInput.Kind.SUN.ordinal()],
                withDensity ? by[UncertainInput.Kind.PLACED_DENSITY.ordinal()] : 0, heights(z));
    }

    /** Errors in the mean under each covered hull, in standard deviations; above nothing where the hull lies lower. */
    private double[] under(double[] z) {
        double[] own = new double[Math.max(1, cover.hulls().size())];
        for (int i = 0, k = 0; i < z.length; i++) {
            if (inputs.get(i).kind() == UncertainInput.Kind.GROUND_UNDER_HULL) {
                own[k++] = z[i];
            }
        }
        return heights.together(own);
    }

    /** Depth of soil over each hull against the planned one, in its own standard deviations. */
    private Map<String, Double> heights(double[] z) {
        double[] under = under(z);
        Map<String, Double> own = new HashMap<>();
        for (int i = 0; i < cover.hulls().size(); i++) {
            own.put(cover.hulls().get(i).id(), under[i]);
        }
        return own;
    }

    private static void overLimits(Map<Figure, Double> figures, Map<String, Level> findings) {
        figures.forEach((figure, value) -> {
            if ((figure.id().startsWith(CREW) || figure.id().startsWith(PERSON)) && !figure.keeps(value)) {
                findings.put(DoseRule.DOSE_LIMIT.id() + ":" + figure.id(), Level.REFUSE);
            }
        });
    }

    private void doses(DoseSample sample, SiteDose dose, Map<Figure, Double> figures) {
        for (JudgedLimit limit : dose.limits()) {
            if (limit.isJudged()) {
                Figure figure = new Figure(Figures.id(CREW + limit.limit().over().word()
                        + Figures.other(limit.limit()) + "-" + limit.limit().from().word()), "the crew's "
                        + limit.limit().quantity() + " from " + Figures.from(limit.limit()) + " over "
                        + Figures.over(limit.limit()), limit.unit(),
                        OptionalDouble.of(limit.limit().limit() * MILLI), false);
                figures.put(figure, sample.crew(limit.limit()) * MILLI);
            }
        }
        sample.people(dose.limits()).forEach((person, value) -> {
            Figure figure = new Figure(Figures.id(PERSON + person.id() + "-over-"
                    + person.limit().over().word() + Figures.other(person.limit()) + "-"
                    + person.limit().from().word()),
                    person.limit().quantity() + " of " + person.id() + " from " + Figures.from(person.limit())
                    + " over " + Figures.over(person.limit()), person.unit(),
                    OptionalDouble.of(person.limit().limit() * MILLI), false);
            figures.put(figure, value * MILLI);
        });
        sample.stations().forEach(s -> figures.put(Figures.free("dose-" + s.from().hull() + "-" + s.from().station(),
                "dose at " + s.name(), "mSv"), s.covered() * MILLI));
    }

    private void lowering(Plan plan, Map<Figure, Double> figures, Map<String, Level> findings) {
        for (Hull hull : plan.hulls()) {
            Laydown down = LaydownOfHull.asPlanned(plan, hull, cover.prepared());
            found(down.findings(), findings);
            down.lowering().ifPresent(r -> margins(hull, r.chain(), figures));
        }
    }

    private static void margins(Hull hull, Chain chain, Map<Figure, Double> figures) {
        margin(chain, false).ifPresent(least -> figures.put(Figures.atLeast("lowering-" + hull.id(),
                "lowering of " + hull.id() + ", least factor of safety over the required one", 1), least));
        margin(chain, true).ifPresent(least -> figures.put(Figures.atLeast("after-loss-" + hull.id(),
                "lowering of " + hull.id()
                + " with one thing lost, least factor of safety over the required one", 1), least));
    }

    /** The least factor over the required one, of all parts in all load cases of a kind. */
    private static OptionalDouble margin(Chain chain, boolean afterLoss) {
        return chain.rows().stream().filter(r -> r.load().kind() == LoadCase.Kind.LOSS == afterLoss
                && r.factor().isPresent()).mapToDouble(ChainRow::margin).min();
    }

    private void soil(Plan plan, double[] off, Optional<Works> works, Map<Figure, Double> figures,
            Map<String, Level> findings) {
        if (soil.isEmpty() || works.isEmpty()) {
            return;
        }
        EarthworksResult result = works.get().of(input(plan, off));
        found(result.findings(), findings);
        soil(result, figures);
    }

    private static void soil(EarthworksResult result, Map<Figure, Double> figures) {
        figures.put(Figures.free("soil-bank", "soil to be dug, bank", "m³"), result.bank());
        result.machineHours().ifPresent(h -> figures.put(Figures.free("machine-hours", "machine hours", "h"), h));
        figures.put(new Figure("soil-short", "soil short, bank", "m³", OptionalDouble.of(0.5), false),
                result.shortage());
    }

    private EarthworksInput input(Plan plan, double[] off) {
        GroundPlan.Regolith now = plan.ground().regolith();
        GroundPlan.Regolith then = nominal.plan().ground().regolith();
        double placed = now.placedDensity() / then.placedDensity();
        double bank = now.densityProfile().isEmpty() ? now.bankDensity() / then.bankDensity()
                : now.densityProfile().get(0).density() / then.densityProfile().get(0).density();
        Map<String, Double> heights = heights(off);
        List<SoilNeed> needs = new ArrayList<>();
        for (SoilNeed need : soil.get().needs()) {
            double more = need.kind() == SoilNeed.Kind.COVER ? -heights.getOrDefault(need.to(), 0.0) * cover
                    .hull(need.to()).map(c -> c.uncertainty().volume()).orElse(0.0) : 0;
            needs.add(new SoilNeed(need.to(), need.kind(), Math.max(0, need.placed() + more), need.density() * placed,
                    need.outlines()));
        }
        List<SoilOffer> offers = soil.get().offers().stream().map(o -> new SoilOffer(o.from(), o.bank(),
                o.density() * bank, o.area())).toList();
        return new EarthworksInput(plan, soil.get().ground(), needs, offers, soil.get().objective());
    }

    private static void ground(Plan plan, SiteCover cover, Map<Figure, Double> figures, Map<String, Level> findings) {
        for (HullBurial burial : HullBurial.of(plan, cover)) {
            found(burial.findings(), findings);
            burial.supports().supports().stream().mapToDouble(HullSupports.Support::bearingFactor).min()
                    .ifPresent(least -> figures.put(Figures.atLeast("bearing-" + burial.id(), "supports of "
                            + burial.id() + ", least factor of safety of the soil under them",
                            SupportFindings.WANTED_BEARING), least));
            if (Double.isFinite(burial.shellFactor())) {
                figures.put(Figures.atLeast("shell-" + burial.id(), "shell of " + burial.id()
                        + " under soil, factor of safety", HullBurial.WANTED_FACTOR), burial.shellFactor());
            }
        }
        SlopeChecks slopes = SlopeChecks.of(plan, cover);
        found(slopes.findings(), findings);
        slopes.slopes().stream().filter(SlopeChecks.Slope::isMound).forEach(s -> figures.put(Figures.atLeast("mound-"
                + s.subject(), "mound of " + s.subject() + ", factor of safety of its slope", SlopeChecks.WANTED),
                s.circle()));
        found(SiteHazards.of(plan, cover, Optional.empty()).findings(), findings);
    }

    private static void found(List<Finding> all, Map<String, Level> findings) {
        all.forEach(f -> findings.merge(f.id(), f.level(), (a, b) -> a.ordinal() < b.ordinal() ? a : b));
    }

    /** Figures with and without a limit. */
    private static final class Figures {
        private Figures() {
        }

        static String id(String words) {
            return words.replaceAll("[ ,]+", "-");
        }

        /** The quantity of a limit, where it is not the usual one. */
        static String other(LimitInForce limit) {
            return limit.quantity().equals(StationDose.QUANTITY) ? "" : "-" + limit.quantity();
        }

        static Figure free(String id, String name, String unit) {
            return new Figure(id.replace(' ', '-'), name, unit, OptionalDouble.empty(), true);
        }

        static String from(LimitInForce limit) {
            return limit.from() == ExposurePlan.From.ALL ? "all sources" : limit.from() == ExposurePlan.From.COSMIC
                    ? "cosmic rays" : "the event";
        }

        static String over(LimitInForce limit) {
            return switch (limit.over()) {
                case STAY -> "the stay";
                case EVENT -> "the event";
                case CAREER -> "a career";
                case DAY, THIRTY_DAYS, YEAR -> limit.over().word();
            };
        }

        static Figure atLeast(String id, String name, double limit) {
            return new Figure(id.replace(' ', '-'), name, "1", OptionalDouble.of(limit), true);
        }
    }
}
