// SPDX-License-Identifier: Apache-2.0
package bermwright.report.planted;

import com.openhtmltopdf.util.XRLog;

/** A planted violation: sets a page outside the room for it. */
final class SetsAPage {
    private SetsAPage() {
    }

    static boolean isLogged() {
        return XRLog.isLoggingEnabled();
    }
}
