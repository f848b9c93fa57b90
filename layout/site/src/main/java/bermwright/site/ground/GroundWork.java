// SPDX-License-Identifier: Apache-2.0
package bermwright.site.ground;

import bermwright.foundation.InputException;
import bermwright.foundation.Progress;
import bermwright.terrain.grid.HeightSource;
import bermwright.terrain.gridfile.GroundFiles;
import bermwright.terrain.gridfile.GroundSource;
import bermwright.terrain.gridfile.SurfaceContent;
import bermwright.terrain.gridfile.SurfaceFile;
import bermwright.terrain.relief.Surface;
import bermwright.terrain.relief.SurfaceStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** An elevation file of which surfaces are written as files. */
public final class GroundWork implements Closeable {
    private final GroundSource ground;
    private final boolean packed;
    private final List<Written> written = new ArrayList<>();

    private GroundWork(GroundSource ground, boolean packed) {
        this.ground = ground;
        this.packed = packed;
    }

    /**
     * A file that was written.
     *
     * @param title what it holds, in a few words
     * @param file the file
     * @param unit unit of its values, {@code 1} for pure numbers
     * @param note what its reader should know; empty where nothing
     */
    public record Written(String title, Path file, String unit, String note) {
    }

    /**
     * Opens an elevation file.
     *
     * @param file     the file
     * @param packed   true to write tiles packed by deflate with overviews, false for plain numbers
     * @param progress told how far the reading of a text has come
     * @return the work, to be closed
     * @throws InputException if the file cannot be used
     */
    public static GroundWork open(Path file, boolean packed, Progress progress) {
        return new GroundWork(GroundFiles.open(file, GroundFiles.Knowledge.NONE, progress), packed);
    }

    /**
     * The open file.
     *
     * @return the file
     */
    public GroundSource ground() {
        return ground;
    }

    /**
     * What was written so far.
     *
     * @return the files in order
     */
    public List<Written> written() {
        return List.copyOf(written);
    }

    /**
     * Works out a surface and writes it.
     *
     * @param title     what it is, in a few words
     * @param surface  the surface
     * @param file     the file, replaced where it exists
     * @param progress told how far it has come
     * @throws InputException if the file cannot be written
     */
    public void write(String title, Surface surface, Path file, Progress progress) {
        SurfaceContent.Kind kind = surface.unit().equals("1") ? SurfaceContent.Kind.BYTE : SurfaceContent.Kind.FLOAT32;
        write(title, surface, new Target(file, kind), progress);
    }

    private record Target(Path file, SurfaceContent.Kind kind) {
    }

    private void write(String title, Surface surface, Target target, Progress progress) {
        refuseItself(target.file);
        SurfaceFile.Layer layer = new SurfaceFile.Layer(ground.frame(), ground.referenceSystem(),
                new SurfaceContent(target.kind, surface.unit(), Optional.of(title)));
        try (SurfaceFile out = packed ? SurfaceFile.packed(target.file, layer) : SurfaceFile.plain(target.file, layer,
                SurfaceStream.rowsOfABlock(ground, surface), SurfaceStream.columnsOfABlock(ground, surface))) {
            SurfaceStream.run(ground, surface, out, progress);
            out.finish(progress);
        } catch (UncheckedIOException e) {
            throw unwritable(target.file, e.getCause());
        } catch (IOException e) {
            throw unwritable(target.file, e);
        }
        written.add(new Written(title, target.file, surface.unit(), scaleNote()));
    }

    /** Says where one metre scale does not serve all of a file. */
    private String scaleNote() {
        double scale = ground.metreScale();
        return scale == 1 ? "" : String.format(Locale.ROOT,
                "over true metres: one projected metre is %.6f m at the middle of the file", scale);
    }

    /** Notes a file that was written otherwise. */
    void add(Written file) {
        written.add(file);
    }

    void refuseItself(Path file) {
        try {
            if (Files.exists(file) && Files.isSameFile(file, ground.file())) {
                throw InputException.badValue(InputException.Place.of(file.toString()), "the elevation file itself",
                        "another file to write to");
            }
        } catch (IOException e) {
            throw unwritable(file, e);
        }
    }

    static InputException unwritable(Path file, IOException e) {
        return InputException.unreadable(InputException.Place.of(file.toString()), "it cannot be written ("
                + e.getMessage() + ")", "a file in a folder that can be written to", Optional.of(e));
    }

    HeightSource source() {
        return ground;
    }

    @Override
    public void close() {
        ground.close();
    }
}
