// SPDX-License-Identifier: Apache-2.0
package bermwright.demosite;

import bermwright.foundation.Progress;
import bermwright.terrain.gridfile.GeoTiffWriter;
import bermwright.terrain.gridfile.ReferenceSystem;
import java.io.IOException;
import java.nio.file.Path;

/** Writes the demo site's elevation file anew from its seed. */
public final class WriteGround {
    private WriteGround() {
    }

    /**
     * Writes the file.
     *
     * @param arguments the file to write
     * @throws IOException if it cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        GeoTiffWriter.write(Path.of(arguments[0]), DemoGround.grid(), ReferenceSystem.lunarSouthPolar(),
                Progress.NONE);
    }
}
