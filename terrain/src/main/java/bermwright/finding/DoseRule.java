// SPDX-License-Identifier: Apache-2.0
package bermwright.finding;

import static bermwright.finding.Finding.Level.NOTE;
import static bermwright.finding.Finding.Level.REFUSE;
import static bermwright.finding.Finding.Level.WARN;
import static bermwright.finding.Rule.Danger.COST;
import static bermwright.finding.Rule.Danger.PEOPLE;

import bermwright.finding.Finding.Level;

/** Dose at the stations and the limits it is held against. */
public enum DoseRule implements Rule {
    STATION_OUTSIDE_HULL(REFUSE, REFUSE, PEOPLE, "place of a station outside its hull", "m",
            "length_m or diameter_m of the hull in the plan", "Put the station inside the hull."),
    STATION_GROUND_UNKNOWN(REFUSE, REFUSE, PEOPLE, "no ground known under the station", "-",
            "extent of the elevation file", "Survey the gap or move the hull."),
    DOSE_LIMIT(REFUSE, WARN, PEOPLE, "dose of the crew against a limit", "mSv", "limits of the plan",
            "Make the cover thicker, shorten the stay, or move people to better covered stations."),
    DOSE_LIMIT_FULL_TIME(NOTE, NOTE, PEOPLE, "dose at one station all the time against a limit", "mSv",
            "limits of the plan", "Nobody may stay there all the time."),
    DOSE_CAREER(NOTE, NOTE, PEOPLE, "dose of this stay against a limit over a career", "mSv", "limits of the plan",
            "Name the persons in exposure.people with what each received before, and keep their records."),
    DOSE_LIMIT_NOT_JUDGED(REFUSE, WARN, PEOPLE, "limit that no dose is held against", "mSv", "limits of the plan",
            "Give what is missing."),
    DOSE_NO_LIMIT(REFUSE, REFUSE, PEOPLE, "people without a dose limit", "-", "limits of the plan",
            "State the limits that hold in exposure.limits, by value or by the name of a published one."),
    DOSE_ABOVE_PUBLISHED(REFUSE, WARN, PEOPLE, "dose of the crew against a published limit", "mSv",
            "the published limit", "State the limit that holds, make the cover thicker or shorten the stay."),
    DOSE_UPRIGHT_UNKNOWN(NOTE, NOTE, COST, "dose in the bare standing hull that is not known", "-",
            "ground under the hull as it landed", "Survey the ground where the hull lands."),
    DOSE_LIMIT_NOT_BY_REVIEWER(WARN, WARN, PEOPLE,
            "limit judged by the built-in calculation beside a reviewer's table", "mSv", "limits of the plan",
            "Hand over tables of that quantity in more_responses."),
    DOSE_LIMIT_DIFFERS_FROM_PUBLISHED(WARN, WARN, PEOPLE, "limit that differs from the published one it names", "mSv",
            "the published limit", "Give one of both."),
    DOSE_LIMIT_ABOVE_PUBLISHED(NOTE, NOTE, PEOPLE, "limit of the plan against a published one", "mSv",
            "the published limit", "Have the limit confirmed."),
    DOSE_EXTRAPOLATED(WARN, WARN, PEOPLE, "share of dose through more soil than the response covers", "1",
            "our own planning figure", "Hand over a response that reaches deeper."),
    DOSE_BEYOND_TABLE(NOTE, NOTE, PEOPLE, "share of dose through more soil than the response covers", "1",
            "our own planning figure", "Take the dose as an upper bound."),
    DOSE_UPRIGHT_UNSETTLED(WARN, WARN, COST, "share of the dose in the standing hull that is still open", "1",
            "our own setting: rays are added until the dose changes by less",
            "Take that dose, and what the cover takes off it, as known to that only."),
    DOSE_UNSETTLED(WARN, WARN, PEOPLE, "share of the dose that is still open after all directions", "1",
            "our own setting: rays are added until the dose changes by less", "Take the dose as known to that only."),
    DOSE_BEYOND_GROUND(NOTE, NOTE, COST, "share of the sky seen through soil past the elevation file", "1",
            "our own planning figure", "Give a larger elevation file."),
    DOSE_WORSE_THAN_UPRIGHT(WARN, WARN, PEOPLE, "dose under the cover against that in the standing hull", "mSv",
            "dose at the same place of the bare standing hull", "Make the cover thicker or leave it away."),
    DOSE_THINNER_IS_BETTER(WARN, WARN, PEOPLE, "cosmic dose under the cover against that under less soil", "mSv",
            "the covers raised and folded again, thinner", "Make the cover much thicker, or thinner."),
    DOSE_OCCUPANCY(NOTE, NOTE, PEOPLE, "sum of the occupancy shares", "1",
            "occupancy_share of the stations in the plan, together the whole time", "Let the shares add up to one."),
    DOSE_NO_SHELTER(WARN, WARN, PEOPLE, "no station marked as storm shelter", "-",
            "storm_shelter of the stations in the plan", "Mark the shelter."),
    DOSE_TABLE_UNUSED(NOTE, NOTE, COST, "table without a limit on its quantity", "-", "more_responses of the plan",
            "Give a limit on that quantity or take the table away."),
    DOSE_MATERIAL_UNKNOWN(WARN, WARN, PEOPLE, "material that is not known here", "-", "materials known here",
            "Name a known material of like composition."),
    DOSE_EVENT_UNKNOWN(REFUSE, REFUSE, PEOPLE, "event that is not known here", "-", "events known here",
            "Name a known event or give its spectrum."),
    DOSE_EVENT_CONTINUED(WARN, NOTE, PEOPLE, "share of an event's dose from energies beyond what is known of it", "1",
            "our own planning figure", "Give the event to higher energies, or plan with one that is known there."),
    DOSE_WAY_NOT_COUNTED(WARN, NOTE, PEOPLE, "event dose of each minute before the crew is in the shelter", "mSv",
            "what the tightest limit on the event leaves, over half an hour", "Say in exposure.to_shelter_min how long"
            + " it takes until all are in the shelter."),
    DOSE_PERSON_UNKNOWN(REFUSE, REFUSE, PEOPLE, "named person without a dose", "-", "people of the plan",
            "Mend the person's hours, stations or shelter."),
    DOSE_PERSON_HOURS(NOTE, NOTE, PEOPLE, "hours of a person's day that the plan gives", "h", "hours of a day",
            "Give the person's other hours."),
    DOSE_EVENT_NOT_WORST(WARN, NOTE, PEOPLE, "dose of another event that plans are commonly made for", "mSv",
            "dose of the plan's event at the same place", "Plan with the event that is worst behind this cover."),
    DOSE_EVENT_BEGINS_LATE(WARN, WARN, PEOPLE, "energy at which an event's table begins", "MeV",
            "range of protons: 30 MeV in 1 g/cm2 of wall", "Give the event from 30 MeV or less.");
    private final Entry entry;

    DoseRule(Level worst, Level mildest, Danger danger, String... words) {
        this.entry = Entry.of(worst, mildest, danger, words);
    }

    @Override
    public Entry entry() {
        return entry;
    }

    @Override
    public char letter() {
        return 'D';
    }
}
