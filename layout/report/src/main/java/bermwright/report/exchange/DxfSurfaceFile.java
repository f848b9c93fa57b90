// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import bermwright.foundation.Vec3;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Writes a triangulated surface as 3-D faces in a drawing exchange file of release 12 (AC1009), in projected metres, on
 * a layer named as the surface; what it is and the datum stand in comments at its head (group code 999).
 *
 * @see "DXF reference, release 12: HEADER and ENTITIES sections, 3DFACE; from memory"
 */
public final class DxfSurfaceFile {
    private DxfSurfaceFile() {
    }

    /**
     * Writes the file.
     *
     * @param file    where to
     * @param surface the surface
     * @param datum   what places and heights are counted from, in a sentence
     * @throws IOException if it cannot be written
     */
    public static void write(Path file, TinSurface surface, String datum) throws IOException {
        Tin net = surface.net();
        String layer = surface.name().toUpperCase(Locale.ROOT);
        DxfPairs out = new DxfPairs(true).words(999, surface.about()).words(999, datum);
        out.pair(0, "SECTION").pair(2, "HEADER").pair(9, "$ACADVER").pair(1, "AC1009").pair(0, "ENDSEC");
        out.pair(0, "SECTION").pair(2, "TABLES").pair(0, "TABLE").pair(2, "LTYPE").pair(70, "1").pair(0, "LTYPE")
                .pair(2, "CONTINUOUS").pair(70, "0").pair(3, "Solid line").pair(72, "65").pair(73, "0")
                .pair(40, "0.0").pair(0, "ENDTAB").pair(0, "TABLE").pair(2, "LAYER").pair(70, "1").pair(0, "LAYER")
                .pair(2, layer).pair(70, "0").pair(62, "7").pair(6, "CONTINUOUS").pair(0, "ENDTAB").pair(0, "ENDSEC");
        out.pair(0, "SECTION").pair(2, "ENTITIES");
        for (int i = 0; i < net.triangles(); i++) {
            out.pair(0, "3DFACE").pair(8, layer);
            for (int k = 0; k < 4; k++) {
                int point = net.corner(i, Math.min(k, 2));
                out.place(10 + k, new Vec3(net.east(point), net.north(point), millimetres(surface.height(point))));
            }
        }
        out.pair(0, "ENDSEC").pair(0, "EOF").write(file);
    }

    private static double millimetres(double height) {
        return Math.rint(1000 * height) / 1000;
    }
}
