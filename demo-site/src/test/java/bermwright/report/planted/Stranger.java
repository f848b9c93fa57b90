// SPDX-License-Identifier: Apache-2.0
package bermwright.report.planted;

import java.io.IOException;
import java.io.InputStream;
import java.io.ObjectInputStream;
import java.net.URL;

/** Planted: asks a host for an object and makes it. */
final class Stranger {
    private Stranger() {
    }

    static Object fetched(String address) throws IOException, ClassNotFoundException {
        try (InputStream in = new URL(address).openStream(); ObjectInputStream objects = new ObjectInputStream(in)) {
            return objects.readObject();
        }
    }
}
