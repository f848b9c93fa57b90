// SPDX-License-Identifier: Apache-2.0
package bermwright.filestore;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/**
 * Files that other programs put beside the ones they open, without being asked: statistics and overviews of a raster,
 * logs and locks of a database or a table, what a file manager keeps of a folder. They hold nothing that a person
 * wrote and mean nothing without the file they stand beside.
 */
final class SideFiles {
    /** What file managers keep in any folder they show, in small letters. */
    private static final Set<String> OF_FOLDERS = Set.of(".ds_store", "thumbs.db", "desktop.ini");
    /** Behind the whole name of the file: raster statistics and overviews, database logs, locks. */
    private static final List<String> ENDINGS = List.of(".aux.xml", ".ovr", "-wal", "-shm", "-journal", ".lock");
    /** In place of the file's own ending: what a map program notes of a layer. */
    private static final String NOTES = ".qmd";
    private static final String TABLE_LOCK = ".~lock.";
    private static final String SECOND_FORK = "._";

    private SideFiles() {
    }

    /**
     * Whether a file is one, of a folder or of a file of ours.
     *
     * @param folder the folder of ours
     * @param file   a file in it, by its path from there with slashes
     * @param ours   the files of ours, in the same manner
     * @return whether it may go with them
     */
    static boolean holds(Path folder, String file, Set<String> ours) {
        if (!Files.isRegularFile(folder.resolve(file), LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        int slash = file.lastIndexOf('/') + 1;
        String in = file.substring(0, slash);
        String name = file.substring(slash);
        if (OF_FOLDERS.contains(name.toLowerCase(java.util.Locale.ROOT))) {
            return true;
        }
        if (name.endsWith(NOTES)) {
            String stem = file.substring(0, file.length() - NOTES.length() + 1);
            return ours.stream().anyMatch(own -> own.startsWith(stem) && own.indexOf('.', stem.length()) < 0
                    && own.indexOf('/', stem.length()) < 0);
        }
        if (name.startsWith(TABLE_LOCK) && name.endsWith("#")) {
            return ours.contains(in + name.substring(TABLE_LOCK.length(), name.length() - 1));
        }
        if (name.startsWith(SECOND_FORK)) {
            return ours.contains(in + name.substring(SECOND_FORK.length()));
        }
        return ENDINGS.stream().anyMatch(ending -> file.endsWith(ending)
                && ours.contains(file.substring(0, file.length() - ending.length())));
    }
}
