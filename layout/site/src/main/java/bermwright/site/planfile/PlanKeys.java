// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import bermwright.site.plan.Anchor;
import bermwright.site.plan.BorrowGround;
import bermwright.site.plan.Corridor;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.EventFit;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.HazardPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.KeepOut;
import bermwright.site.plan.LandingPad;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.Machine;
import bermwright.site.plan.PassThrough;
import bermwright.site.plan.Person;
import bermwright.site.plan.Pivot;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Preparation;
import bermwright.site.plan.Rules;
import bermwright.site.plan.Seat;
import bermwright.site.plan.Station;
import bermwright.site.plan.Stockpile;
import bermwright.site.plan.Stowage;
import bermwright.site.plan.Tunnel;
import bermwright.site.plan.Wall;
import bermwright.site.plan.WorkStep;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The one table of the plan file: for each record of the plan its keys, in the order they are written.
 *
 * <p>Reader, writer, schema, error messages and the fields of screens all read this table and nothing else.
 */
public final class PlanKeys {
    private static final Map<Class<? extends Record>, List<Key>> TABLE = table();

    private PlanKeys() {
    }

    /**
     * The keys of an object of the plan.
     *
     * @param type the plan record
     * @return its keys in the order they are written
     * @throws IllegalArgumentException if the record is not one of the plan file's
     */
    public static List<Key> of(Class<? extends Record> type) {
        List<Key> keys = TABLE.containsKey(type) ? TABLE.get(type) : JudgementKeys.TABLE.get(type);
        if (keys == null) {
            throw new IllegalArgumentException(type.getName() + " is not an object of the plan file");
        }
        return keys;
    }

    /**
     * The key of an object that has a name.
     *
     * @param type the plan record
     * @param name the key's name
     * @return the key, empty where the object has none of that name
     */
    public static Optional<Key> key(Class<? extends Record> type, String name) {
        return of(type).stream().filter(k -> k.name().equals(name)).findFirst();
    }

    /**
     * All records the file has objects for.
     *
     * @return the records, the plan itself first
     */
    public static List<Class<? extends Record>> objects() {
        return List.copyOf(TABLE.keySet());
    }

    private static Map<Class<? extends Record>, List<Key>> table() {
        Map<Class<? extends Record>, List<Key>> table = new LinkedHashMap<>();
        table.put(Plan.class, SiteKeys.PLAN);
        table.put(GroundPlan.class, SiteKeys.GROUND);
        table.put(GroundPlan.Regolith.class, SiteKeys.REGOLITH);
        table.put(GroundPlan.DensityAtDepth.class, SiteKeys.DENSITY_AT_DEPTH);
        table.put(GroundPlan.StrengthAtDepth.class, SiteKeys.STRENGTH_AT_DEPTH);
        table.put(Hull.class, HullKeys.HULL);
        table.put(Hull.End.class, HullKeys.END);
        table.put(Hull.SkinLayer.class, HullKeys.SKIN_LAYER);
        table.put(Stowage.class, HullKeys.STOWAGE);
        table.put(Hull.Shell.class, HullKeys.SHELL);
        table.put(Pivot.class, HullKeys.PIVOT);
        table.put(LoweringGear.class, GearKeys.GEAR);
        table.put(LoweringGear.Lines.class, GearKeys.LINES);
        table.put(LoweringGear.Line.class, GearKeys.LINE);
        table.put(LoweringGear.Ends.class, GearKeys.ENDS);
        table.put(LoweringGear.Winch.class, GearKeys.WINCH);
        table.put(LoweringGear.Poles.class, GearKeys.POLES);
        table.put(LoweringGear.Head.class, GearKeys.HEAD);
        table.put(LoweringGear.Stay.class, GearKeys.STAY);
        table.put(LoweringGear.PullOver.class, GearKeys.PULL_OVER);
        table.put(LoweringGear.PivotHold.class, GearKeys.PIVOT_HOLD);
        table.put(LoweringGear.SideThrusters.class, GearKeys.SIDE_THRUSTERS);
        table.put(LoweringGear.Landing.class, GearKeys.LANDING);
        table.put(LoweringGear.Temperature.class, GearKeys.TEMPERATURE);
        table.put(LoweringGear.Light.class, GearKeys.LIGHT);
        table.put(Anchor.class, GearKeys.ANCHOR);
        table.put(Hatch.class, HullKeys.HATCH);
        table.put(Seat.class, HullKeys.SEAT);
        table.put(Station.class, HullKeys.STATION);
        table.put(CoverPlan.class, HullKeys.COVER);
        table.put(PassThrough.class, HullKeys.PASS_THROUGH);
        table.put(Wall.class, SiteKeys.WALL);
        table.put(Tunnel.class, SiteKeys.TUNNEL);
        table.put(KeepOut.class, SiteKeys.KEEP_OUT);
        table.put(Corridor.class, SiteKeys.CORRIDOR);
        table.put(LandingPad.class, SiteKeys.LANDING_PAD);
        table.put(Preparation.class, SiteKeys.PREPARATION);
        table.put(BorrowGround.class, SiteKeys.BORROW_GROUND);
        table.put(Stockpile.class, SiteKeys.STOCKPILE);
        table.put(Machine.class, WorkKeys.MACHINE);
        table.put(ExposurePlan.class, WorkKeys.EXPOSURE);
        table.put(EventFit.class, WorkKeys.EVENT_FIT);
        table.put(Person.class, PeopleKeys.PERSON);
        table.put(Person.Hours.class, PeopleKeys.HOURS);
        table.put(Person.Before.class, PeopleKeys.BEFORE);
        table.put(ExposurePlan.Limit.class, WorkKeys.LIMIT);
        table.put(HazardPlan.class, WorkKeys.HAZARDS);
        table.put(Rules.class, WorkKeys.RULES);
        table.put(WorkStep.class, WorkKeys.WORK_STEP);
        table.put(WorkStep.AsBuilt.class, WorkKeys.AS_BUILT);
        table.put(WorkStep.SurveyedEnd.class, WorkKeys.SURVEYED_END);
        return Collections.unmodifiableMap(table);
    }
}
