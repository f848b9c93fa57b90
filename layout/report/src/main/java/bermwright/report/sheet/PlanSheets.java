// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.report.drawing.Drawing;
import bermwright.report.map.DifferenceSheet;
import bermwright.report.map.MapItem;
import bermwright.report.map.MapSheet;
import bermwright.report.map.MapStyle;
import bermwright.report.map.MapWindow;
import bermwright.site.assessment.AsBuilt;
import bermwright.site.assessment.Assessment;
import bermwright.site.exposure.SiteCover;
import bermwright.site.footprint.HullShapes;
import bermwright.site.plan.WorkStep;
import bermwright.site.stages.SettingOutPoint;
import bermwright.site.stages.Stage;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The plan drawings of an assessment: the whole site, and a sheet for each hull; also for the editor.
 *
 * @param assessment the assessment
 */
public record PlanSheets(Assessment assessment) {
    private static final double MARGIN = 15;
    private static final double LEAST_SHEET = 60;

    /**
     * The whole site: everything planned, with what of the ground lies around it.
     *
     * @return the drawing
     */
    public Drawing site() {
        List<Point> places = new ArrayList<>(assessment.shapes().all().stream()
                .flatMap(shape -> shape.outline().corners().stream()).filter(frame()::contains).toList());
        assessment.findings().stream().map(Finding::place).flatMap(Optional::stream).filter(this::isNear)
                .forEach(places::add);
        if (places.isEmpty()) {
            places.add(frame().centre());
        }
        double margin = Math.max(MARGIN, LEAST_SHEET / 2);
        return sheet("plan-site", "Site plan: " + assessment.plan().title(), MapWindow.around(places, margin),
                withWays(SiteMap.items(assessment.shapes())));
    }

    /**
     * The sheet of one hull: body, sweep, gear, cover toe.
     *
     * @param hull the hull's outlines
     * @return the drawing
     */
    public Drawing hull(HullShapes hull) {
        MapWindow window = MapWindow.around(SiteMap.around(hull), MARGIN);
        return sheet(Drawing.name("plan", hull.hull().id()), "Hull " + hull.hull().id() + ": lay-down plan, azimuth "
                + Words.fixed(hull.hull().layDownAzimuth().degrees(), 1) + "° from grid north", window,
                SiteMap.items(assessment.shapes(), hull));
    }

    /**
     * The ways on foot to shelter, with what stands in the way.
     *
     * @return the drawing; empty where no way leads over open ground
     */
    public Optional<Drawing> shelters() {
        List<MapItem> ways = new EgressSheets(assessment.plan().hulls(), assessment.waysOut()).outside();
        if (ways.isEmpty()) {
            return Optional.empty();
        }
        List<MapItem> items = new ArrayList<>(SiteMap.standing(assessment.shapes()));
        List<Point> places = new ArrayList<>();
        ways.forEach(w -> places.addAll(w.places()));
        assessment.shapes().hulls().forEach(h -> places.addAll(items(h)));
        items.addAll(ways);
        return Optional.of(new MapSheet("ways-to-shelter", "Ways on foot to the nearest storm shelter",
                MapWindow.around(places.stream().filter(frame()::contains).toList(), MARGIN).shaped(0.9, 2.0),
                assessment.cover().map(SiteCover::finished).orElseGet(this::grid), trueNorth(), items, List.of())
                .drawing());
    }

    /**
     * The points to be staked out for one hull; those along a toe carry no name on the drawing.
     *
     * @param hull the hull's outlines
     * @return the drawing; empty where there is no such point
     */
    public Optional<Drawing> settingOut(HullShapes hull) {
        String id = hull.hull().id();
        List<MapItem> items = new ArrayList<>(SiteMap.bodies(hull));
        List<Point> places = new ArrayList<>();
        for (SettingOutPoint point : assessment.settingOut()) {
            if (point.subject().equals(id) && point.kind() != SettingOutPoint.Kind.AXIS_END) {
                boolean named = point.kind() != SettingOutPoint.Kind.TOE && point.kind() != SettingOutPoint.Kind.CREST;
                String name = point.id().startsWith(id + "-") ? point.id().substring(id.length() + 1) : point.id();
                items.add(new MapItem.Spot(MapStyle.SETTING_OUT, named ? name : "", point.place().plan()));
                places.add(point.place().plan());
            }
        }
        return places.isEmpty() ? Optional.empty() : Optional.of(new MapSheet(Drawing.name("setting-out", id), "Hull "
                + id + ": points to set out", MapWindow.around(places, MARGIN), grid(), trueNorth(), items, List.of())
                .drawing());
    }

    /**
     * Contours of the site once a step that places soil is done, around the hull it is placed on.
     *
     * @param stage the stage
     * @return the drawing; empty for other steps
     */
    public Optional<Drawing> stage(Stage stage) {
        Optional<HullShapes> hull = assessment.shapes().hull(stage.step().of());
        if (stage.step().step() != WorkStep.Kind.COVER || hull.isEmpty()) {
            return Optional.empty();
        }
        List<MapItem> items = new ArrayList<>();
        assessment.shapes().hulls().stream().filter(h -> stage.lying().contains(h.hull().id()))
                .forEach(h -> items.addAll(SiteMap.bodies(h)));
        List<Point> places = items(hull.get());
        String height = Words.said(stage.coverHeights().getOrDefault(stage.step().of(), 0.0), "m");
        return Optional.of(new MapSheet(Drawing.name("contours", stage.step().id()), "After " + stage.step().id()
                + ": hull " + stage.step().of() + " covered up to " + height + " over its bed", MapWindow.around(places,
                MARGIN), stage.surface(), trueNorth(), items, List.of()).drawing());
    }

    /**
     * Where the ground was surveyed lower or higher than the plan has it after a step.
     *
     * @param survey what was surveyed
     * @return the drawing; empty where no height can be held against the plan's
     */
    public Optional<Drawing> difference(AsBuilt survey) {
        double level = assessment.plan().rules().asBuiltLevel();
        GridFrame frame = survey.apart().frame();
        double[] apart = survey.apart().heights();
        List<Point> places = new ArrayList<>();
        Optional<HullShapes> hull = assessment.shapes().hull(survey.step().of());
        hull.ifPresent(h -> SiteMap.bodies(h).stream().filter(i -> i.style() != MapStyle.COVER_TOE)
                .forEach(i -> places.addAll(i.places())));
        boolean isKnown = false;
        for (int node = 0; node < apart.length; node++) {
            isKnown |= Double.isFinite(apart[node]);
            if (Math.abs(apart[node]) > level || hull.isEmpty() && Double.isFinite(apart[node])) {
                places.add(new Point(frame.east(node % frame.columns()), frame.north(node / frame.columns())));
            }
        }
        List<MapItem> items = assessment.shapes().hulls().stream().flatMap(h -> SiteMap.bodies(h).stream()).toList();
        return isKnown ? Optional.of(new DifferenceSheet(Drawing.name("as-built", survey.step().id()),
                "Surveyed less planned height after " + survey.step().id(), MapWindow.around(places, MARGIN),
                survey.apart(), level, trueNorth(), items).drawing()) : Optional.empty();
    }

    private static List<Point> items(HullShapes hull) {
        return SiteMap.bodies(hull).stream().flatMap(i -> i.places().stream()).toList();
    }

    private Drawing sheet(String name, String title, MapWindow window, List<MapItem> items) {
        MapWindow shown = window.shaped(0.9, 2.0);
        List<MapItem> inside = items.stream().filter(item -> touches(shown, item.places())).toList();
        return new MapSheet(name, title, shown, grid(), trueNorth(), inside,
                Numbered.of(assessment.findings())).drawing();
    }

    private List<MapItem> withWays(List<MapItem> items) {
        List<MapItem> all = new ArrayList<>(items);
        assessment.earthworks().ifPresent(soil -> all.addAll(new EarthworkSheets(soil).ways()));
        return all;
    }

    private Optional<Azimuth> trueNorth() {
        return assessment.ground().file().scale().trueNorth();
    }

    private ElevationGrid grid() {
        return assessment.ground().grid();
    }

    private GridFrame frame() {
        return grid().frame();
    }

    private boolean isNear(Point place) {
        GridFrame frame = frame();
        double wide = frame.eastEdge() - frame.west();
        return place.distance(frame.centre()) < 2 * wide;
    }

    private static boolean touches(MapWindow window, List<Point> places) {
        double west = places.stream().mapToDouble(Point::east).min().orElse(0);
        double east = places.stream().mapToDouble(Point::east).max().orElse(0);
        double south = places.stream().mapToDouble(Point::north).min().orElse(0);
        double north = places.stream().mapToDouble(Point::north).max().orElse(0);
        return east >= window.southwest().east() && west <= window.northeast().east()
                && north >= window.southwest().north() && south <= window.northeast().north();
    }
}
