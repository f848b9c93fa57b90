// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Properties;
import org.junit.jupiter.api.Test;

class VersionTest {
    @Test
    void saysTheCommitWhereTheBuildKnewIt() {
        assertEquals("0.1.0 (commit 74d5f58a0c1e)", Version.whole(built("74d5f58a0c1e", "false")));
        assertEquals("0.1.0 (commit 74d5f58a0c1e, sources changed since)",
                Version.whole(built("74d5f58a0c1e", "true")));
        assertEquals("0.1.0 (commit not known)", Version.whole(built("${git.commit.id.abbrev}", "${git.dirty}")));
        assertTrue(Version.whole().startsWith(Version.text() + " ("));
    }

    private static Properties built(String commit, String changed) {
        Properties built = new Properties();
        built.setProperty("version", "0.1.0");
        built.setProperty("commit", commit);
        built.setProperty("changed", changed);
        return built;
    }
}
