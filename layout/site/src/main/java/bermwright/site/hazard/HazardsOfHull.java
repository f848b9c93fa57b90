// SPDX-License-Identifier: Apache-2.0
package bermwright.site.hazard;

import bermwright.foundation.Point;
import bermwright.shielding.hazard.MeteoroidFlux;
import bermwright.shielding.hazard.SoilCrater;
import bermwright.shielding.hazard.SoilHeat;
import bermwright.shielding.hazard.ThrownSoil;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.SiteCover;
import bermwright.site.plan.HazardPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LandingPad;
import bermwright.site.plan.Plan;
import bermwright.site.plan.PlanSoil;
import bermwright.site.plan.Station;
import bermwright.terrain.earthworks.ShakenSlope;
import bermwright.terrain.earthworks.SlopeStability;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Works out what one hull is judged for besides radiation. */
final class HazardsOfHull {
    /** Swing of the lunar day that counts as not felt (K). */
    static final double NOT_FELT = 1;
    private static final double KILOWATT = 1000;
    private static final int ALONG = 8;
    /** Steepest slope the search for a slip is made for (rad). */
    private static final double STEEPEST = Math.toRadians(80);

    private final Plan plan;
    private final Hull hull;
    private final SiteCover site;
    private final Optional<HullCover> cover;
    private final HazardPlan asked;
    private final HullSkin skin;
    private final MeteoroidHits hits;
    private final double least;

    HazardsOfHull(Plan plan, Hull hull, SiteCover site) {
        this.plan = plan;
        this.hull = hull;
        this.site = site;
        cover = site.hull(hull.id());
        asked = plan.exposure().hazards();
        skin = HullSkin.of(hull, cover);
        hits = new MeteoroidHits(plan, hull);
        least = cover.map(c -> c.least().depth()).orElse(Double.NaN);
    }

    HullHazards figures() {
        return new HullHazards(hull.id(), meteoroids(), thrown(), heat(), quake());
    }

    /** The lines of the table: the hull, then its stations. */
    List<JudgedCover> lines(HullHazards figures) {
        JudgedCover.Place whole = new JudgedCover.Place(hull.id(), "", least);
        List<JudgedCover> lines = new ArrayList<>();
        lines.add(byMeteoroids(whole, skin));
        byThrownSoil(whole, figures.thrown()).ifPresent(lines::add);
        lines.add(byHeat(whole, figures.heat().notFelt()));
        byQuake(whole, figures.quake()).ifPresent(lines::add);
        for (Station station : hull.stations()) {
            HullSkin near = skin.near(station.along(), hull.radius());
            JudgedCover.Place place = place(station);
            lines.add(byMeteoroids(place, near));
            lines.add(byHeat(place, figures.heat().notFelt()));
        }
        return lines;
    }

    JudgedCover.Place place(Station station) {
        return new JudgedCover.Place(hull.id(), station.id(), cover.isEmpty() ? Double.NaN
                : skin.near(station.along(), hull.radius()).thinnest());
    }

    private HullHazards.Meteoroids meteoroids() {
        if (!skin.isKnown() || SkinOfHull.of(hull).isEmpty() && skin.bareArea() > 0) {
            return new HullHazards.Meteoroids(Double.NaN, Double.NaN, Double.NaN);
        }
        double all = hits.expected(skin);
        double bare = hits.expected(new HullSkin(skin.cells().stream().filter(HullSkin.Cell::isBare).toList()));
        return new HullHazards.Meteoroids(MeteoroidFlux.chance(all), all > 0 ? bare / all : 0,
                Double.isNaN(least) ? hits.stopped(0) : hits.stopped(least));
    }

    private JudgedCover byMeteoroids(JudgedCover.Place place, HullSkin part) {
        double bare = part.bareArea();
        if (!part.isKnown()) {
            return JudgedCover.open(place, Hazard.METEOROIDS, "the cover depth is not known everywhere");
        } else if (bare > 0 && SkinOfHull.of(hull).isEmpty()) {
            return JudgedCover.open(place, Hazard.METEOROIDS, text("%.0f m2 of skin lie bare and the plan states no"
                    + " skin of a known material", bare));
        }
        double allowed = asked.perforationChance();
        double chance = MeteoroidFlux.chance(hits.expected(part));
        return JudgedCover.of(place, Hazard.METEOROIDS, new JudgedCover.Measure(chance, allowed, "1", false),
                hits.required(part, allowed), "chance that a meteoroid perforates it in the stay"
                        + (bare > 0 ? text(", with %.0f m2 of bare skin", bare) : ""));
    }

    private HullHazards.Thrown thrown() {
        List<LandingPad> pads = plan.landingPads();
        if (pads.isEmpty() || asked.landings() == 0 || asked.thrownSoil() == 0) {
            return HullHazards.Thrown.NONE;
        }
        TrueMetres metres = site.natural().metres();
        Point middle = hull.arrival() == Hull.Arrival.STAYS_UPRIGHT ? hull.baseCentre()
                : hull.lyingAt(metres, hull.length() / 2, 0);
        double nearest = Double.POSITIVE_INFINITY;
        double mass = 0;
        for (LandingPad pad : pads) {
            double distance = Math.max(pad.radius(), metres.distance(middle, pad.centre()));
            nearest = Math.min(nearest, distance);
            mass += ThrownSoil.onUpright(asked.thrownSoil() * asked.landings(), distance);
        }
        Optional<SkinOfHull> wall = SkinOfHull.of(hull);
        return new HullHazards.Thrown(nearest, mass, wall.map(w -> w.wall().required(ThrownSoil.GRAIN,
                ThrownSoil.SPEED, ThrownSoil.GRAIN_DENSITY)).orElse(Double.NaN),
                wall.map(SkinOfHull::thickness).orElse(Double.NaN));
    }

    private Optional<JudgedCover> byThrownSoil(JudgedCover.Place place, HullHazards.Thrown thrown) {
        if (Double.isNaN(thrown.distance())) {
            return Optional.empty();
        }
        double grain = ThrownSoil.GRAIN_DENSITY * Math.PI / 6 * Math.pow(ThrownSoil.GRAIN, 3);
        double soil = SoilCrater.MARGIN * hits.soil().depth(new SoilCrater.Body(grain, ThrownSoil.SPEED,
                ThrownSoil.GRAIN_DENSITY));
        String blast = text("%.2g kg of soil on each upright square metre in the stay, from a pad %.0f m away",
                thrown.mass(), thrown.distance());
        if (skin.bareArea() > 0) {
            return Optional.of(JudgedCover.of(place, Hazard.THROWN_SOIL, new JudgedCover.Measure(
                    thrown.skin() * 1000, thrown.skinRequired() * 1000, "mm", true), soil,
                    "bare skin against grains of 1 mm at 2 km/s; " + blast));
        }
        return Optional.of(JudgedCover.of(place, Hazard.THROWN_SOIL, new JudgedCover.Measure(least, soil, "m", true),
                soil, "soil against grains of 1 mm at 2 km/s; " + blast));
    }

    private HullHazards.Heat heat() {
        SoilHeat soil = new SoilHeat(asked.conductivity(), SiteCover.density(plan, hull), asked.specificHeat());
        double notFelt = soil.notFelt(asked.surfaceSwing(), NOT_FELT);
        if (!(least > HullSkin.BARE)) {
            return new HullHazards.Heat(notFelt, asked.surfaceSwing(), asked.surfaceTemperature(), Double.NaN,
                    Double.NaN);
        }
        double lead = asked.conductivity() * SoilHeat.shapeFactor(hull.length(), hull.radius(), least);
        return new HullHazards.Heat(notFelt, soil.swing(asked.surfaceSwing(), least), asked.surfaceTemperature(),
                lead * (asked.cabinTemperature() - asked.surfaceTemperature()), KILOWATT / lead);
    }

    private JudgedCover byHeat(JudgedCover.Place place, double notFelt) {
        return Double.isNaN(place.there()) ? JudgedCover.open(place, Hazard.HEAT, "no soil lies over it, or its depth"
                + " is not known") : JudgedCover.of(place, Hazard.HEAT, new JudgedCover.Measure(place.there(), notFelt,
                "m", true), notFelt, "cover depth against the depth at which the lunar day is not felt");
    }

    private HullHazards.Quake quake() {
        double slope = plan.ground().regolith().stableSlope();
        double height = height();
        if (!(height > HullSkin.BARE && slope <= STEEPEST)) {
            return HullHazards.Quake.NONE;
        }
        ShakenSlope mound = ShakenSlope.of(height, slope, new SlopeStability.Soil(PlanSoil.of(plan.ground()).stated(),
                SiteCover.density(plan, hull), plan.ground().gravity()), asked.quakeAcceleration());
        return new HullHazards.Quake(height, mound.atRest(), mound.shaken(), mound.yield());
    }

    /** How high the mound stands over its bed along the hull's axis (m); NaN without a mound. */
    private double height() {
        double most = Double.NaN;
        if (cover.isEmpty()) {
            return most;
        }
        for (int i = 0; i <= ALONG; i++) {
            Point at = hull.lyingAt(site.natural().metres(), hull.length() * i / ALONG, 0);
            double rise = site.finished().height(at) - site.prepared().height(at);
            most = rise > most || Double.isNaN(most) ? rise : most;
        }
        return most;
    }

    private Optional<JudgedCover> byQuake(JudgedCover.Place place, HullHazards.Quake quake) {
        return Double.isNaN(quake.height()) ? Optional.empty() : Optional.of(JudgedCover.of(place, Hazard.MOONQUAKE,
                new JudgedCover.Measure(quake.shaken(), 1, "1", true), Double.NaN, text("factor of safety of the mound,"
                        + " %.1f m high, while the ground shakes with %.2f m/s2; %.2f at rest, it slides from %.2f"
                        + " m/s2",
                        quake.height(), asked.quakeAcceleration(), quake.atRest(), quake.yield())));
    }

    private static String text(String format, Object... parts) {
        return String.format(Locale.ROOT, format, parts);
    }
}
