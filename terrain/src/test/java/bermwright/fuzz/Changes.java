// SPDX-License-Identifier: Apache-2.0
package bermwright.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Changes that files suffer: what editors, transfers and other programs do to them, and what nobody would do. */
public final class Changes {
    private static final List<String> ODD = List.of("", "0", "-0", "-1", "1", "1e999", "-1e999", "1e-320", "NaN",
            "nan", "Infinity", "inf", "null", "true", "1,5", "1.5.5", "0x10", "99999999999999999999",
            "2147483648", "-2147483649",
            "1e308", "\u0661\u0662", "\u0000", "\"", "\\", "#", "a b", "\u00e4\u20ac", "\ud83d\ude00", ",", ";", "\t",
            "x".repeat(300), "[", "{", "<", "&", "../..", "/dev/zero");
    private static final Pattern TOKEN = Pattern.compile("[^\\s,:;<>\"\\[\\]{}=]+");
    private static final int[] EDGES = {0, 1, -1, 2, 255, 256, 65535, 65536, Integer.MAX_VALUE, Integer.MIN_VALUE};

    private Changes() {
    }

    /**
     * Changes a text of words and lines.
     *
     * @param input  a text
     * @param other  another one
     * @param random the chance
     * @return the changed text
     */
    public static byte[] ofText(byte[] input, byte[] other, Random random) {
        String text = new String(input, StandardCharsets.UTF_8);
        switch (random.nextInt(8)) {
            case 0, 1, 2 -> {
                List<MatchResult> tokens = TOKEN.matcher(text).results().toList();
                if (tokens.isEmpty()) {
                    return bytes(ODD.get(random.nextInt(ODD.size())));
                }
                MatchResult token = tokens.get(random.nextInt(tokens.size()));
                String put = random.nextInt(3) == 0 ? tokens.get(random.nextInt(tokens.size())).group()
                        : ODD.get(random.nextInt(ODD.size()));
                return bytes(text.substring(0, token.start()) + put + text.substring(token.end()));
            }
            case 3 -> {
                return lines(text, random);
            }
            case 4 -> {
                int at = random.nextInt(text.length() + 1);
                return bytes(text.substring(0, at) + ODD.get(random.nextInt(ODD.size())) + text.substring(at));
            }
            case 5 -> {
                String[] from = new String(other, StandardCharsets.UTF_8).split("\n", -1);
                String[] to = text.split("\n", -1);
                to[random.nextInt(to.length)] = from[random.nextInt(from.length)];
                return bytes(String.join("\n", to));
            }
            case 6 -> {
                return bytes(random.nextBoolean() ? text.replace("\n", "\r\n") : text.replace(' ', '\t'));
            }
            default -> {
                return ofBytes(input, other, random);
            }
        }
    }

    private static byte[] lines(String text, Random random) {
        List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
        int at = random.nextInt(lines.size());
        int to = random.nextInt(lines.size());
        switch (random.nextInt(3)) {
            case 0 -> lines.remove(at);
            case 1 -> lines.add(to, lines.get(at));
            default -> lines.set(to, lines.set(at, lines.get(to)));
        }
        return bytes(String.join("\n", lines));
    }

    /**
     * Changes bytes.
     *
     * @param input  bytes
     * @param other  others
     * @param random the chance
     * @return the changed bytes
     */
    public static byte[] ofBytes(byte[] input, byte[] other, Random random) {
        if (input.length == 0) {
            return other.clone();
        }
        byte[] changed = input.clone();
        // Heads and directories stand at the beginning and the end; most changes go there.
        int window = Math.min(input.length, 400);
        int at = random.nextInt(3) == 0 ? random.nextInt(input.length)
                : random.nextBoolean() ? random.nextInt(window) : input.length - 1 - random.nextInt(window);
        switch (random.nextInt(7)) {
            case 0, 1 -> changed[at] ^= 1 << random.nextInt(8);
            case 2 -> changed[at] = (byte) EDGES[random.nextInt(EDGES.length)];
            case 3 -> {
                int edge = EDGES[random.nextInt(EDGES.length)];
                boolean bigEnd = random.nextBoolean();
                for (int i = 0, n = random.nextBoolean() ? 2 : 4; i < n && at + i < changed.length; i++) {
                    changed[at + i] = (byte) (edge >> 8 * (bigEnd ? n - 1 - i : i));
                }
            }
            case 4 -> changed = Arrays.copyOf(changed, at);
            case 5 -> changed = Arrays.copyOf(changed, changed.length + random.nextInt(200));
            default -> {
                int length = Math.min(random.nextInt(64), Math.min(changed.length - at, other.length));
                int from = random.nextInt(other.length - length + 1);
                System.arraycopy(other, from, changed, at, length);
            }
        }
        return changed;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
