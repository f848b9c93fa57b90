// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.shielding.dose.DoseLimit;
import bermwright.shielding.fold.DoseUncertainty;
import bermwright.site.answer.Answers;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.exposure.JudgedLimit;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.LimitInForce;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Doses, for programs. */
final class DoseJson {
    private static final double MILLI = 1000;

    private DoseJson() {
    }

    static void put(ObjectNode entry, HullAssessment hull, ExposurePlan exposure) {
        ArrayNode stations = entry.putArray("stations");
        boolean namesEvent = exposure.event().isPresent() || exposure.eventSpectrumFile().isPresent();
        hull.stations().forEach(station -> put(stations.addObject(), station, namesEvent));
    }

    private static void put(ObjectNode entry, StationDose dose, boolean namesEvent) {
        JsonObjects.put(entry, Answers.STATIONS, dose);
        entry.put("quantity", StationDose.QUANTITY);
        if (!namesEvent) {
            milli(entry, "event_mSv", dose.parts().event());
        }
        entry.set("place", JsonObjects.point(dose.place()));
        entry.put("storm_shelter", dose.stormShelter());
        ObjectNode spread = entry.putObject("spread");
        put(spread.putObject("cosmic"), dose.parts().cosmicAll(), dose.parts().uncertainties().cosmic());
        dose.parts().uncertainties().event().ifPresent(d -> put(spread.putObject("event"), dose.parts().eventAll(), d));
    }

    private static void put(ObjectNode entry, StationDose.Spread dose, DoseUncertainty uncertainty) {
        milli(entry, "low_mSv", dose.low());
        milli(entry, "best_mSv", dose.best());
        milli(entry, "high_mSv", dose.high());
        put(entry, uncertainty);
    }

    /** What low and high are made of, and which term is the greatest. */
    static void put(ObjectNode entry, DoseUncertainty uncertainty) {
        entry.put("greatest", uncertainty.greatest().word());
        ArrayNode terms = entry.putArray("terms");
        for (DoseUncertainty.Term term : DoseUncertainty.Term.values()) {
            ObjectNode one = terms.addObject().put("term", term.word());
            JsonObjects.put(one, "low_factor", uncertainty.of(term).low());
            JsonObjects.put(one, "high_factor", uncertainty.of(term).high());
        }
    }

    /** The plan's limits and the doses held against them. */
    static void putJudged(ObjectNode page, Assessment assessment) {
        ArrayNode limits = page.putArray("limits");
        assessment.dose().ifPresent(dose -> dose.limits().forEach(judged -> put(limits.addObject(), judged)));
    }

    private static void put(ObjectNode entry, JudgedLimit judged) {
        LimitInForce limit = judged.limit();
        limit.published().ifPresent(p -> entry.put("published", p.name()));
        entry.put("quantity", limit.quantity()).put("from", limit.from().word()).put("over", limit.over().word());
        milli(entry, "limit_mSv", limit.limit());
        entry.put("unit", judged.unit()).put("source", limit.source());
        limit.published().ifPresent(p -> entry.put("confirm", DoseLimit.CONFIRM));
        entry.put("judged", judged.isJudged());
        entry.put("verdict", judged.verdict().word());
        if (!judged.isJudged()) {
            entry.put("reason", judged.why());
        }
        ArrayNode by = entry.putArray("calculated_by");
        judged.by().forEach(b -> by.addObject().put("source", b.source()).put("model", b.model())
                .put("by_reviewer", b.isReviewed()));
        ArrayNode doses = entry.putArray("doses");
        judged.held().forEach(held -> {
            ObjectNode one = doses.addObject().put("who", held.who());
            milli(one, "best_mSv", held.dose().best());
            milli(one, "low_mSv", held.dose().low());
            milli(one, "high_mSv", held.dose().high());
            one.put("verdict", held.verdict().word());
            if (!held.reason().isEmpty()) {
                one.put("reason", held.reason());
            }
        });
    }

    /** Limits of published standards. */
    static void putLimits(ObjectNode page, Assessment assessment) {
        ArrayNode limits = page.putArray("published_limits");
        assessment.dose().ifPresent(dose -> dose.publishedLimits().forEach(limit -> {
            ObjectNode entry = limits.addObject().put("name", limit.name()).put("quantity", limit.quantity())
                    .put("from", limit.from()).put("over", limit.over());
            JsonObjects.put(entry, "limit", limit.limit() * MILLI);
            entry.put("unit", "m" + limit.unit()).put("source", limit.source()).put("confirm", DoseLimit.CONFIRM);
        }));
    }

    /** The crew's dose, the hours outside on a line of their own. */
    static void putCrew(ObjectNode page, Assessment assessment) {
        ExposurePlan exposure = assessment.plan().exposure();
        assessment.dose().flatMap(d -> d.crew(exposure)).ifPresent(crew -> {
            ObjectNode entry = page.putObject("crew").put("quantity", StationDose.QUANTITY);
            JsonObjects.put(entry, "hours_outside_a_day", exposure.hoursOutsideADay());
            milli(entry, "inside_mSv", crew.inside().best());
            milli(entry, "outside_mSv", crew.outside().best());
            if (assessment.dose().get().hasEvent()) {
                milli(entry, "event_mSv", crew.event().best());
            }
            milli(entry, "best_mSv", crew.all().best());
            milli(entry, "low_mSv", crew.all().low());
            milli(entry, "high_mSv", crew.all().high());
        });
    }

    /** The dose on open ground. */
    static void putOutside(ObjectNode page, Assessment assessment) {
        assessment.dose().ifPresent(dose -> {
            ObjectNode outside = page.putObject("open_ground");
            milli(outside, "cosmic_mSv", dose.outside().cosmic().best());
            if (dose.hasEvent()) {
                milli(outside, "event_mSv", dose.outside().event().best());
            }
            page.put("event", dose.event());
        });
    }

    private static void milli(ObjectNode entry, String key, double sieverts) {
        JsonObjects.put(entry, key, InUnits.millisieverts(sieverts));
    }
}
