// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.io.Closeable;
import java.io.IOException;

/** The numbers of an image as they are stored, line by line from the first; safe to ask from many threads. */
interface Samples extends Closeable {
    int width();

    int height();

    SampleKind kind();

    /** Lines of the blocks in which the numbers are kept. */
    int blockHeight();

    /** Stored numbers of which nothing need be unpacked to get at one: a line costs no more than its own bytes. */
    boolean isPlain();

    /** Copies a run of a line; {@code NaN} where the file has left a block out. */
    void run(int line, int column, int count, double[] into, int at) throws IOException;
}
