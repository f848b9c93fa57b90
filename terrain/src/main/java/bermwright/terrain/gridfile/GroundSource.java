// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.HeightSource;
import bermwright.terrain.grid.NodeRange;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * An elevation file that is open: its heights are read block by block as they are asked for, whatever its size.
 *
 * <p>Unpacked blocks are kept up to a budget of bytes for each image of the file; nothing else grows with
 * the file but the list of its blocks. A block is checked when it is read: a damaged one is refused then. Safe to read
 * from many threads.
 */
public final class GroundSource implements HeightSource, Closeable {
    private final Path file;
    private final GroundFacts facts;
    private final StoredGround ground;
    private final List<StoredGround> overviews;
    private final Optional<ReferenceSystem> system;
    private final Point centre;
    private final PointScale scale;
    private final List<String> cautions;
    private final List<String> odd;

    GroundSource(Path file, GroundFacts facts, Placed placed) {
        this.file = file;
        this.facts = facts;
        this.system = placed.system;
        this.centre = placed.centre;
        this.scale = placed.scale;
        this.cautions = List.copyOf(placed.cautions);
        this.odd = placed.odd.sayings();
        HeightScale heights = placed.odd.zeroIsFill() ? facts.ground().scale().withZeroAsFill()
                : facts.ground().scale();
        this.ground = facts.ground().with(heights, scale.mean());
        this.overviews = facts.overviews().stream().map(o -> o.with(heights, scale.mean())).toList();
    }

    /** What is known of a file beside its numbers. */
    record Placed(Optional<ReferenceSystem> system, Point centre, PointScale scale, Oddities odd,
            List<String> cautions) {
    }

    @Override
    public GridFrame frame() {
        return ground.frame();
    }

    @Override
    public double metreScale() {
        return ground.metreScale();
    }

    @Override
    public void read(NodeRange block, double[] into) {
        ground.read(block, into);
    }

    @Override
    public int blockRows() {
        return ground.blockRows();
    }

    /**
     * The same ground with fewer nodes, where the file has it.
     *
     * @return the overviews, finest first; empty where the file has none
     */
    public List<HeightSource> overviews() {
        return List.copyOf(overviews);
    }

    /**
     * The file.
     *
     * @return the file
     */
    public Path file() {
        return file;
    }

    /**
     * The file's format in words.
     *
     * @return the format, such as {@code GeoTIFF}
     */
    public String format() {
        return facts.format();
    }

    /**
     * The reference system.
     *
     * @return the system; absent where neither the file nor its reader named one
     */
    public Optional<ReferenceSystem> referenceSystem() {
        return system;
    }

    /**
     * Where the metre scale and true north were taken.
     *
     * @return the place, in projected metres
     */
    public Point centre() {
        return centre;
    }

    /**
     * The scales along east and north at the centre, and true north.
     *
     * @return the scales
     */
    public PointScale scale() {
        return scale;
    }

    /**
     * How the file keeps its heights.
     *
     * @return the manner
     */
    public GroundFile.Heights heights() {
        return facts.heights();
    }

    /**
     * What a user should know before trusting the file, as far as it has been read.
     *
     * @return sentences, empty where nothing is odd
     */
    public List<String> cautions() {
        List<String> all = new ArrayList<>(cautions);
        all.addAll(oddities());
        return all;
    }

    /** What doubts the heights themselves, as far as they have been read. */
    private List<String> oddities() {
        List<String> all = new ArrayList<>(odd);
        HeightScale heights = ground.scale();
        if (heights.fillsMet() > 0) {
            all.add(String.format(Locale.ROOT, "%s stands where no height can be and is not declared as a mark for"
                    + " missing heights: the nodes with it are taken as missing. gdal_edit.py -a_nodata %s FILE"
                    + " declares it.", shortest(heights.fillMet()), shortest(heights.fillMet())));
        }
        return all;
    }

    private static String shortest(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15 ? Long.toString((long) value)
                : Float.toString((float) value);
    }

    /**
     * Reads a block into memory.
     *
     * @param block    the nodes wanted, inside the frame, at least 2 x 2
     * @param progress is told how far the reading has come
     * @return the block with all that is known of the file
     * @throws InputException if memory cannot hold the block, or the file is damaged there
     */
    public GroundFile part(NodeRange block, Progress progress) {
        HeightLimits.checkWhole("size", block.columns(), block.rows(), new FileTrouble(file));
        GridFrame whole = frame();
        GridFrame part = whole.part(block.firstRow(), block.firstColumn(), block.firstRow() + block.rows() - 1,
                block.firstColumn() + block.columns() - 1);
        int rowsAtATime = Math.max(1, Math.min(blockRows(), block.rows()));
        // Bands that end where the file's blocks end, counted from the north.
        int north = whole.rows() - block.firstRow() - block.rows();
        int firstBand = north / rowsAtATime;
        int bands = (north + block.rows() - 1) / rowsAtATime - firstBand + 1;
        AtomicInteger done = new AtomicInteger();
        ElevationGrid grid = ElevationGrid.filled(part, sink ->
                IntStream.range(firstBand, firstBand + bands).parallel().forEach(band -> {
                    progress.check();
                    double[] run = new double[block.columns()];
                    for (int line = Math.max(north, band * rowsAtATime);
                            line < Math.min(north + block.rows(), (band + 1L) * rowsAtATime); line++) {
                        int row = whole.rows() - 1 - line;
                        read(new NodeRange(row, block.firstColumn(), 1, run.length), run);
                        sink.put(row - block.firstRow(), 0, run, run.length);
                    }
                    progress.report((double) done.incrementAndGet() / bands, "reading heights");
                }));
        return new GroundFile(file, format(), grid.withMetreScale(metreScale()), system, centre, scale, heights(),
                cautions(), oddities(), Objects.requireNonNull(whole));
    }

    @Override
    public void close() {
        try {
            ground.samples().close();
        } catch (IOException e) {
            throw new FileTrouble(file).unreadable("file", "it cannot be closed (" + e.getMessage() + ")",
                    "a readable file", e);
        }
    }
}
