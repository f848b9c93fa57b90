// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.ContourSet;
import bermwright.editor.model.FigureLook;
import bermwright.editor.model.MapCamera;
import bermwright.editor.model.MapFigure;
import bermwright.editor.model.MapHands;
import bermwright.editor.model.ScaleBar;
import bermwright.editor.model.Workbench;
import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.foundation.Point;
import bermwright.site.assessment.HullAtTilt;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import javafx.geometry.Point2D;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** Everything that lies over the ground: figures, handles, numbered findings, scale bar and both norths. */
final class MapOverlay {
    private static final double[] STALE_DASHES = {3, 2.5};
    private static final double RIM = 18;
    private static final double BAR_SHARE = 0.22;
    /** How far a handle or the end of a line reaches around its place (pixels). */
    private static final double HANDLE_REACH = 12;
    /** Findings nearer to each other than so many times the text's size make a crowd (1). */
    private static final double CROWD = 5;
    /** A hull shorter on the map than so many times the text's size has its findings gathered (1). */
    private static final double GATHERED = 16;
    /** So many of a crowd are drawn, the others counted (1). */
    private static final int MOST = 6;

    private final MapLook look;
    private final MapColours style;
    private final FigurePainter painter;

    MapOverlay(MapLook look) {
        this.look = look;
        this.style = MapColours.of(look.isDark());
        this.painter = new FigurePainter(style, look.textSize());
    }

    MapColours style() {
        return style;
    }

    /**
     * What is drawn.
     *
     * @param bench what is worked on
     * @param hands the hand
     * @param stage what is on the site at the stage looked at
     */
    record Scene(Workbench bench, MapHands hands, Predicate<MapFigure> stage) {
    }

    /**
     * Figures and findings that are drawn together.
     *
     * @param figures  the figures in the order they are drawn
     * @param findings the findings, the worst first
     */
    record Layer(List<MapFigure> figures, List<Numbered> findings) {
    }

    /** All figures and findings there are to be drawn. */
    Layer all(Scene scene) {
        return new Layer(scene.bench().figures().stream().filter(scene.stage()).filter(this::isShown).toList(),
                look.hasMarks() ? scene.bench().shownFindings().stream().filter(n -> n.finding().place().isPresent())
                        .toList() : List.of());
    }

    BadgeSpots spots() {
        return new BadgeSpots(2 * look.textSize());
    }

    /** A finding's badge, the place it tells of and the spot where it is drawn (pixels). */
    record Badge(Numbered finding, Point2D place, Point2D spot) {
    }

    /**
     * Findings that have no room of their own, the spot where their number is drawn (pixels), and the hull's middle
     * where they are all those of a hull.
     */
    record Crowd(List<Numbered> findings, Point2D spot, Optional<Point2D> hull) {
        String words() {
            return (hull.isPresent() ? "" : "+") + findings.size();
        }
    }

    /** The badges of a layer and where they stand, and which findings are of the plan before. */
    record Badges(List<Badge> badges, List<Crowd> crowds, Set<Finding> stale) {
        private boolean isStale(Crowd crowd) {
            return crowd.findings.stream().allMatch(n -> stale.contains(n.finding()));
        }
    }

    private static Set<Finding> stale(List<Numbered> findings, Workbench bench) {
        return bench.answers().unchecked(bench.plan()).isEmpty() ? Set.of() : findings.stream().map(Numbered::finding)
                .filter(f -> bench.answers().isStale(bench.plan(), f)).collect(Collectors.toSet());
    }

    /** Draws figures and findings. */
    void paint(GraphicsContext g, MapCamera camera, Layer layer, Badges badges, Workbench bench) {
        painter.paint(g, camera, layer.figures(), bench.allPicked());
        g.setLineDashes();
        findings(g, badges, bench.pickedFinding());
    }

    /** Draws everything there is. */
    void paint(GraphicsContext g, MapCamera camera, Scene scene) {
        Layer all = all(scene);
        painter.paint(g, camera, all.figures(), scene.bench().allPicked());
        hand(g, camera, scene);
        findings(g, badges(camera, all.findings(), scene.bench(), spots()), scene.bench().pickedFinding());
    }

    /** The finding whose badge is at a place of the map (pixels). */
    Optional<Numbered> findingAt(MapCamera camera, Scene scene, double x, double y) {
        return badges(camera, all(scene).findings(), scene.bench(), spots()).badges().stream()
                .filter(badge -> badge.spot().distance(x, y) <= look.textSize()).map(Badge::finding).findFirst();
    }

    /** The findings that are only counted at a place of the map (pixels). */
    List<Numbered> crowdAt(MapCamera camera, Scene scene, double x, double y) {
        return badges(camera, all(scene).findings(), scene.bench(), spots()).crowds().stream()
                .filter(crowd -> crowd.spot().distance(x, y) <= look.textSize()).map(Crowd::findings).findFirst()
                .orElse(List.of());
    }

    /** How far figures and badges reach over the camera's picture. */
    void reach(Reach reach, MapCamera camera, Layer layer, Badges all) {
        painter.reach(reach, camera, layer.figures());
        double badge = 1.5 * look.textSize();
        for (Badge drawn : all.badges()) {
            reach.add(drawn.spot().getX(), drawn.spot().getY(), badge);
            reach.add(drawn.place().getX(), drawn.place().getY(), badge);
        }
        for (Crowd crowd : all.crowds()) {
            reach.add(crowd.spot().getX(), crowd.spot().getY(), 1.5 * badge);
            // A gathered number hangs on a line from its hull.
            crowd.hull().ifPresent(middle -> reach.add(middle.getX(), middle.getY(), badge));
        }
    }

    /** How far what the hand can take hold of reaches. */
    void reach(Reach reach, MapCamera camera, Scene scene) {
        scene.hands().snapLine().ifPresent(line -> {
            reach.add(camera, line.from(), HANDLE_REACH);
            reach.add(camera, line.to(), HANDLE_REACH);
        });
        for (MapHands.Handle handle : scene.hands().handles(camera.metresPerPixel())) {
            reach.add(camera, handle.place(), HANDLE_REACH);
        }
        scene.bench().picked().flatMap(part -> scene.bench().plan().hull(part.id()))
                .ifPresent(hull -> reach.add(camera, hull.baseCentre(), HANDLE_REACH));
    }

    /** How far a hull on its way reaches. */
    static void reach(Reach reach, MapCamera camera, HullAtTilt picture) {
        picture.shadow().forEach(p -> reach.add(camera, p, HANDLE_REACH));
        picture.above().forEach(rope -> {
            reach.add(camera, rope.from(), HANDLE_REACH);
            reach.add(camera, rope.to(), HANDLE_REACH);
        });
    }

    /** Writes heights on contour lines, as long as these are drawn at about that scale. */
    void heights(GraphicsContext g, MapCamera camera, List<ContourSet.Height> heights) {
        g.setFont(Font.font("SansSerif", look.textSize() * 0.8));
        g.setTextAlign(TextAlignment.CENTER);
        g.setTextBaseline(VPos.CENTER);
        g.setLineDashes();
        for (ContourSet.Height height : heights) {
            g.save();
            g.translate(camera.x(height.place().east()), camera.y(height.place().north()));
            g.rotate(Math.toDegrees(height.turn()));
            g.setLineWidth(3);
            g.setStroke(style.halo());
            g.strokeText(height.words(), 0, 0);
            g.setFill(style.faint());
            g.fillText(height.words(), 0, 0);
            g.restore();
        }
    }

    /** Draws what the hand can take hold of, and what it has snapped to. */
    void hand(GraphicsContext g, MapCamera camera, Scene scene) {
        Workbench bench = scene.bench();
        MapHands hands = scene.hands();
        g.setLineDashes();
        hands.snapLine().ifPresent(line -> snap(g, camera, line));
        for (MapHands.Handle handle : hands.handles(camera.metresPerPixel())) {
            handle(g, camera, handle, bench);
        }
    }

    /** Draws scale bar and norths, along the lower edge of the camera's picture. */
    void paintFixed(GraphicsContext g, MapCamera camera, Workbench bench) {
        g.setLineDashes();
        scaleBar(g, camera, bench);
        norths(g, camera, bench);
    }

    /** Height of the strip that {@link #paintFixed} needs (pixels). */
    double fixedHeight() {
        return Math.ceil(RIM + 80 + 5 * look.textSize());
    }

    private boolean isShown(MapFigure figure) {
        FigureLook kind = figure.look();
        return (look.hasGear() || !kind.isGear()) && (look.hasSweeps() || kind != FigureLook.SWEEP)
                && (look.hasCover() || kind != FigureLook.COVER_TOE);
    }

    private void snap(GraphicsContext g, MapCamera camera, MapHands.SnapLine line) {
        g.setStroke(style.accent());
        g.setLineWidth(2);
        g.setLineDashes(3, 4);
        g.strokeLine(camera.x(line.from().east()), camera.y(line.from().north()), camera.x(line.to().east()),
                camera.y(line.to().north()));
        g.setLineDashes();
    }

    private void handle(GraphicsContext g, MapCamera camera, MapHands.Handle handle, Workbench bench) {
        double x = camera.x(handle.place().east());
        double y = camera.y(handle.place().north());
        g.setLineWidth(2);
        g.setStroke(style.accent());
        g.setFill(style.halo());
        switch (handle.kind()) {
            case TURN -> {
                bench.picked().flatMap(part -> bench.plan().hull(part.id())).ifPresent(hull -> {
                    Point base = hull.baseCentre();
                    g.setLineDashes(2, 4);
                    g.strokeLine(camera.x(base.east()), camera.y(base.north()), x, y);
                    g.setLineDashes();
                });
                g.fillOval(x - 7, y - 7, 14, 14);
                g.strokeOval(x - 7, y - 7, 14, 14);
                g.strokeArc(x - 3.5, y - 3.5, 7, 7, 30, 270, javafx.scene.shape.ArcType.OPEN);
            }
            case CORNER -> {
                g.fillRect(x - 5, y - 5, 10, 10);
                g.strokeRect(x - 5, y - 5, 10, 10);
            }
            case GEAR -> {
                g.fillOval(x - 5, y - 5, 10, 10);
                g.strokeOval(x - 5, y - 5, 10, 10);
            }
            case NEW_CORNER -> {
                g.strokeLine(x - 4, y, x + 4, y);
                g.strokeLine(x, y - 4, x, y + 4);
            }
        }
    }

    /**
     * The badges. Until one looks closer those of a hull gather into one beside it; of a crowd only the worst are drawn
     * and the others counted; the picked one is always drawn, and none over a hull.
     */
    Badges badges(MapCamera camera, List<Numbered> findings, Workbench bench, BadgeSpots spots) {
        Optional<String> picked = bench.pickedFinding();
        HullOutlines hulls = new HullOutlines(bench.plan(), camera);
        spots.keepOff(hulls);
        Map<String, List<Numbered>> gathered = new LinkedHashMap<>();
        List<Numbered> alone = new ArrayList<>();
        for (Numbered numbered : findings) {
            Optional<String> hull = hulls.owner(numbered.finding().subject())
                    .filter(id -> hulls.length(id) < GATHERED * look.textSize())
                    .filter(id -> picked.filter(numbered.number()::equals).isEmpty());
            hull.ifPresentOrElse(id -> gathered.computeIfAbsent(id, k -> new ArrayList<>()).add(numbered),
                    () -> alone.add(numbered));
        }
        List<Crowd> crowds = new ArrayList<>();
        gathered.forEach((id, all) -> crowds.add(new Crowd(all, spots.free(hulls.beside(id, 1.6 * look.textSize())),
                Optional.of(hulls.middle(id)))));
        Badges single = crowded(camera, alone, picked, spots);
        crowds.addAll(single.crowds());
        return new Badges(single.badges(), crowds, stale(findings, bench));
    }

    private Badges crowded(MapCamera camera, List<Numbered> findings, Optional<String> picked, BadgeSpots spots) {
        List<Badge> badges = new ArrayList<>();
        List<List<Numbered>> crowds = new ArrayList<>();
        List<Point2D> centres = new ArrayList<>();
        for (Numbered numbered : findings) {
            Point p = numbered.finding().place().orElseThrow();
            Point2D place = new Point2D(camera.x(p.east()), camera.y(p.north()));
            boolean isCrowded = badges.stream().filter(b -> b.place().distance(place) < CROWD * look.textSize())
                    .count() >= MOST && picked.filter(numbered.number()::equals).isEmpty();
            if (!isCrowded) {
                badges.add(new Badge(numbered, place, spots.free(place)));
                continue;
            }
            int crowd = 0;
            while (crowd < centres.size() && centres.get(crowd).distance(place) >= CROWD * look.textSize()) {
                crowd++;
            }
            if (crowd == centres.size()) {
                centres.add(place);
                crowds.add(new ArrayList<>());
            }
            crowds.get(crowd).add(numbered);
        }
        List<Crowd> more = new ArrayList<>();
        for (int i = 0; i < crowds.size(); i++) {
            more.add(new Crowd(crowds.get(i), spots.free(centres.get(i)), Optional.empty()));
        }
        return new Badges(badges, more, Set.of());
    }

    /** The badges, the worst at their very places and drawn last, the others beside them on a leader. */
    private void findings(GraphicsContext g, Badges drawn, Optional<String> picked) {
        for (Badge badge : drawn.badges()) {
            if (badge.place().distance(badge.spot()) > 1) {
                g.setStroke(style.ink());
                g.setLineWidth(1);
                g.strokeLine(badge.place().getX(), badge.place().getY(), badge.spot().getX(), badge.spot().getY());
            }
        }
        drawn.crowds().forEach(crowd -> crowd(g, crowd, drawn.isStale(crowd)));
        for (int i = drawn.badges().size() - 1; i >= 0; i--) {
            Numbered numbered = drawn.badges().get(i).finding();
            badge(g, new Stamp(numbered.finding().level(), numbered.number(),
                    drawn.stale().contains(numbered.finding())), drawn.badges().get(i).spot(),
                    picked.filter(numbered.number()::equals).isPresent());
        }
    }

    private void crowd(GraphicsContext g, Crowd crowd, boolean isStale) {
        Point2D spot = crowd.spot();
        if (crowd.hull().isPresent()) {
            g.setStroke(style.ink());
            g.setLineWidth(1);
            g.strokeLine(crowd.hull().get().getX(), crowd.hull().get().getY(), spot.getX(), spot.getY());
            Finding.Level worst = crowd.findings().stream().map(n -> n.finding().level()).min(Enum::compareTo)
                    .orElseThrow();
            badge(g, new Stamp(worst, crowd.words(), isStale), spot, false);
            return;
        }
        double h = 1.5 * look.textSize();
        double w = (1.1 + 0.6 * crowd.words().length()) * look.textSize();
        double x = spot.getX() - w / 2;
        double y = spot.getY() - h / 2;
        g.setFill(style.halo());
        g.fillRoundRect(x, y, w, h, h, h);
        g.setStroke(style.ink());
        g.setLineWidth(1.2);
        g.setLineDashes(isStale ? STALE_DASHES : new double[0]);
        g.strokeRoundRect(x, y, w, h, h, h);
        g.setLineDashes();
        words(g, crowd.words(), spot, look.textSize() * 0.85, style.ink());
    }

    private static void words(GraphicsContext g, String words, Point2D at, double size, Color ink) {
        g.setFont(Font.font("SansSerif", size));
        g.setTextAlign(TextAlignment.CENTER);
        g.setTextBaseline(VPos.CENTER);
        g.setFill(ink);
        g.fillText(words, at.getX(), at.getY());
    }

    /** What a badge shows; what is of the plan before is hollow, with a broken rim. */
    private record Stamp(Finding.Level level, String words, boolean isStale) {
    }

    private void badge(GraphicsContext g, Stamp stamp, Point2D at, boolean isPicked) {
        double r = look.textSize() * (isPicked ? 1.15 : 0.9);
        g.setLineWidth(isPicked ? 3 : 1.6);
        Color full = FindingBadge.colour(stamp.level(), look.isDark());
        g.setStroke(stamp.isStale() ? full : style.halo());
        g.setFill(stamp.isStale() ? style.halo() : full);
        g.setLineDashes(stamp.isStale() ? STALE_DASHES : new double[0]);
        double[][] corners = FindingBadge.corners(stamp.level(), at.getX(), at.getY(), r);
        g.fillPolygon(corners[0], corners[1], corners[0].length);
        g.strokePolygon(corners[0], corners[1], corners[0].length);
        g.setLineDashes();
        double drop = stamp.level() == Finding.Level.WARN ? r * 0.18 : 0;
        words(g, stamp.words(), at.add(0, drop), look.textSize() * FindingBadge.size(stamp.words()),
                stamp.isStale() ? style.ink() : FindingBadge.ink(stamp.level(), look.isDark()));
    }

    /** A hull at one tilt of its way down, over what the map shows. */
    void hullOnItsWay(GraphicsContext g, MapCamera camera, HullAtTilt picture) {
        int n = picture.shadow().size();
        double[] xs = picture.shadow().stream().mapToDouble(p -> camera.x(p.east())).toArray();
        double[] ys = picture.shadow().stream().mapToDouble(p -> camera.y(p.north())).toArray();
        g.setFill(style.accent().deriveColor(0, 1, 1, 0.3));
        g.fillPolygon(xs, ys, n);
        g.setStroke(style.accent());
        g.setLineWidth(2.5);
        g.strokePolygon(xs, ys, n);
        for (HullAtTilt.RopeAbove rope : picture.above()) {
            g.setLineWidth(rope.gear() == HullAtTilt.Gear.POLE ? 5 : 1.8);
            g.setLineDashes(rope.gear() == HullAtTilt.Gear.STAY ? new double[] {6, 3} : new double[0]);
            g.strokeLine(camera.x(rope.from().east()), camera.y(rope.from().north()), camera.x(rope.to().east()),
                    camera.y(rope.to().north()));
        }
        g.setLineDashes();
    }

    private void scaleBar(GraphicsContext g, MapCamera camera, Workbench bench) {
        ScaleBar bar = ScaleBar.fitting(bench.metres().length(camera.metresPerPixel()), camera.width() * BAR_SHARE);
        double x = RIM;
        double y = camera.height() - RIM;
        g.setStroke(style.halo());
        g.setLineWidth(7);
        g.strokeLine(x, y, x + bar.pixels(), y);
        Color ink = style.ink();
        g.setLineWidth(3);
        g.setStroke(ink);
        g.strokeLine(x, y, x + bar.pixels(), y);
        for (int i = 0; i <= 4; i++) {
            double at = x + bar.pixels() * i / 4;
            g.setLineWidth(1.5);
            g.strokeLine(at, y - (i % 2 == 0 ? 7 : 4), at, y);
        }
        painter.text(g, bar.words(), x + bar.pixels() / 2, y - 6 - look.textSize(), ink);
    }

    private void norths(GraphicsContext g, MapCamera camera, Workbench bench) {
        double x = camera.width() - RIM - 34 - 2.4 * look.textSize();
        double y = camera.height() - RIM - 34 - 2 * look.textSize();
        arrow(g, x, y, 0, true);
        painter.text(g, "grid N", x, y - 34 - look.textSize() * 0.7, style.ink());
        bench.trueNorth().ifPresent(turn -> {
            arrow(g, x, y, turn, false);
            double reach = 34 + 1.1 * look.textSize();
            painter.text(g, "true N", x + reach * Math.sin(turn), y - reach * Math.cos(turn), style.ink());
        });
    }

    /** An arrow from a place, turned clockwise from up; the whole arrow for grid north, a dashed one for true north. */
    private void arrow(GraphicsContext g, double x, double y, double turn, boolean isGrid) {
        g.save();
        g.translate(x, y);
        g.rotate(Math.toDegrees(turn));
        g.setStroke(style.halo());
        g.setLineWidth(5);
        g.strokeLine(0, 0, 0, -34);
        g.setStroke(style.ink());
        g.setLineWidth(isGrid ? 2 : 1.4);
        g.setLineDashes(isGrid ? new double[0] : new double[] {3, 3});
        g.strokeLine(0, 0, 0, -34);
        g.setLineDashes();
        g.setFill(style.ink());
        if (isGrid) {
            g.fillPolygon(new double[] {0, 6, -6}, new double[] {-36, -22, -22}, 3);
        } else {
            g.strokePolygon(new double[] {0, 4, -4}, new double[] {-34, -24, -24}, 3);
        }
        g.restore();
    }
}
