// SPDX-License-Identifier: Apache-2.0
package bermwright.report.scale;

import bermwright.report.drawing.Dot;
import bermwright.report.paper.Cropped;
import bermwright.report.paper.Lettering;
import bermwright.report.paper.Mark;
import bermwright.report.paper.Occupied;
import bermwright.report.paper.Patch;
import bermwright.report.paper.Pen;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.relief.ContourLine;
import bermwright.terrain.relief.Contours;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Contours on a plan, every one of them with its height where its line is broken for it.
 *
 * @param plan     the plan
 * @param interval height between two lines (m)
 */
record ContourDrawing(PlanDrawing plan, double interval) {
    /** A line shorter than this on paper has no room for its figure and is left out (mm). */
    static final double SHORTEST = 18;
    /** A long line has a figure so often (mm). */
    private static final double EVERY = 130;
    /** Points of a line that stand this near to it otherwise are left out (mm). */
    private static final double CLOSE = 0.04;
    private static final int INDEX = 5;
    /** A line may be off the straight way under its figure by so much, at first and when no place is found (mm). */
    private static final double[] BENDS = {0.35, 0.8, 1.6};
    /** Room beside a figure (mm). */
    private static final double GAP = 0.6;

    /** Draws the contours of a surface. */
    void draw(ElevationGrid surface) {
        List<Piece> pieces = new ArrayList<>();
        Occupied lines = new Occupied(plan.sheet().drawing());
        for (ContourLine line : Contours.every(surface, interval)) {
            List<Dot> points = new ArrayList<>(plan.view().on(line.points()));
            if (line.isClosed()) {
                points.add(points.get(0));
            }
            for (List<Dot> piece : Cropped.line(points, plan.sheet().drawing())) {
                Track track = Track.of(piece, CLOSE);
                if (track.length() >= SHORTEST) {
                    pieces.add(new Piece(line.level(), track));
                    lines.line(track.points());
                }
            }
        }
        pieces.sort(Comparator.comparingDouble((Piece p) -> -p.track.length()));
        List<Piece> bare = pieces.stream().filter(piece -> !draw(piece, lines)).toList();
        pieces.forEach(p -> plan.sheet().occupied().line(p.track.points()));
        // Where a line has no room for its figure, that stands beside it.
        bare.forEach(p -> plan.sheet().name(p.track.at(p.track.length() / 2), figure(p.level), false));
        legend();
    }

    /** A piece of a contour on paper. */
    private record Piece(double level, Track track) {
    }

    private void legend() {
        plan.sheet().legend().add("contour of the finished ground, every " + figure(interval) + " m", (paper, room) ->
                paper.line(Pen.THIN, new Dot(room.middle().x() - room.halfWidth(), room.middle().y()),
                        new Dot(room.middle().x() + room.halfWidth(), room.middle().y())));
        plan.sheet().legend().add("the same, every " + figure(INDEX * interval) + " m", (paper, room) ->
                paper.line(Pen.MEDIUM, new Dot(room.middle().x() - room.halfWidth(), room.middle().y()),
                        new Dot(room.middle().x() + room.halfWidth(), room.middle().y())));
    }

    private static String figure(double value) {
        return String.format(Locale.ROOT, "%.2f", value).replaceAll("0$", "");
    }

    private boolean draw(Piece piece, Occupied lines) {
        Occupied own = new Occupied(plan.sheet().drawing());
        own.line(piece.track.points());
        int wanted = (int) Math.max(1, Math.round(piece.track.length() / EVERY));
        List<Figure> figures = new ArrayList<>();
        for (int k = 0; k < wanted; k++) {
            Span span = new Span(piece.track.length() * k / wanted, piece.track.length() * (k + 1) / wanted);
            for (double bend : k == 0 ? BENDS : new double[] {BENDS[0]}) {
                Optional<Figure> found = figure(piece, span, bend, words -> lines.crossings(words)
                        <= own.crossings(words) && plan.sheet().occupied().crossings(words) == 0);
                if (found.isPresent()) {
                    plan.sheet().paper().words(found.get().words);
                    plan.sheet().occupied().take(found.get().words.patch());
                    figures.add(found.get());
                    break;
                }
            }
        }
        broken(piece, figures);
        return !figures.isEmpty();
    }

    /** A stretch of a line (mm). */
    private record Span(double from, double to) {
    }

    /** A height on a line: how far along its middle stands (mm), and its words. */
    private record Figure(double at, Mark.Words words) {
    }

    /** A place on a stretch, from its middle outwards, where a line is straight enough and nothing else runs. */
    private Optional<Figure> figure(Piece piece, Span span, double bend, Predicate<Patch> isAlone) {
        String words = figure(piece.level);
        double half = Lettering.width(words, Lettering.LEAST) / 2 + GAP;
        double middle = (span.from + span.to) / 2;
        for (double off = 0; off <= (span.to - span.from) / 2; off += 2.5) {
            for (int side = -1; side <= 1; side += 2) {
                double at = middle + side * off;
                if (at - half > 0 && at + half < piece.track.length()) {
                    Dot a = piece.track.at(at - half);
                    Dot b = piece.track.at(at + half);
                    if (piece.track.bend(at, half) <= bend) {
                        Mark.Words set = set(a, b, words);
                        if (plan.sheet().occupied().isFree(set.patch()) && isAlone.test(set.patch())) {
                            return Optional.of(new Figure(at, set));
                        }
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** Words along the way between two places, read from below or from the right. */
    private static Mark.Words set(Dot a, Dot b, String words) {
        double turn = Math.atan2(a.y() - b.y(), b.x() - a.x());
        if (turn > Math.PI / 2 || turn <= -Math.PI / 2) {
            turn += turn > 0 ? -Math.PI : Math.PI;
        }
        double down = Lettering.LEAST / 2;
        return new Mark.Words(new Dot((a.x() + b.x()) / 2 + down * Math.sin(turn),
                (a.y() + b.y()) / 2 + down * Math.cos(turn)), words, Lettering.LEAST, turn, Mark.Align.MIDDLE);
    }

    /** Draws a line with gaps where its figures stand. */
    private void broken(Piece piece, List<Figure> figures) {
        Pen pen = Math.abs(piece.level / (INDEX * interval) - Math.rint(piece.level / (INDEX * interval))) < 1e-6
                ? Pen.MEDIUM : Pen.THIN;
        double from = 0;
        for (Figure figure : figures) {
            double half = Lettering.width(figure.words.words(), Lettering.LEAST) / 2 + GAP / 2;
            plan.sheet().paper().line(pen, piece.track.part(from, figure.at - half));
            from = figure.at + half;
        }
        plan.sheet().paper().line(pen, piece.track.part(from, piece.track.length()));
    }
}
