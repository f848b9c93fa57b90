// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

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
     * Where each hull's and fill's soil comes from, in bank volume.
     *
     * @return the drawing
     */
    public Drawing sources() {
        List<String> all = soil.hauls().stream().map(Haul::from).distinct().toList();
        boolean many = all.size() > MOST_SOURCES;
        List<String> shown = many ? all.subList(0, MOST_SOURCES - 1) : all;
        List<String> parts = new ArrayList<>(shown.stream().map(id -> "from " + id).toList());
        if (many) {
            parts.add("from others");
        }
        List<Bars.Bar> bars = new ArrayList<>();
        for (String to : soil.hauls().stream().map(EarthworkSheets::destination).distinct().toList()) {
            List<Haul> hauls = soil.hauls().stream().filter(h -> destination(h).equals(to)).toList();
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
     * Soil moved against how far it is hauled: the volume that goes no farther than a distance.
     *
     * @return the drawing
     */
    public Drawing massHaul() {
        List<Haul> near = soil.hauls().stream().sorted(Comparator.comparingDouble(Haul::distance)).toList();
        List<Dot> bank = new ArrayList<>(List.of(new Dot(0, 0)));
        List<Dot> loose = new ArrayList<>(List.of(new Dot(0, 0)));
        double bankSum = 0;
        double looseSum = 0;
        for (Haul haul : near) {
            bank.add(new Dot(haul.distance(), bankSum));
            loose.add(new Dot(haul.distance(), looseSum));
            bankSum += haul.bank();
            looseSum += haul.loose();
            bank.add(new Dot(haul.distance(), bankSum));
            loose.add(new Dot(haul.distance(), looseSum));
        }
        return new Chart("mass-haul", "Mass haul: soil that goes no farther than a distance", "haul, one way (m)",
                "volume (m³)", List.of(new Chart.Curve("bank volume", bank, Ink.of(0)),
                new Chart.Curve("loose volume, in the haulers", loose, Ink.of(1))), List.of(), List.of(),
                Chart.Scale.LINEAR).drawing();
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
    Table volumes() {
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

    /** Every haul. */
    Table hauls() {
        List<List<String>> rows = new ArrayList<>();
        for (Haul h : soil.hauls()) {
            rows.add(List.of(h.from(), h.to(), purpose(h), h.machine(), Words.fixed(h.bank(), 1),
                    Words.fixed(h.loose(), 1), Words.fixed(h.placed(), 1), Words.tonnes(h.mass()),
                    Words.fixed(h.distance(), 0), Words.fixed(h.climb(), 1), Words.fixed(h.loads(), 0),
                    Words.fixed(h.machineHours(), 1), h.energy().isPresent()
                    ? Words.fixed(h.energy().getAsDouble() / MEGA, 0) : ""));
        }
        return new Table("hauls", "Hauls: which soil goes where" + Marks.of(soil.notes()), List.of(
                Column.words("from", "from"), Column.words("to", "to"), Column.words("for", "for"),
                Column.words("machine", "machine"), Column.number("bank_m3", "bank (m³)"),
                Column.number("loose_m3", "loose (m³)"), Column.number("placed_m3", "placed (m³)"),
                Column.number("mass_t", "mass (t)"), Column.number("distance_m", "one way (m)"),
                Column.number("climb_m", "rise and fall (m)"), Column.number("loads", "loads"),
                Column.number("machine_time_h", "machine hours (h)"), Column.number("energy_MJ", "driving (MJ)")),
                rows);
    }

    /** Hours and days by machine. */
    Table machines() {
        return new Table("machines", "Machines" + Marks.of(soil.notes()), List.of(Column.words("machine", "machine"),
                Column.number("machine_time_h", "machine hours (h)"),
                Column.number("work_days", "days with all of them at work")), soil.machineDays().stream().map(m ->
                List.of(m.machine(), Words.fixed(m.hours(), 0), Words.fixed(m.days(), 1))).toList());
    }

    private static String purpose(Haul haul) {
        return haul.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static String destination(Haul haul) {
        return haul.kind() == SoilNeed.Kind.COVER ? "cover of " + haul.to() : purpose(haul) + " at " + haul.to();
    }

    private static double bank(List<Haul> hauls) {
        return hauls.stream().mapToDouble(Haul::bank).sum();
    }
}
