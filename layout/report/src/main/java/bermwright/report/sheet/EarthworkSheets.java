// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.report.drawing.Bars;
import bermwright.report.drawing.Chart;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.map.MapItem;
import bermwright.report.map.MapStyle;
import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.haulage.Haul;
import bermwright.site.haulage.SoilNeed;
import bermwright.site.stages.GearDigging;
import bermwright.site.stages.SlopeChecks;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * The drawings and tables of soil and hauls, also for the editor.
 *
 * @param soil the earthworks
 */
public record EarthworkSheets(EarthworksResult soil) {
    private static final int MOST_SOURCES = 6;
    private static final double MEGA = 1e6;

    /**
     * Where each hull's and fill's soil comes from, in bank volume; ramps are left out, for they go back.
     *
     * @return the drawing
     */
    public Drawing sources() {
        List<String> all = lasting().stream().map(Haul::from).distinct().toList();
        boolean many = all.size() > MOST_SOURCES;
        List<String> shown = many ? all.subList(0, MOST_SOURCES - 1) : all;
        List<String> parts = new ArrayList<>(shown.stream().map(id -> "from " + id).toList());
        if (many) {
            parts.add("from others");
        }
        List<Bars.Bar> bars = new ArrayList<>();
        for (String to : lasting().stream().map(EarthworkSheets::destination).distinct().toList()) {
            List<Haul> hauls = lasting().stream().filter(h -> destination(h).equals(to)).toList();
            List<Double> values = new ArrayList<>();
            shown.forEach(from -> values.add(bank(hauls.stream().filter(h -> h.from().equals(from)).toList())));
            if (many) {
                values.add(bank(hauls.stream().filter(h -> !shown.contains(h.from())).toList()));
            }
            bars.add(new Bars.Bar(to, values, Double.NaN, Double.NaN, Words.fixed(bank(hauls), 0) + " m³ bank"));
        }
        return new Bars("soil-sources", "Where the soil comes from", "bank volume (m³)", parts, bars, List.of())
                .drawing();
    }

    /**
     * How far each cubic metre that stays is hauled, the nearest first; the area under the curve is the haul work.
     *
     * @return the drawing
     */
    public Drawing massHaul() {
        List<Dot> bank = new ArrayList<>();
        double sum = 0;
        for (Haul haul : lasting().stream().sorted(Comparator.comparingDouble(Haul::distance)).toList()) {
            bank.add(new Dot(sum, haul.distance()));
            sum += haul.bank();
            bank.add(new Dot(sum, haul.distance()));
        }
        return new Chart("mass-haul", "Mass haul: how far the soil goes, the nearest first", "bank volume (m³)",
                "haul, one way (m)", List.of(new Chart.Curve("soil hauled; the area under the line is the haul work",
                bank, Ink.of(0))), List.of(), List.of(), Chart.Scale.LINEAR).drawing();
    }

    /**
     * The ways soil is hauled along.
     *
     * @return a line for each haul with a known way
     */
    public List<MapItem> ways() {
        return soil.hauls().stream().filter(h -> h.way().size() > 1 && h.kind() != SoilNeed.Kind.RAMP_REMOVED)
                .map(h -> (MapItem) new MapItem.Line(MapStyle.HAUL_WAY, "", h.way())).distinct().toList();
    }

    /** Bank, loose and placed volumes with their spread. */
    public Table volumes() {
        List<List<String>> rows = List.of(
                List.of("placed, as it stands in the covers", Words.fixed(soil.placed(), 0), "", ""),
                List.of("bank, as it lies before digging", Words.fixed(soil.bank(), 0),
                        Words.fixed(soil.spread().bank(), 0), ""),
                List.of("loose, in the haulers", Words.fixed(soil.loose(), 0), Words.fixed(soil.spread().loose(), 0),
                        Words.tonnes(soil.mass())),
                List.of("left in the borrow grounds, bank", Words.fixed(soil.borrowLeft(), 0), "", ""),
                List.of("short, bank", Words.fixed(soil.shortage(), 0), "", ""));
        return new Table("volumes", "Soil to be moved" + Marks.of(soil.notes()), List.of(
                Column.words("state", "state"), Column.number("volume_m3", "volume (m³)"),
                Column.number("spread_m3", "one standard deviation (m³)"), Column.number("mass_t", "mass (t)")), rows);
    }

    /**
     * How far mounds and pits are from sliding.
     *
     * @param checks the slopes
     * @return the table
     */
    public static Table slopes(SlopeChecks checks) {
        return new Table("slopes", "Slopes: how many times they stand against a slide" + Marks.of(List.of(
                SlopeChecks.note())), List.of(Column.words("of", "of"), Column.words("kind", "which is a"),
                Column.number("height_m", "height (m)"), Column.number("angle_deg", "side slope (°)"),
                Column.number("factor", "on the worst circle"),
                Column.number("face_factor", "in the face, without cohesion"),
                Column.number("circle_radius_m", "radius of that circle (m)")), checks.slopes().stream().map(s ->
                List.of(s.subject(), s.kind(), Words.fixed(s.height(), 1), Words.degrees(s.angle()),
                        Words.fixed(s.circle(), 2), Words.fixed(s.plane(), 2), Words.fixed(s.radius(), 1))).toList());
    }

    /**
     * What must be dug for the gear where no preparation is stated for it.
     *
     * @param digging the digging
     * @return the table
     */
    public static Table digging(GearDigging digging) {
        return new Table("gear-digging", "Dug for the gear, derived for want of a stated preparation"
                + Marks.of(List.of(GearDigging.note())), List.of(Column.words("hull", "hull"),
                Column.words("part", "dug for"), Column.number("cut_m3", "cut, in place (m³)"),
                Column.number("fill_m3", "filled in, placed (m³)")), digging.items().stream().map(i -> List.of(
                i.hull(), i.part(), Words.fixed(i.cut(), 1), Words.fixed(i.fill(), 1))).toList());
    }

    /** Every haul of soil that stays where it is placed. */
    public Table hauls() {
        return hauls("hauls", "Hauls: which soil goes where", lasting());
    }

    /** Hauls for ramps, there and back. */
    public Table ramps() {
        return hauls("ramps", "Ramps: soil carried to the covers and back", ramped());
    }

    /**
     * What the ramps are, in words.
     *
     * @return one sentence or two; empty where no ramp is needed
     */
    public String rampWords() {
        if (ramped().isEmpty()) {
            return "";
        }
        double there = ramped().stream().filter(h -> h.kind() == SoilNeed.Kind.RAMP).mapToDouble(Haul::placed).sum();
        double hours = ramped().stream().mapToDouble(h -> h.machineHours().orElse(0)).sum();
        return "The machines climb less steeply than the covers stand, so each cover takes a ramp along its flank:"
                + " together " + Words.fixed(there, 0) + " m³, carried there before the crown and back afterwards in "
                + Words.fixed(hours, 0) + " machine hours. They are in the hours and days, not in the volumes above.";
    }

    private List<Haul> lasting() {
        return soil.hauls().stream().filter(h -> !isRamp(h)).toList();
    }

    private List<Haul> ramped() {
        return soil.hauls().stream().filter(EarthworkSheets::isRamp).toList();
    }

    private static boolean isRamp(Haul haul) {
        return haul.kind() == SoilNeed.Kind.RAMP || haul.kind() == SoilNeed.Kind.RAMP_REMOVED;
    }

    private Table hauls(String name, String title, List<Haul> shown) {
        List<List<String>> rows = new ArrayList<>();
        for (Haul h : shown) {
            rows.add(List.of(h.from(), h.to(), purpose(h), h.machine(), Words.fixed(h.bank(), 1),
                    Words.fixed(h.loose(), 1), Words.fixed(h.placed(), 1), Words.tonnes(h.mass()),
                    Words.fixed(h.distance(), 0), Words.fixed(h.climb(), 1), Words.fixed(h.loads(), 0),
                    Words.fixed(h.machineHours(), 1), h.energy().isPresent()
                    ? Words.fixed(h.energy().getAsDouble() / MEGA, 0) : ""));
        }
        return new Table(name, title + Marks.of(soil.notes()), List.of(
                Column.words("from", "from"), Column.words("to", "to"), Column.words("for", "for"),
                Column.words("machine", "machine"), Column.number("bank_m3", "bank (m³)"),
                Column.number("loose_m3", "loose (m³)"), Column.number("placed_m3", "placed (m³)"),
                Column.number("mass_t", "mass (t)"), Column.number("distance_m", "one way (m)"),
                Column.number("climb_m", "rise and fall (m)"), Column.number("loads", "loads"),
                Column.number("machine_time_h", "machine hours (h)"), Column.number("energy_MJ", "driving (MJ)")),
                rows);
    }

    /** Hours and days by machine. */
    public Table machines() {
        return new Table("machines", "Machines" + Marks.of(soil.notes()), List.of(Column.words("machine", "machine"),
                Column.number("machine_time_h", "machine hours (h)"),
                Column.number("work_days", "days with all of them at work")), soil.machineDays().stream().map(m ->
                List.of(m.machine(), Words.fixed(m.hours(), 0), Words.fixed(m.days(), 1))).toList());
    }

    private static String purpose(Haul haul) {
        return haul.kind() == SoilNeed.Kind.RAMP_REMOVED ? "ramp, taken off"
                : haul.kind() == SoilNeed.Kind.RAMP ? "ramp, put up" : haul.kind().name().toLowerCase(Locale.ROOT);
    }

    private static String destination(Haul haul) {
        return haul.kind() == SoilNeed.Kind.COVER ? "cover of " + haul.to() : purpose(haul) + " at " + haul.to();
    }

    private static double bank(List<Haul> hauls) {
        return hauls.stream().mapToDouble(Haul::bank).sum();
    }
}
