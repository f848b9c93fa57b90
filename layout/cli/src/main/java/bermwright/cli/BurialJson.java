// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.answer.Answers;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.burial.HullBurial;
import bermwright.site.burial.HullSupports;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** What soil and pressure do to a hull's shell, for programs; endless factors are left out. */
final class BurialJson {
    /** Even steps along a hull at which shear and bending are told (1). */
    private static final int STEPS = 20;

    private BurialJson() {
    }

    static void put(ObjectNode entry, HullAssessment hull) {
        hull.burial().ifPresent(burial -> put(entry.putObject("burial"), burial));
    }

    private static void put(ObjectNode entry, HullBurial burial) {
        JsonObjects.put(entry, "shell_factor", burial.shellFactor());
        burial.longTube().ifPresent(p -> JsonObjects.put(entry, "buckling_long_tube_kPa", InUnits.kilopascals(p)));
        burial.heldEnds().ifPresent(p -> JsonObjects.put(entry, "buckling_held_ends_kPa", InUnits.kilopascals(p)));
        burial.bendingOff().ifPresent(share -> JsonObjects.put(entry, "bending_share_of_yield_unpressurised", share));
        ObjectNode seat = entry.putObject("seat");
        JsonObjects.put(seat, "load_kN_m", InUnits.kilonewtons(burial.seat().perLength()));
        JsonObjects.put(seat, "sinking_m", burial.seat().sinking());
        JsonObjects.put(seat, "half_width_m", burial.seat().halfWidth());
        JsonObjects.put(seat, "greatest_pressure_kPa", InUnits.kilopascals(burial.seat().greatest()));
        put(entry.putObject("supports"), burial.supports());
        ArrayNode lifts = entry.putArray("lifts");
        burial.lifts().forEach(lift -> JsonObjects.put(lifts.addObject(), Answers.LIFTS, lift));
    }

    private static void put(ObjectNode entry, HullSupports supports) {
        entry.put("kind", supports.kind().word());
        ArrayNode loads = entry.putArray("loads");
        supports.supports().forEach(support -> {
            ObjectNode row = loads.addObject();
            JsonObjects.put(row, Answers.SUPPORTS, support);
            support.soil().ifPresent(soil -> SoilJson.put(row.putObject("soil"), soil));
        });
        JsonObjects.put(entry, "bending_over_support_kN_m", InUnits.kilonewtons(supports.hogging()));
        JsonObjects.put(entry, "bending_between_kN_m", InUnits.kilonewtons(supports.sagging()));
        supports.beam().ifPresent(beam -> {
            JsonObjects.put(entry, "greatest_shear_kN", InUnits.kilonewtons(beam.greatestShear()));
            ArrayNode along = entry.putArray("beam");
            beam.shown(STEPS).forEach(place -> {
                ObjectNode row = along.addObject();
                JsonObjects.put(row, "along_m", place);
                JsonObjects.put(row, "shear_before_kN", InUnits.kilonewtons(beam.shearBefore(place)));
                JsonObjects.put(row, "shear_beyond_kN", InUnits.kilonewtons(beam.shearBeyond(place)));
                JsonObjects.put(row, "bending_kN_m", InUnits.kilonewtons(beam.moment(place)));
            });
        });
        supports.shell().ifPresent(shell -> {
            JsonObjects.put(entry, "stress_over_support_MPa", InUnits.megapascals(shell.overSupport()));
            JsonObjects.put(entry, "stress_between_MPa", InUnits.megapascals(shell.between()));
            JsonObjects.put(entry, "bearable_stress_MPa", InUnits.megapascals(shell.bearable()));
            JsonObjects.put(entry, "pressure_pull_MPa", InUnits.megapascals(shell.pull()));
            JsonObjects.put(entry, "bending_factor_pressure_on", shell.pressurisedFactor());
            JsonObjects.put(entry, "bending_factor_pressure_off", shell.bendingFactor());
            shell.horn().ifPresent(horn -> JsonObjects.put(entry, "saddle_horn_stress_MPa", InUnits.megapascals(horn)));
        });
    }
}
