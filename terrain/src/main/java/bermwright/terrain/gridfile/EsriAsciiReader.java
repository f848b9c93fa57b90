// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.InputException;
import bermwright.foundation.Progress;
import bermwright.terrain.grid.GridFrame;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads an elevation grid from an ESRI ASCII file, northernmost row first, with its .prj beside it. */
final class EsriAsciiReader {
    private static final Set<String> KEYWORDS = Set.of("ncols", "nrows", "xllcorner", "yllcorner", "xllcenter",
            "yllcenter", "cellsize", "dx", "dy", "nodata_value");
    private static final int MOST_OF_A_PRJ = 100_000;
    /** A grid within these bounds in coordinates and spacing is taken to be in degrees. */
    private static final double SPACING_OF_DEGREES = 0.02;

    private final FileTrouble trouble;
    private final Words words;
    private final Map<String, Double> header = new HashMap<>();

    private EsriAsciiReader(FileTrouble trouble, Words words) {
        this.trouble = trouble;
        this.words = words;
    }

    static boolean isAsciiGrid(byte[] head) {
        String start = new String(head, StandardCharsets.ISO_8859_1).stripLeading().toLowerCase(Locale.ROOT);
        return KEYWORDS.stream().anyMatch(word -> start.startsWith(word)
                && start.length() > word.length() && Character.isWhitespace(start.charAt(word.length())));
    }

    static GroundFacts open(Path file, GroundFiles.Knowledge knowledge, Progress progress) throws IOException {
        FileTrouble trouble = new FileTrouble(file);
        try (InputStream in = Files.newInputStream(file)) {
            return new EsriAsciiReader(trouble, new Words(in, trouble)).read(knowledge, progress);
        }
    }

    private GroundFacts read(GroundFiles.Knowledge knowledge, Progress progress) throws IOException {
        String firstHeight = readHeader();
        GridFrame frame = frame();
        // A height takes at least a digit and a space.
        if (frame.nodes() > (Files.size(trouble.file()) + 1) / 2) {
            throw trouble.badValue("ncols, nrows", frame.columns() + " x " + frame.rows(), "no more heights than the"
                    + " file's " + Files.size(trouble.file()) + " bytes can hold");
        }
        Optional<ReferenceSystem> system = projectionBeside(trouble.file());
        refuseDegrees(frame, system.isPresent() || knowledge.referenceSystem().isPresent());
        Samples samples = heights(frame, firstHeight, progress);
        Double mark = header.get("nodata_value");
        HeightScale scale = new HeightScale(1, 0, mark == null ? new double[0] : new double[] {mark}, trouble);
        GroundFile.Heights heights = new GroundFile.Heights("text", "metre (not stated)",
                mark == null ? OptionalDouble.empty() : OptionalDouble.of(mark), header.containsKey("xllcorner"));
        return new GroundFacts("ESRI ASCII grid", new StoredGround(samples, new StoredGround.Lie(frame, true), scale, 1,
                trouble), List.of(), system, heights, List.of());
    }

    /** Reads keywords and their values up to the first height, which is returned. */
    private String readHeader() throws IOException {
        while (true) {
            String word = words.next().orElseThrow(() -> trouble.unreadable("header", "the file ends within it",
                    "a whole ESRI ASCII grid"));
            String keyword = word.toLowerCase(Locale.ROOT);
            if (!KEYWORDS.contains(keyword)) {
                return word;
            }
            int line = words.line();
            String value = words.next().orElse("nothing");
            header.put(keyword, number(line, keyword, value));
        }
    }

    private GridFrame frame() {
        double columns = wanted("ncols");
        double rows = wanted("nrows");
        if (columns != Math.rint(columns) || rows != Math.rint(rows) || !(columns >= 2 && rows >= 2)
                || columns > Integer.MAX_VALUE || rows > Integer.MAX_VALUE) {
            throw trouble.badValue("ncols, nrows", columns + " x " + rows, "whole numbers, at least 2 x 2");
        }
        double spacing = header.containsKey("dx") ? wanted("dx") : wanted("cellsize");
        if (header.containsKey("dx") && wanted("dx") != wanted("dy")) {
            throw trouble.badValue("dx, dy", wanted("dx") + " x " + wanted("dy"),
                    "square cells; gdalwarp -tr makes them");
        }
        HeightLimits.checkSpacing("cellsize", spacing, trouble);
        boolean corners = header.containsKey("xllcorner");
        double half = corners ? spacing / 2 : 0;
        double west = corners ? wanted("xllcorner") : wanted("xllcenter");
        double south = corners ? wanted("yllcorner") : wanted("yllcenter");
        HeightLimits.checkPlace(corners ? "xllcorner, yllcorner" : "xllcenter, yllcenter", west, south, trouble);
        return new GridFrame((int) rows, (int) columns, west + half, south + half, spacing);
    }

    private double wanted(String keyword) {
        Double value = header.get(keyword);
        if (value == null) {
            throw trouble.unreadable(keyword, "the header has none", "a header with ncols, nrows, xllcorner and"
                    + " yllcorner (or xllcenter and yllcenter), cellsize and, if wanted, NODATA_value");
        }
        return value;
    }

    private void refuseDegrees(GridFrame frame, boolean systemIsKnown) {
        if (!systemIsKnown && frame.spacing() < SPACING_OF_DEGREES && Math.abs(frame.west()) <= 360
                && Math.abs(frame.eastEdge()) <= 360 && Math.abs(frame.south()) <= 90
                && Math.abs(frame.northEdge()) <= 90) {
            GeographicPlace centre = new GeographicPlace(frame.centre().north(),
                    Math.IEEEremainder(frame.centre().east(), 360));
            throw trouble.badValue("cellsize", frame.spacing() + ", with all coordinates within those of degrees",
                    "metres, or a .prj beside the file that says so; warp degrees with "
                    + Warp.command(centre, KnownSystems.MOON_RADIUS_IAU_2015));
        }
    }

    /** Reads all heights; memory is taken as they come. */
    private Samples heights(GridFrame frame, String firstHeight, Progress progress) throws IOException {
        TextHeights heights = TextHeights.begun(frame, trouble);
        try {
            double[] run = new double[frame.columns()];
            String word = firstHeight;
            for (int line = 0; line < frame.rows(); line++) {
                progress.check();
                for (int column = 0; column < run.length; column++) {
                    if (word == null) {
                        long found = (long) line * frame.columns() + column;
                        word = words.next().orElseThrow(() -> trouble.unreadable("heights", "the file holds " + found
                                + " where " + frame.nodes() + " are announced", "a whole ESRI ASCII grid"));
                    }
                    run[column] = number(words.line(), "height", word);
                    word = null;
                }
                heights.add(run);
                progress.report((double) (line + 1) / frame.rows(), "reading heights");
            }
            Optional<String> more = words.next();
            if (more.isPresent()) {
                throw trouble.badValue(words.line(), "text after the last height", more.get(),
                        "as many heights as ncols times nrows");
            }
            return heights.samples();
        } catch (RuntimeException | IOException e) {
            heights.close();
            throw e;
        }
    }

    private double number(int line, String key, String text) {
        try {
            return text.equalsIgnoreCase("nan") ? Double.NaN : Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw trouble.badValue(line, key, "\"" + text + "\"", "a number");
        }
    }

    private static Optional<ReferenceSystem> projectionBeside(Path file) throws IOException {
        for (String end : new String[] {".prj", ".PRJ"}) {
            Path beside = BesideFile.withEnding(file, end);
            if (Files.isRegularFile(beside) && Files.size(beside) <= MOST_OF_A_PRJ) {
                return Optional.of(ReferenceSystem.named(Files.readString(beside, StandardCharsets.UTF_8),
                        InputException.Place.of(beside.toString())));
            }
        }
        return Optional.empty();
    }
}
