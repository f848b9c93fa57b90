// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.foundation.ModelNote;
import bermwright.report.drawing.Bars;
import bermwright.report.drawing.Chart;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.map.MapItem;
import bermwright.report.map.MapStyle;
import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.site.answer.Answers;
import bermwright.site.answer.AsBuiltAnswers;
import bermwright.site.burial.MachineOverHull;
import bermwright.site.haulage.DugGround;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.haulage.Haul;
import bermwright.site.haulage.SoilNeed;
import bermwright.site.plan.BorrowGround;
import bermwright.site.stages.GearDigging;
import bermwright.site.stages.SlopeChecks;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;

/**
 * The drawings and tables of soil and hauls, also for the editor.
 *
 * @param soil the earthworks
 */
public record EarthworkSheets(EarthworksResult soil) {
    private static final int MOST_SOURCES = 6;
    private static final double MEGA = 1e6;
    private static final String ENERGY = "haul-energy";

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
        return new Table("volumes", "Soil to be moved" + mark(), List.of(
                Column.words("soil", "soil"), Column.number("value", "value"), Column.words("unit", "unit")),
                Answers.EARTHWORKS.figures().stream().map(f -> List.of(f.heading(), f.text(soil),
                        f.unit().orElseThrow().symbol())).toList());
    }

    /**
     * How far mounds and pits are from sliding.
     *
     * @param checks the slopes
     * @return the table
     */
    public static Table slopes(SlopeChecks checks) {
        return AnswerSheets.table("slopes", Answers.SLOPES.meaning() + Marks.of(List.of(SlopeChecks.note())),
                Answers.SLOPES, checks.slopes());
    }

    /**
     * What must be dug for the gear where no preparation is stated for it.
     *
     * @param digging the digging
     * @return the table
     */
    public static Table digging(GearDigging digging) {
        return AnswerSheets.table("gear-digging", Answers.DIGGING.meaning() + Marks.of(List.of(GearDigging.note())),
                Answers.DIGGING, digging.items());
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
        return AnswerSheets.table(name, title + mark() + (driving().isEmpty() ? "" : "; driving energy is "
                + driving()), Answers.HAULS, shown);
    }

    /** Marks of all models but that of the driving energy, on which neither volumes nor hours rest. */
    private String mark() {
        return Marks.of(soil.notes().stream().filter(n -> !n.id().equals(ENERGY)).toList());
    }

    /** How little the driving energy can be leaned on; empty where it can. */
    private String driving() {
        return soil.notes().stream().filter(n -> n.id().equals(ENERGY) && n.status() != ModelNote.Status.COMPUTED)
                .map(n -> n.status().word().toUpperCase(Locale.ROOT)).findFirst().orElse("");
    }

    /** The borrow grounds: how deep each is dug, the level of its floor, what it gives and what is left. */
    public Table borrow(ElevationGrid ground, List<BorrowGround> grounds) {
        List<List<String>> rows = new ArrayList<>();
        for (DugGround dug : soil.dug()) {
            grounds.stream().filter(g -> g.id().equals(dug.from())).findFirst().ifPresent(g -> {
                double[] heights = g.area().corners().stream().mapToDouble(ground::height).filter(Double::isFinite)
                        .toArray();
                double low = DoubleStream.of(heights).min().orElse(Double.NaN);
                double high = DoubleStream.of(heights).max().orElse(Double.NaN);
                rows.add(List.of(dug.from(), Words.fixed(dug.usable(), 0), Words.fixed(dug.used(), 0),
                        Words.fixed(dug.usable() - dug.used(), 0), Words.fixed(dug.depth(), 2),
                        Words.fixed(g.greatestDepth(), 2), Words.fixed(low - dug.depth(), 2),
                        Words.fixed(high - dug.depth(), 2), Words.degrees(g.sideSlope()),
                        Words.fixed(g.keepClear(), 1)));
            });
        }
        return new Table("borrow", "Borrow grounds: the floor follows the ground at the depth dug; its lowest and"
                + " highest corner in heights of the elevation file", List.of(Column.words("from", "borrow ground"),
                Column.number("usable_m3", "usable, bank (m³)"), Column.number("used_m3", "taken, bank (m³)"),
                Column.number("left_m3", "left, bank (m³)"), Column.number("depth_m", "dug to depth (m)"),
                Column.number("greatest_depth_m", "deepest allowed (m)"),
                Column.number("floor_low_m", "floor, lowest corner (m)"),
                Column.number("floor_high_m", "floor, highest corner (m)"),
                Column.number("side_slope_deg", "sides (°)"), Column.number("keep_clear_m", "kept clear (m)")), rows);
    }

    /**
     * How much soil must lie over each hull before each machine may cross it.
     *
     * @param crossings the crossings
     * @return the table
     */
    public static Table crossings(List<MachineOverHull> crossings) {
        return AnswerSheets.table("machine-over-hull", AsBuiltAnswers.CROSSINGS.meaning(), AsBuiltAnswers.CROSSINGS,
                crossings);
    }

    /** Hours and days by machine. */
    public Table machines() {
        return AnswerSheets.table("machines", "Machines" + mark(), Answers.MACHINES,
                soil.machineDays());
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
