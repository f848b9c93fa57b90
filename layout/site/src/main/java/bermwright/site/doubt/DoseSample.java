// SPDX-License-Identifier: Apache-2.0
package bermwright.site.doubt;

import bermwright.shielding.dose.Band;
import bermwright.shielding.dose.OrganDose;
import bermwright.shielding.fold.DoseUncertainty;
import bermwright.site.exposure.CrewDose;
import bermwright.site.exposure.JudgedLimit;
import bermwright.site.exposure.PersonDose;
import bermwright.site.exposure.SiteDose;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.LimitInForce;
import bermwright.site.plan.Person;
import bermwright.site.plan.Plan;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Doses of one sample: the best values moved by the bands of their own, each along its input.
 *
 * @param plan     the plan
 * @param stations doses at the stations
 * @param outside  dose in the open
 */
record DoseSample(Plan plan, List<Moved> stations, SiteDose.Outside outside) {
    /**
     * How far a sample is off, in standard deviations.
     *
     * @param cosmic  of the model of cosmic rays
     * @param event   of the model of the event
     * @param sun     of the sun; above zero quieter
     * @param density of the placed density
     * @param cover   of the depth of soil, by hull
     */
    record Off(double cosmic, double event, double sun, double density, Map<String, Double> cover) {
    }

    /** Dose at a station, moved. */
    record Moved(StationDose from, double cosmic, double event) implements CrewDose.Stay {
        @Override
        public String name() {
            return from.name();
        }

        @Override
        public StationDose.BySource in(String quantity) {
            StationDose.BySource best = from.in(quantity);
            return new StationDose.BySource(sure(best.cosmic(), cosmic), sure(best.event(), event));
        }

        @Override
        public double occupancyShare() {
            return from.occupancyShare();
        }

        @Override
        public boolean stormShelter() {
            return from.stormShelter();
        }

        double covered() {
            return in(StationDose.QUANTITY).cosmic().plus(in(StationDose.QUANTITY).event()).best();
        }
    }

    static DoseSample of(Plan plan, SiteDose dose, Off off) {
        List<Moved> stations = dose.stations().stream().map(s -> new Moved(s, cosmic(s, off), event(s, off))).toList();
        double open = factor(band(dose.outside().cosmic()), (off.cosmic + off.sun) / Math.sqrt(2));
        double storm = factor(band(dose.outside().event()), off.event);
        return new DoseSample(plan, stations, new SiteDose.Outside(sure(dose.outside().cosmic(), open),
                sure(dose.outside().event(), storm), organs(dose.outside(), open, storm)));
    }

    private static Map<OrganDose.Organ, StationDose.BySource> organs(SiteDose.Outside outside, double open,
            double storm) {
        Map<OrganDose.Organ, StationDose.BySource> moved = new EnumMap<>(OrganDose.Organ.class);
        outside.organs().forEach((organ, dose) -> moved.put(organ, new StationDose.BySource(sure(dose.cosmic(), open),
                sure(dose.event(), storm))));
        return moved;
    }

    private static double cosmic(StationDose s, Off off) {
        return factor(s.parts().uncertainties().cosmic(), off.cosmic, s, off);
    }

    private static double event(StationDose s, Off off) {
        return s.parts().uncertainties().event().map(u -> factor(u, off.event, s, off)).orElse(1.0);
    }

    /** Lighter soil and less of it give more dose; a band says only how much. */
    private static double factor(DoseUncertainty u, double model, StationDose s, Off off) {
        return factor(u.model(), model) * factor(u.sun(), off.sun) * factor(u.density(), -off.density)
                * factor(u.thickness(), -off.cover.getOrDefault(s.hull(), 0.0));
    }

    /** A band's factor at some standard deviations: low and high of the band at one less and one more. */
    static double factor(Band band, double deviations) {
        return deviations < 0 ? Math.pow(band.low(), -deviations) : Math.pow(band.high(), deviations);
    }

    private static Band band(StationDose.Spread spread) {
        return spread.best() > 0 ? new Band(Math.min(1, spread.low() / spread.best()),
                Math.max(1, spread.high() / spread.best())) : Band.NONE;
    }

    private static StationDose.Spread sure(StationDose.Spread spread, double factor) {
        double dose = spread.best() * factor;
        return new StationDose.Spread(dose, dose, dose);
    }

    /**
     * A named person under a limit.
     *
     * @param id    name of the person
     * @param limit the limit
     * @param unit  its unit, as people write it
     */
    record Under(String id, LimitInForce limit, String unit) {
    }

    /** Doses of the plan's named persons that limits count (Sv or Gy-Eq), where nothing is missing. */
    Map<Under, Double> people(List<JudgedLimit> limits) {
        Map<Under, Double> doses = new LinkedHashMap<>();
        for (JudgedLimit judged : limits) {
            LimitInForce limit = judged.limit();
            for (Person person : plan.exposure().people()) {
                PersonDose dose = PersonDose.of(plan.exposure(), new PersonDose.At(stations, outside,
                        limit.quantity()), person);
                if (dose.missing(limit).isEmpty() && judged.isJudged()) {
                    doses.put(new Under(person.id(), limit, judged.unit()), dose.against(limit).best());
                }
            }
        }
        return doses;
    }

    /** The crew's dose that a limit counts (Sv). */
    double crew(LimitInForce limit) {
        return CrewDose.of(plan.exposure(), stations, outside, limit.quantity()).against(limit).best();
    }
}
