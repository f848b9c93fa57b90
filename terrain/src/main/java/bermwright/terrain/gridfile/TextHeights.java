// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.terrain.grid.GridFrame;
import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;

/** Heights read from text: kept in memory where they are few, else in a private file that goes when it is closed. */
final class TextHeights implements Closeable {
    /** More nodes than this go to a file. */
    private static final long MOST_IN_MEMORY = 16_000_000;

    private final GridFrame frame;
    private final FileTrouble trouble;
    private final List<double[]> lines = new ArrayList<>();
    private final FileChannel spool;

    private TextHeights(GridFrame frame, FileTrouble trouble, FileChannel spool) {
        this.frame = frame;
        this.trouble = trouble;
        this.spool = spool;
    }

    static TextHeights begun(GridFrame frame, FileTrouble trouble) throws IOException {
        boolean few = frame.nodes() <= Math.min(MOST_IN_MEMORY, HeightLimits.mostNodes() / 4);
        FileChannel spool = null;
        if (!few) {
            Path file = Files.createTempFile("bermwright-heights", ".raw");
            spool = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE,
                    StandardOpenOption.DELETE_ON_CLOSE);
        }
        return new TextHeights(frame, trouble, spool);
    }

    void add(double[] line) throws IOException {
        if (spool == null) {
            lines.add(line.clone());
            return;
        }
        ByteBuffer bytes = ByteBuffer.allocate(8 * line.length).order(ByteOrder.LITTLE_ENDIAN);
        bytes.asDoubleBuffer().put(line);
        while (bytes.hasRemaining()) {
            spool.write(bytes);
        }
    }

    Samples samples() {
        if (spool != null) {
            return new RawSamples(spool, new RawSamples.Layout(frame.columns(), frame.rows(), 0, 8L * frame.columns()),
                    SampleKind.FLOAT64, ByteOrder.LITTLE_ENDIAN, trouble);
        }
        return new InMemory(frame, List.copyOf(lines));
    }

    @Override
    public void close() throws IOException {
        if (spool != null) {
            spool.close();
        }
    }

    private record InMemory(GridFrame frame, List<double[]> lines) implements Samples {
        @Override
        public int width() {
            return frame.columns();
        }

        @Override
        public int height() {
            return frame.rows();
        }

        @Override
        public SampleKind kind() {
            return SampleKind.FLOAT64;
        }

        @Override
        public int blockHeight() {
            return 1;
        }

        @Override
        public boolean isPlain() {
            return true;
        }

        @Override
        public void run(int line, int column, int count, double[] into, int at) {
            System.arraycopy(lines.get(line), column, into, at, count);
        }

        @Override
        public void close() {
            // nothing is open
        }
    }
}
