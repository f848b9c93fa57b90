// SPDX-License-Identifier: Apache-2.0
package bermwright.site.ground;

import bermwright.filestore.DraftFile;
import bermwright.filestore.Storage;
import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.foundation.Require;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.NodeRange;
import bermwright.terrain.gridfile.GroundFile;
import bermwright.terrain.gridfile.GroundSource;
import bermwright.terrain.relief.ContourLine;
import bermwright.terrain.relief.Contours;
import bermwright.terrain.relief.Horizon;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.channels.Channels;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Contours and horizons of an elevation file, written as text. */
public final class GroundLines {
    /** No more nodes than this are held for a horizon (1), some 130 MB. */
    private static final long MOST_NODES = 16_000_000;

    private GroundLines() {
    }

    /**
     * Writes contours as GeoJSON, in the coordinates of the elevation file; the ground is held whole meanwhile.
     *
     * @param work     the elevation file
     * @param interval height between lines (m), positive
     * @param file     the file, replaced where it exists
     * @param progress told how far it has come
     * @throws InputException if the ground is too large for memory or the file cannot be written
     */
    public static void contours(GroundWork work, double interval, Path file, Progress progress) {
        work.refuseItself(file);
        GroundSource ground = work.ground();
        GroundFile read = ground.part(NodeRange.all(ground.frame()), progress.part(0, 0.5));
        List<ContourLine> lines = Contours.every(read.grid(), interval);
        progress.report(0.7, "writing contours");
        whole(file, out -> {
            out.write("{\n\"type\": \"FeatureCollection\",\n\"bermwright_reference_system\": "
                    + quoted(ground.referenceSystem().map(Object::toString).orElse("not known"))
                    + ",\n\"features\": [");
            for (int i = 0; i < lines.size(); i++) {
                progress.check();
                out.write(i == 0 ? "\n" : ",\n");
                write(lines.get(i), out);
            }
            out.write("\n]\n}\n");
        });
        work.add(new GroundWork.Written("contours every " + interval + " m", file, "m", lines.size()
                + " lines, in the coordinates of the elevation file"));
    }

    private static void write(ContourLine line, BufferedWriter out) throws IOException {
        out.write("{\"type\": \"Feature\", \"properties\": {\"height_m\": " + line.level()
                + "}, \"geometry\": {\"type\": \"LineString\", \"coordinates\": [");
        List<Point> points = line.points();
        for (int i = 0; i < points.size() + (line.isClosed() ? 1 : 0); i++) {
            Point p = points.get(i % points.size());
            out.write((i == 0 ? "[" : ", [") + p.east() + ", " + p.north() + "]");
        }
        out.write("]}}");
    }

    /**
     * Writes the horizon around a place as a table: azimuth, elevation, distance.
     *
     * @param work     the elevation file
     * @param view     from where and how far
     * @param file     the file, replaced where it exists
     * @param progress told how far it has come
     * @return how far the ground was read (m)
     * @throws InputException if the place has no ground or the file cannot be written
     */
    public static double horizon(GroundWork work, View view, Path file, Progress progress) {
        work.refuseItself(file);
        GroundSource ground = work.ground();
        NodeRange block = around(ground, view);
        GroundFile part = ground.part(block, progress.part(0, 0.8));
        if (part.grid().isMissing(view.place)) {
            throw InputException.badValue(new InputException.Place(ground.file().toString(), 0, "--at"),
                    view.place.east() + "," + view.place.north(), "a place where the ground is known");
        }
        double reach = Math.min(view.reach, Math.min(block.rows(), block.columns()) / 2.0 * ground.trueSpacing());
        List<Horizon.Sight> sights = Horizon.around(part.grid(), view.place, view.eye, view.reach, view.azimuths);
        whole(file, out -> {
            out.write("azimuth_deg,elevation_deg,distance_m\n");
            for (Horizon.Sight s : sights) {
                out.write(String.format(Locale.ROOT, "%.3f,%.5f,%.1f%n", s.azimuth().degrees(),
                        Math.toDegrees(s.elevation()), s.distance()));
            }
        });
        work.add(new GroundWork.Written(String.format(Locale.ROOT, "horizon at %.2f, %.2f", view.place.east(),
                view.place.north()), file, "deg", String.format(Locale.ROOT,
                "azimuths from grid north; ground read up to %.0f m around, what lies further is not seen", reach)));
        return reach;
    }

    /**
     * From where the horizon is looked at.
     *
     * @param place    the place
     * @param eye      height of the eye over the ground (m), zero or more
     * @param reach    how far to look (m), positive
     * @param azimuths in how many directions (1), 4 to 36,000
     */
    public record View(Point place, double eye, double reach, int azimuths) {
        /** Refuses views that see nothing. */
        public View {
            Require.notNegative("height of the eye", eye, "m");
            Require.positive("reach", reach, "m");
        }
    }

    private static NodeRange around(GroundSource ground, View view) {
        GridFrame frame = ground.frame();
        if (!frame.contains(view.place)) {
            throw InputException.badValue(new InputException.Place(ground.file().toString(), 0, "--at"),
                    view.place.east() + "," + view.place.north(), String.format(Locale.ROOT,
                    "a place within the file, %.1f to %.1f east, %.1f to %.1f north", frame.west(), frame.eastEdge(),
                    frame.south(), frame.northEdge()));
        }
        int row = (int) Math.min(frame.rows() - 2, (view.place.north() - frame.south()) / frame.spacing());
        int column = (int) Math.min(frame.columns() - 2, (view.place.east() - frame.west()) / frame.spacing());
        int wanted = (int) Math.min(Integer.MAX_VALUE / 4, Math.ceil(view.reach / ground.trueSpacing()) + 1);
        int margin = (int) Math.min(wanted, Math.sqrt(MOST_NODES) / 2 - 2);
        return new NodeRange(row, column, 2, 2).widened(margin, frame);
    }

    private interface Writing {
        void to(BufferedWriter out) throws IOException;
    }

    private static void whole(Path file, Writing writing) {
        try (DraftFile draft = new DraftFile(Storage.DISK, file);
                BufferedWriter out = new BufferedWriter(Channels.newWriter(draft.channel(), StandardCharsets.UTF_8))) {
            writing.to(out);
            out.flush();
            draft.finish();
        } catch (IOException e) {
            throw GroundWork.unwritable(file, e);
        }
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
