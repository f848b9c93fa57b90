// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import bermwright.filestore.WholeFile;
import bermwright.filestore.WholeFolder;
import bermwright.foundation.Progress;
import bermwright.report.map.SurveyMap;
import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.site.planfile.PlanFiles;
import bermwright.site.survey.Criterion;
import bermwright.site.survey.Reason;
import bermwright.site.survey.SurveyPlace;
import bermwright.site.survey.SurveyResult;
import bermwright.terrain.grid.HeightSource;
import bermwright.terrain.gridfile.GeoTiffWriter;
import bermwright.terrain.gridfile.GroundFiles;
import bermwright.terrain.gridfile.GroundSource;
import bermwright.terrain.gridfile.SurfaceContent;
import bermwright.terrain.gridfile.SurfaceFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The files of a survey: map of scores as GeoTIFF and as picture, table of places, and a plan file for each. */
public final class SurveyFolder {
    /** The map as numbers. */
    public static final String SCORES = "scores.tif";
    /** The map as a picture. */
    public static final String PICTURE = "scores.svg";
    /** The table of places. */
    public static final String PLACES = "places.csv";
    private static final int DOTS = 1100;

    private SurveyFolder() {
    }

    /**
     * The name of a place's plan file.
     *
     * @param place the place
     * @return the name
     */
    public static String plan(SurveyPlace place) {
        return "place-" + place.rank() + ".json";
    }

    /**
     * Writes all files of a survey; the folder is there whole or as it was.
     *
     * @param result   the survey
     * @param folder   the folder, made where it is not there
     * @param progress told how far it has come
     * @throws IOException if it cannot be written
     */
    public static void write(SurveyResult result, Path folder, Progress progress) throws IOException {
        WholeFolder.write(folder, draft -> {
            SurfaceFile.Layer layer = new SurfaceFile.Layer(result.map().frame(), result.ground().system(),
                    new SurfaceContent(SurfaceContent.Kind.FLOAT32, "1", Optional.of("least margin of the best heading,"
                    + " 0 on a limit, 1 far from all; no value where no hull can lie; best of " + result.map().square()
                    + " x " + result.map().square() + " cells")));
            GeoTiffWriter.write(draft.resolve(SCORES), result.map(), layer, progress.part(0, 0.4));
            WholeFile.write(draft.resolve(PICTURE), picture(result, progress.part(0.4, 0.9)));
            WholeFile.write(draft.resolve(PLACES), table(result).csv());
            for (SurveyPlace place : result.places()) {
                PlanFiles.write(place.plan(), draft.resolve(plan(place)));
            }
        });
    }

    private static String picture(SurveyResult result, Progress progress) {
        try (GroundSource ground = GroundFiles.open(Path.of(result.order().elevationFile()),
                GroundFiles.Knowledge.NONE, progress)) {
            HeightSource shown = ground;
            for (HeightSource overview : ground.overviews()) {
                boolean isFine = overview.frame().columns() >= DOTS || overview.frame().rows() >= DOTS;
                shown = isFine && result.order().window().rows() == ground.frame().rows() ? overview : shown;
            }
            return SurveyMap.of(result, shown, progress).file();
        }
    }

    /**
     * The table of places: one row each, every figure with its limit and margin.
     *
     * @param result the survey
     * @return the table
     */
    public static Table table(SurveyResult result) {
        List<Column> columns = new ArrayList<>(List.of(Column.number("rank", "Rank"),
                Column.number("east_m", "East, m"), Column.number("north_m", "North, m"),
                Column.number("heading_deg", "Heading, deg"), Column.number("score", "Score"),
                Column.words("tightest", "Tightest limit")));
        for (Criterion c : Criterion.values()) {
            String key = c.name().toLowerCase(Locale.ROOT) + "_" + c.unit();
            columns.add(Column.number(key, c.words() + ", " + c.unit()));
            columns.add(Column.number(c.name().toLowerCase(Locale.ROOT) + "_limit_" + c.unit(), "limit"));
            columns.add(Column.number(c.name().toLowerCase(Locale.ROOT) + "_margin", "margin"));
        }
        columns.add(Column.words("plan", "Plan file"));
        return new Table("places", "Places", columns, result.places().stream().map(SurveyFolder::row).toList());
    }

    private static List<String> row(SurveyPlace p) {
        List<String> row = new ArrayList<>(List.of(Integer.toString(p.rank()), number(p.centre().east(), 3),
                number(p.centre().north(), 3), number(p.heading().degrees(), 3), number(p.score(), 4),
                p.tightest().criterion().words()));
        for (Criterion c : Criterion.values()) {
            Optional<Reason> reason = p.reasons().stream().filter(r -> r.criterion() == c).findFirst();
            row.add(reason.map(r -> number(r.measured(), 3)).orElse(""));
            row.add(reason.map(r -> number(r.limit(), 3)).orElse(""));
            row.add(reason.map(r -> number(r.margin(), 4)).orElse(""));
        }
        row.add(plan(p));
        return row;
    }

    private static String number(double value, int digits) {
        return String.format(Locale.ROOT, "%." + digits + "f", value);
    }
}
