// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.InputException;
import bermwright.foundation.Progress;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads an elevation grid from an ESRI ASCII file, northernmost row first, with its .prj beside it. */
final class EsriAsciiReader {
    private static final Set<String> KEYWORDS = Set.of("ncols", "nrows", "xllcorner", "yllcorner", "xllcenter",
            "yllcenter", "cellsize", "dx", "dy", "nodata_value");
    private static final double NODATA_BY_DEFAULT = -9999;
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

    static GroundFile read(Path file, GroundFiles.Knowledge knowledge, Progress progress) throws IOException {
        FileTrouble trouble = new FileTrouble(file);
        try (InputStream in = Files.newInputStream(file)) {
            return new EsriAsciiReader(trouble, new Words(in, trouble)).read(knowledge, progress);
        }
    }

    private GroundFile read(GroundFiles.Knowledge knowledge, Progress progress) throws IOException {
        String firstHeight = readHeader();
        GridFrame frame = frame();
        Optional<ReferenceSystem> system = projectionBeside(trouble.file());
        refuseDegrees(frame, system.isPresent() || knowledge.referenceSystem().isPresent());
        double mark = header.getOrDefault("nodata_value", NODATA_BY_DEFAULT);
        ElevationGrid grid = ElevationGrid.filled(frame, sink -> {
            try {
                fill(sink, frame, new Start(firstHeight, mark), progress);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        boolean corners = header.containsKey("xllcorner");
        GroundFile.Heights heights = new GroundFile.Heights("text", "metre (not stated)", OptionalDouble.of(mark),
                corners);
        return GroundAssembly.of(trouble.file(), new GroundAssembly.Found("ESRI ASCII grid", grid, system, heights),
                knowledge);
    }

    private record Start(String firstHeight, double mark) {
    }

    /** Reads keywords and their values up to the first height, which is returned. */
    private String readHeader() throws IOException {
        while (true) {
            String word = words.next().orElseThrow(() -> trouble.unreadable("it ends within its header",
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
            throw trouble.badValue("size", columns + " x " + rows, "whole numbers, at least 2 x 2");
        }
        HeightLimits.checkSize((long) columns, (long) rows, trouble);
        double spacing = header.containsKey("dx") ? wanted("dx") : wanted("cellsize");
        if (header.containsKey("dx") && wanted("dx") != wanted("dy")) {
            throw trouble.badValue("cell size", wanted("dx") + " x " + wanted("dy"),
                    "square cells; gdalwarp -tr makes them");
        }
        if (!(spacing > 0) || !Double.isFinite(spacing)) {
            throw trouble.badValue("cellsize", spacing, "greater than 0, in metres");
        }
        double half = header.containsKey("xllcorner") ? spacing / 2 : 0;
        double west = header.containsKey("xllcorner") ? wanted("xllcorner") : wanted("xllcenter");
        double south = header.containsKey("xllcorner") ? wanted("yllcorner") : wanted("yllcenter");
        return new GridFrame((int) rows, (int) columns, west + half, south + half, spacing);
    }

    private double wanted(String keyword) {
        Double value = header.get(keyword);
        if (value == null) {
            throw trouble.unreadable("its header has no " + keyword, "a header with ncols, nrows, xllcorner and"
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

    private void fill(ElevationGrid.HeightSink sink, GridFrame frame, Start start, Progress progress)
            throws IOException {
        double[] run = new double[frame.columns()];
        String word = start.firstHeight;
        for (int row = frame.rows() - 1; row >= 0; row--) {
            progress.check();
            for (int column = 0; column < run.length; column++) {
                if (word == null) {
                    int needed = frame.size();
                    int found = (frame.rows() - 1 - row) * frame.columns() + column;
                    word = words.next().orElseThrow(() -> trouble.unreadable("it holds " + found + " heights where "
                            + needed + " are announced", "a whole ESRI ASCII grid"));
                }
                double value = number(words.line(), "height", word);
                run[column] = value == start.mark || Double.isNaN(value) ? Double.NaN
                        : HeightLimits.checked(value, trouble);
                word = null;
            }
            sink.put(row, 0, run, run.length);
            progress.report((double) (frame.rows() - row) / frame.rows(), "reading heights");
        }
        Optional<String> more = words.next();
        if (more.isPresent()) {
            throw trouble.badValue(words.line(), "text after the last height", more.get(),
                    "as many heights as ncols times nrows");
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
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.');
        String stem = dot > 0 ? name.substring(0, dot) : name;
        for (String end : new String[] {".prj", ".PRJ"}) {
            Path beside = file.resolveSibling(stem + end);
            if (Files.isRegularFile(beside) && Files.size(beside) <= MOST_OF_A_PRJ) {
                return Optional.of(ReferenceSystem.named(Files.readString(beside, StandardCharsets.UTF_8),
                        InputException.Place.of(beside.toString())));
            }
        }
        return Optional.empty();
    }
}
