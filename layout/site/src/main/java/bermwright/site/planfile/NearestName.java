// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Finds the known name a misspelt one was most likely meant to be. */
final class NearestName {
    private NearestName() {
    }

    static String to(String word, List<String> known) {
        String lower = word.toLowerCase(Locale.ROOT);
        return known.stream().min(Comparator.comparingInt(
                (String name) -> distance(lower, name.toLowerCase(Locale.ROOT)) - 2 * sameStart(lower, name)))
                .orElse("none");
    }

    /** Whole words between underscores that both names begin with: a wrong unit keeps all but the last. */
    private static int sameStart(String word, String name) {
        String[] a = word.split("_");
        String[] b = name.toLowerCase(Locale.ROOT).split("_");
        int same = 0;
        while (same < Math.min(a.length, b.length) && a[same].equals(b[same])) {
            same++;
        }
        return same;
    }

    /** The least number of letters to add, drop or change. */
    static int distance(String a, String b) {
        int[] above = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(change, Math.min(above[j], row[j - 1]) + 1);
            }
            above = row;
        }
        return above[b.length()];
    }
}
