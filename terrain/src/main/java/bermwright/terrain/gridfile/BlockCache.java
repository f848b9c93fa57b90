// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.LinkedHashMap;
import java.util.Map;

/** Keeps the blocks last unpacked, up to a number of bytes; a block wanted by two threads is unpacked once. */
final class BlockCache {
    /** Unpacks a block. */
    @FunctionalInterface
    interface Unpacker {
        ByteBuffer unpack(int block) throws IOException;
    }

    /** A block that is there or is being unpacked. */
    private static final class Slot {
        private ByteBuffer data;
    }

    private final int most;
    private final Unpacker unpacker;
    private final LinkedHashMap<Integer, Slot> slots = new LinkedHashMap<>(16, 0.75f, true);

    BlockCache(long mostBytes, long blockBytes, Unpacker unpacker) {
        this.most = (int) Math.max(2, Math.min(Integer.MAX_VALUE, mostBytes / Math.max(1, blockBytes)));
        this.unpacker = unpacker;
    }

    ByteBuffer block(int block) throws IOException {
        Slot slot;
        synchronized (slots) {
            slot = slots.computeIfAbsent(block, b -> new Slot());
            if (slots.size() > most) {
                Map.Entry<Integer, Slot> oldest = slots.entrySet().iterator().next();
                slots.remove(oldest.getKey());
            }
        }
        synchronized (slot) {
            if (slot.data == null) {
                slot.data = unpacker.unpack(block);
            }
            return slot.data;
        }
    }
}
