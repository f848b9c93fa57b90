// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import bermwright.foundation.InputException;

/** Where in which file the reading stands: {@code plan.json}, {@code hulls[0].length_m}. */
record At(String file, String path) {
    At key(String name) {
        return new At(file, path.isEmpty() ? name : path + "." + name);
    }

    At item(int index) {
        return new At(file, path + "[" + index + "]");
    }

    InputException refuse(Json value, String accepted) {
        return InputException.badValue(new InputException.Place(file, value.line(), path), value.found(), accepted);
    }

    InputException refuse(int line, String found, String accepted) {
        return InputException.badValue(new InputException.Place(file, line, path), found, accepted);
    }
}
