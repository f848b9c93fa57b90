// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Progress;
import bermwright.foundation.Require;
import bermwright.shielding.material.Material;
import bermwright.shielding.material.Shield;
import bermwright.shielding.spectrum.CosmicSpectrum;
import bermwright.shielding.spectrum.EventSpectrum;
import bermwright.shielding.spectrum.Sun;
import bermwright.shielding.raycast.ScenePath;
import bermwright.shielding.transport.BackwardField;
import bermwright.shielding.transport.Beam;
import bermwright.shielding.transport.EnergyGrid;
import bermwright.shielding.transport.Field;
import bermwright.shielding.transport.Penetration;
import bermwright.shielding.transport.NeutronEnclosure;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;

/** Responses computed by transport through soil and skin, and what they are made of. */
final class TransportResponse {
    /** Areal densities of soil, and skin counted as soil, at which doses are computed (g/cm2). */
    static final double[] DEPTHS_GCM2 = {0, 0.2, 0.5, 1, 2, 3, 5, 7, 10, 15, 20, 25, 30, 40, 50, 60, 75, 90, 105, 125,
        150, 175, 200, 250, 300, 350, 400, 450, 500, 600, 700, 800, 1000, 1200, 1500};
    static final double SECONDS_A_DAY = 86400;
    /**
     * Gammas that cosmic rays make in open ground, at the deep minimum of 2009 and so an upper bound for a more active
     * sun (Sv a second): 3.4 mSv a year.
     *
     * @see "Naito et al. (2023), Scientific Reports 13, abstract"
     */
    static final double GROUND_GAMMAS = 3.4e-3 / 365.25 / SECONDS_A_DAY;
    private static final double KG_M2 = 10;
    /** Cover behind which depths in the body matter less by e (kg/m2). */
    private static final double HARDENED = 500;
    private static final double GREATEST_DEPTH = 15_000;
    /** Least dose written to a table (Sv), so that nothing is no trouble to the logarithm. */
    private static final double LEAST_DOSE = 1e-30;

    private final Shield shield;
    private final double skinEquivalence;
    private final ResponseCache cache;

    TransportResponse(Shield shield, double skinEquivalence, ResponseCache cache) {
        this.shield = shield;
        this.skinEquivalence = skinEquivalence;
        this.cache = cache;
    }

    /** Dose by depth and particle, effective dose by depth and direction, and slow neutrons of a room. */
    record Table(List<Particles> doses, double[][] directions, NeutronEnclosure room) {
    }

    Response cosmic(Sun sun, Progress progress) {
        Table table = cosmicTable(new CosmicSpectrum(sun.modulationW()), progress.part(0, 0.3));
        CosmicSpread spread = CosmicSpread.of(sun, (s, p) -> doses(cosmicTable(s, p)), progress.part(0.3, 1));
        return response(table, spread, new Role(Response.Per.DAY, BodyDose::slow, cosmicNote(sun)));
    }

    Response event(EventSpectrum spectrum, Progress progress) {
        Table table = eventTable(spectrum, progress.part(0, 0.5));
        return response(table, eventSpread(spectrum, table, progress.part(0.5, 1)),
                new Role(Response.Per.EVENT, BodyDose::slow, eventNote(spectrum)));
    }

    /** Gray equivalent of an organ by cosmic rays, a day's; off as the effective dose is. */
    Response cosmicOrgan(Sun sun, OrganDose.Organ organ, Progress progress) {
        CosmicSpectrum spectrum = new CosmicSpectrum(sun.modulationW());
        TabulatedResponse.Spread spread = CosmicSpread.of(sun, (s, p) -> doses(cosmicTable(s, p)),
                progress.part(0, 0.7));
        Table table = organTable(cosmicKey(spectrum), new Source.Cosmic(spectrum), organ, progress.part(0.7, 1));
        return response(table, inBody(spread), organRole(Response.Per.DAY, organ, cosmicNote(sun)));
    }

    /** Gray equivalent of an organ by an event; off as the effective dose is. */
    Response eventOrgan(EventSpectrum spectrum, OrganDose.Organ organ, Progress progress) {
        Table table = organTable(eventKey(spectrum), new Source.Event(spectrum), organ, progress);
        return response(table, inBody(eventSpread(spectrum, eventTable(spectrum, Progress.NONE), Progress.NONE)),
                organRole(Response.Per.EVENT, organ, eventNote(spectrum)));
    }

    /** Further off, as an organ may lie deeper or shallower, which counts less the harder what gets through is. */
    private static TabulatedResponse.Spread inBody(TabulatedResponse.Spread effective) {
        return new TabulatedResponse.Spread() {
            @Override
            public Band at(double arealDensity) {
                Band band = effective.at(arealDensity);
                double depths = Tissue.DEPTH_SPREAD * Math.exp(-arealDensity / HARDENED);
                return new Band(Math.exp(-Math.hypot(Math.log(band.low()), depths)),
                        Math.exp(Math.hypot(Math.log(band.high()), depths)));
            }

            @Override
            public Band bySun(double arealDensity) {
                return effective.bySun(arealDensity);
            }
        };
    }

    private static Role organRole(Response.Per per, OrganDose.Organ organ, ModelNote effective) {
        String id = organ.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        String spread = effective.spread() + "; depths in the body " + Math.round(100 * Tissue.DEPTH_SPREAD)
                + " % on top, less by e behind each " + Math.round(HARDENED / KG_M2) + " g/cm2";
        return new Role(per, OrganExposure::early, new ModelNote(effective.id() + "-" + id,
                organ.quantity() + " over the depths at which the organ lies in a person of published simple solids,"
                        + " seen from all sides alike, by the transport of the effective dose",
                effective.validFor(), spread, effective.status(),
                "NCRP Report 132 (2000), from memory; " + effective.source()));
    }

    /** A table for an organ, in which what is fast stands in the place of protons; by slant it goes as all do. */
    private Table organTable(String key, Source source, OrganDose.Organ organ, Progress progress) {
        Table effective = cached(key, () -> computed(source, progress.part(0, 0.4)));
        return cached(organ.quantity() + " " + key, () -> {
            Penetration penetration = new Penetration(shield, skinEquivalence, Penetration.Resolution.STANDARD);
            Penetration.Outcome outcome =
                    penetration.carry(source.beam(penetration.grid()), DEPTHS_GCM2, progress.part(0.4, 0.8));
            OrganExposure exposure = new OrganExposure(penetration);
            List<Particles> doses = outcome.fields().stream().map(f -> new Particles(0, OrganExposure.early(f.slow()),
                    exposure.straight(f, organ), 0, 0, 0, 0).times(source.seconds())).toList();
            progress.report(1, "organ doses");
            return new Table(doses, effective.directions(), outcome.room());
        });
    }

    /** What walks back from a station go by; drawn by the field at a depth (g/cm2). */
    WalkSource cosmicWalk(Sun sun, double depth, Progress progress) {
        CosmicSpectrum spectrum = new CosmicSpectrum(sun.modulationW());
        return walk(cosmicTable(spectrum, progress.part(0, 0.5)), new Source.Cosmic(spectrum), depth,
                progress.part(0.5, 1));
    }

    /** The same for an event. */
    WalkSource eventWalk(EventSpectrum spectrum, double depth, Progress progress) {
        return walk(eventTable(spectrum, progress.part(0, 0.5)), new Source.Event(spectrum), depth,
                progress.part(0.5, 1));
    }

    private WalkSource walk(Table table, Source source, double depth, Progress progress) {
        Penetration penetration = new Penetration(shield, skinEquivalence, Penetration.Resolution.STANDARD);
        BackwardField field = penetration.backward(source.beam(penetration.grid()), depth,
                new BodyDose(penetration).counts(), progress);
        return new WalkSource(field, source.seconds(), new SlantedDoses(depths(), table.directions()),
                new ScenePath.Skin(shield.skin().stream().map(l -> l.arealDensity()).toList(), skinEquivalence));
    }

    DoseCurve cosmicCurve(Sun sun, Progress progress) {
        Table table = cosmicTable(new CosmicSpectrum(sun.modulationW()), progress.part(0, 0.3));
        CosmicSpread spread = CosmicSpread.of(sun, (s, p) -> doses(cosmicTable(s, p)), progress.part(0.3, 1));
        return curve(table, spread, Response.Per.DAY, PublishedDose.cosmic());
    }

    DoseCurve eventCurve(EventSpectrum spectrum, Progress progress) {
        Table table = eventTable(spectrum, progress);
        return curve(table, eventSpread(spectrum, table, Progress.NONE), Response.Per.EVENT, List.of());
    }

    /** How far an event may be off: by the parts of the model, and by how it may go on beyond its table. */
    private TabulatedResponse.Spread eventSpread(EventSpectrum spectrum, Table table, Progress progress) {
        List<MonotoneCurve> ratios = new ArrayList<>();
        for (EventSpectrum other : spectrum.otherwise()) {
            double[] best = doses(table);
            double[] shares = doses(eventTable(other, progress));
            for (int i = 0; i < shares.length; i++) {
                shares[i] /= best[i];
            }
            ratios.add(new MonotoneCurve(depths(), shares));
        }
        if (ratios.isEmpty()) {
            return ModelSpread::event;
        }
        return x -> {
            Band model = ModelSpread.event(x);
            double low = 1;
            double high = 1;
            for (MonotoneCurve ratio : ratios) {
                double there = ratio.at(x);
                low = Math.min(low, there);
                high = Math.max(high, there);
            }
            return new Band(Math.exp(-Math.hypot(Math.log(model.low()), Math.log(low))),
                    Math.exp(Math.hypot(Math.log(model.high()), Math.log(high))));
        };
    }

    private Table cosmicTable(CosmicSpectrum spectrum, Progress progress) {
        return cached(cosmicKey(spectrum), () -> computed(new Source.Cosmic(spectrum), progress));
    }

    private static String cosmicKey(CosmicSpectrum spectrum) {
        return "cosmic " + spectrum.modulationW();
    }

    private Table eventTable(EventSpectrum spectrum, Progress progress) {
        return cached(eventKey(spectrum), () -> computed(new Source.Event(spectrum), progress));
    }

    private static String eventKey(EventSpectrum spectrum) {
        StringBuilder key = new StringBuilder("event");
        EnergyGrid grid = new EnergyGrid(Penetration.Resolution.STANDARD.pointsInDecade());
        for (int i = 0; i < grid.size(); i++) {
            key.append(' ').append(spectrum.perMeV(grid.energyMeV(i)));
        }
        return key.toString();
    }

    private static DoseCurve curve(Table table, TabulatedResponse.Spread spread, Response.Per per,
            List<PublishedDose> published) {
        double[] depths = depths();
        List<DoseCurve.Point> points = new ArrayList<>();
        for (int i = 0; i < depths.length; i++) {
            points.add(new DoseCurve.Point(depths[i], table.doses().get(i), spread.at(depths[i]),
                    spread.bySun(depths[i])));
        }
        SlantedDoses slanted = new SlantedDoses(depths, table.directions());
        return new DoseCurve(per, points, published,
                Optional.of(new TransportRoom(table.room(), BodyDose::slow, seconds(per))),
                (x, slant) -> slanted.slanted(1, x, slant));
    }

    /** What arrives from outside, and over how many seconds its dose is counted. */
    sealed interface Source {
        /** The beam over the whole sphere. */
        Beam beam(EnergyGrid grid);

        /** Seconds of a day for cosmic rays, one for an event counted whole. */
        double seconds();

        /** Cosmic rays, a day's. */
        record Cosmic(CosmicSpectrum spectrum) implements Source {
            @Override
            public Beam beam(EnergyGrid grid) {
                return Beam.cosmic(spectrum, grid, 0);
            }

            @Override
            public double seconds() {
                return SECONDS_A_DAY;
            }
        }

        /** An event as a whole. */
        record Event(EventSpectrum spectrum) implements Source {
            @Override
            public Beam beam(EnergyGrid grid) {
                return Beam.event(spectrum, grid);
            }

            @Override
            public double seconds() {
                return 1;
            }
        }
    }

    /** Doses of organs under a dome. */
    Map<OrganDose.Organ, OrganDose> organs(Source source, double arealDensity, Progress progress) {
        Require.within("areal density", arealDensity, 0, GREATEST_DEPTH, "kg/m2");
        Penetration penetration = new Penetration(shield, skinEquivalence, Penetration.Resolution.STANDARD);
        Field field = penetration.carry(source.beam(penetration.grid()), new double[] {arealDensity / KG_M2}, progress)
                .fields().get(0);
        OrganExposure exposure = new OrganExposure(penetration);
        Map<OrganDose.Organ, OrganDose> organs = new EnumMap<>(OrganDose.Organ.class);
        for (OrganDose.Organ organ : OrganDose.Organ.values()) {
            organs.put(organ, exposure.underDome(field, organ).times(source.seconds()));
        }
        return organs;
    }

    private Table cached(String key, Supplier<Table> compute) {
        String content = key + "|" + words(shield.soil()) + "|"
                + shield.skin().stream().map(l -> words(l.material()) + l.arealDensity()).toList() + "|"
                + skinEquivalence;
        return cache.table(content, compute);
    }

    private static String words(double modulationW) {
        return String.format(java.util.Locale.ROOT, "%.3g", modulationW);
    }

    private static String words(Material material) {
        return material.density() + " " + material.excitationEV() + " " + material.kind() + " "
                + material.parts().stream().map(p -> p.element().symbol() + p.share()).toList();
    }

    private Table computed(Source source, Progress progress) {
        Penetration penetration = new Penetration(shield, skinEquivalence, Penetration.Resolution.STANDARD);
        Penetration.Outcome outcome =
                penetration.carry(source.beam(penetration.grid()), DEPTHS_GCM2, progress.part(0.1, 1));
        BodyDose body = new BodyDose(penetration);
        double seconds = source.seconds();
        List<Particles> doses = new ArrayList<>();
        double[][] directions = new double[DEPTHS_GCM2.length][];
        for (int i = 0; i < directions.length; i++) {
            Field field = outcome.fields().get(i);
            Particles whole = body.effective(field);
            doses.add(whole.times(seconds));
            directions[i] = body.directions(field, whole);
            for (int k = 0; k < directions[i].length; k++) {
                directions[i][k] *= k > 1 && k % 2 == 1 ? 1 : seconds;
            }
        }
        progress.report(1, "response");
        return new Table(List.copyOf(doses), directions, outcome.room());
    }

    static double[] depths() {
        double[] depths = DEPTHS_GCM2.clone();
        for (int i = 0; i < depths.length; i++) {
            depths[i] *= KG_M2;
        }
        return depths;
    }

    /** What a table is for: over what it counts, how slow neutrons weigh in it, and its note. */
    private record Role(Response.Per per, ToDoubleFunction<double[]> slow, ModelNote note) {
    }

    private Response response(Table table, TabulatedResponse.Spread spread, Role role) {
        DiffuseRoom room = new TransportRoom(table.room(), role.slow, seconds(role.per));
        DiffuseRoom.Sky open = room.sky();
        open.add(0, 0, 1, 1);
        double gammas = role.per == Response.Per.DAY ? GROUND_GAMMAS * SECONDS_A_DAY : 0;
        return new TabulatedResponse(depths(), doses(table), spread,
                new TabulatedResponse.Terms(role.per, gammas + open.total(), soilGammas(role.per), skinEquivalence,
                        role.note, Optional.of(new TabulatedResponse.Slow(
                                table.doses().stream().mapToDouble(Particles::slowNeutrons).toArray(), room)),
                        Optional.of(new SlantedDoses(depths(), table.directions()))));
    }

    private double soilGammas(Response.Per per) {
        return per == Response.Per.DAY ? SoilRadioactivity.overOpenGround(shield.soil().name()) * SECONDS_A_DAY : 0;
    }

    private static double seconds(Response.Per per) {
        return per == Response.Per.DAY ? SECONDS_A_DAY : 1;
    }

    private static double[] doses(Table table) {
        return table.doses().stream().mapToDouble(p -> Math.max(LEAST_DOSE, p.total())).toArray();
    }

    private ModelNote cosmicNote(Sun sun) {
        return new ModelNote("cosmic-response",
                "effective dose of galactic cosmic rays (W " + sun.modulationW() + ", hydrogen to nickel) behind "
                        + shield.soil().name() + " soil" + skinWords()
                        + ": ions and protons straight along the ray with slowing down and fragmentation; what an "
                        + "intranuclear cascade makes of them by depth and direction through a level slab, each "
                        + "direction at its own slant through the first soil on the ray; what the floor throws back "
                        + "with the direction that makes it; slow neutrons by diffusion through each piece of wall, "
                        + "given back between walls and floor of the room; ions beyond hydrogen, with all they make "
                        + "in the body, by quality factor over the depths at which marrow, skin and other tissues lie "
                        + "in a person of published simple solids",
                "0 to 1000 g/cm2, to where it is held against others, extrapolated to 1500; walls taken as level over "
                        + "some 100 g/cm2 around each ray; electrons and gammas roughly; gammas of the ground 3.4 mSv "
                        + "a year in the open whatever the sun; beside them potassium, thorium and uranium of the "
                        + "soil, "
                        + String.format(java.util.Locale.ROOT, "%.3f", 365.25e3 * soilGammas(Response.Per.DAY))
                        + " mSv a year in the open and twice that with soil all around, good to a third, skins not "
                        + "counted",
                ModelSpread.words(true) + "; beside it the sun, W " + words(sun.quietW()) + " to "
                        + words(sun.activeW()) + ", as well as its state or its day is known",
                ModelNote.Status.COMPUTED,
                "spectrum Matthiae et al. (2013), Adv. Space Res. 51, 329; ICRP Publications 60, 103 and 116; see "
                        + "the validation list for each part");
    }

    private ModelNote eventNote(EventSpectrum spectrum) {
        return new ModelNote("event-response",
                "effective dose of the protons of " + spectrum.name() + " behind " + shield.soil().name() + " soil"
                        + skinWords() + " and of what they make on the way, by depth and direction through a level "
                        + "slab",
                "0 to 1000 g/cm2, extrapolated to 1500; spectrum fitted from " + spectrum.range().fromMeV() + " to "
                        + spectrum.range().toMeV() + " MeV and continued beyond " + spectrum.continuation()
                        + "; particles heavier than protons left "
                        + "out, which add less than a tenth behind 10 g/cm2 (from memory) and more under less",
                ModelSpread.words(false) + (spectrum.otherwise().isEmpty() ? ""
                        : ", widened by how the event may go on beyond its table")
                        + "; the choice of event another factor three",
                ModelNote.Status.COMPUTED, spectrum.source() + "; ICRP Publication 116 (2010)");
    }

    private String skinWords() {
        return shield.skin().isEmpty() ? "" : " and a skin of " + String.join(", ",
                shield.skin().stream().map(l -> l.material().name()).toList());
    }
}
