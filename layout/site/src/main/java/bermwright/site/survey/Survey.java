// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.foundation.Azimuth;
import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.foundation.Require;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.gridfile.GroundFiles;
import bermwright.terrain.gridfile.GroundSource;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds the best places of a region for the hulls of a plan. */
public final class Survey {
    private static final String BUILT_IN = "built-in-hull.json";
    private static final double SCORING = 0.95;

    private Survey() {
    }

    /**
     * What is placed where.
     *
     * @param region the elevation file
     * @param plan   the plan file whose hulls are placed; absent for the built-in hull
     * @param isOwn  whether the plan's keep-outs, corridors and pads lie in the region
     * @param within west, south, east and north edge of the part of the file that is asked (projected metres); empty
     *               for all of it
     * @param limits what is asked of a place
     */
    public record Question(Path region, Optional<Path> plan, boolean isOwn, List<Double> within,
            SurveyLimits limits) {
        /** Refuses edges without an area. */
        public Question {
            within = List.copyOf(within);
            Require.that(within.isEmpty() || within.size() == 4 && within.get(0) < within.get(2)
                    && within.get(1) < within.get(3), "a part with the edges %s; accepted: west, south, east, north.",
                    within);
        }
    }

    /**
     * The plan of a hull of common size, invented, for surveys of a file alone.
     *
     * @return the text of a plan file
     */
    static String builtIn() {
        try (InputStream in = Survey.class.getResourceAsStream(BUILT_IN)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the built-in hull cannot be read", e);
        }
    }

    /**
     * Puts a question in the form that workers take.
     *
     * @param question the question
     * @return the order
     * @throws InputException if the file or the plan cannot be used
     */
    public static SurveyOrder order(Question question) {
        String text = question.plan.map(PlanFiles::text).orElseGet(Survey::builtIn);
        String name = question.plan.map(Path::toString).orElse("the built-in hull");
        Plan plan = PlanFiles.read(text, name);
        if (plan.hulls().isEmpty()) {
            throw InputException.badValue(new InputException.Place(name, 0, "hulls"), "empty", "at least one hull");
        }
        Path file = question.region.toAbsolutePath().normalize();
        try (GroundSource ground = GroundFiles.open(file, GroundFiles.Knowledge.NONE, Progress.NONE)) {
            return new SurveyOrder(file.toString(), text, name, question.isOwn, question.limits,
                    window(ground.frame(), question));
        }
    }

    private static SurveyOrder.Window window(GridFrame frame, Question question) {
        if (question.within.isEmpty()) {
            return new SurveyOrder.Window(0, 0, frame.rows(), frame.columns());
        }
        List<Double> w = question.within;
        double s = frame.spacing();
        int west = (int) Math.max(0, Math.ceil((w.get(0) - frame.west()) / s));
        int south = (int) Math.max(0, Math.ceil((w.get(1) - frame.south()) / s));
        int east = (int) Math.min(frame.columns() - 1, Math.floor((w.get(2) - frame.west()) / s));
        int north = (int) Math.min(frame.rows() - 1, Math.floor((w.get(3) - frame.south()) / s));
        if (east < west || north < south) {
            throw InputException.badValue(new InputException.Place(question.region.toString(), 0, "--within"),
                    w.toString(), String.format(Locale.ROOT, "west, south, east, north within the file, %.1f, %.1f,"
                    + " %.1f, %.1f", frame.west(), frame.south(), frame.eastEdge(), frame.northEdge()));
        }
        return new SurveyOrder.Window(south, west, north - south + 1, east - west + 1);
    }

    /**
     * Runs a survey.
     *
     * @param order    what is asked
     * @param best     how many places are wanted (1), at least 1
     * @param files    where the plan and the places' plan files stand
     * @param spread   who scores the blocks
     * @param progress told how far it has come; asked whether to stop
     * @return the result
     * @throws InputException if the file cannot be used
     */
    public static SurveyResult run(SurveyOrder order, int best, PlanFolders files, BlockSpread spread,
            Progress progress) {
        Require.that(best >= 1 && best <= 1000, "%s places; accepted: 1 to 1000.", best);
        try (SurveySetup setup = SurveySetup.open(order, progress.part(0, 0.01))) {
            GroundSource ground = setup.ground();
            double apart = setup.group().apart(setup.plan().rules().hullSpacing());
            BestCells cells = new BestCells(order, setup, apart / ground.trueSpacing());
            ScoreMap map = new ScoreMap(order, ground.frame(), ground.metreScale());
            long[] counts = new long[ScoredBlock.Count.values().length];
            spread.score(order, block -> {
                map.put(block);
                cells.put(block);
                for (int i = 0; i < counts.length; i++) {
                    counts[i] += block.counts[i];
                }
            }, progress.part(0.01, SCORING));
            List<SurveyPlace> places = new ArrayList<>();
            PlacePlans plans = new PlacePlans(setup, files);
            for (BestCells.Cell cell : cells.best(best, progress.part(SCORING, 1))) {
                places.add(place(places.size() + 1, cell, setup, cells, plans));
            }
            return new SurveyResult(order, new SurveyResult.Ground(ground.frame(), ground.trueSpacing(),
                    ground.referenceSystem()), map, places, apart, setup.soil().volume(),
                    SurveyResult.Tally.of(order, counts), SurveyNotes.of(setup, order));
        }
    }

    private static SurveyPlace place(int rank, BestCells.Cell cell, SurveySetup setup, BestCells cells,
            PlacePlans plans) {
        GridFrame frame = setup.ground().frame();
        BlockScorer scorer = cells.at(cell);
        Figures figures = scorer.figures(0, 0, cell.heading());
        Point centre = new Point(frame.east(cell.column()), frame.north(cell.row()));
        Azimuth heading = BlockScorer.heading(cell.heading(), setup.limits().headings());
        Plan plan = plans.of(rank, new PlacePlans.Stand(centre, heading, figures.beds()), scorer.ground());
        return new SurveyPlace(rank, centre, heading, cell.score(), figures.reasons(), plans.outlines(plan), plan);
    }
}
