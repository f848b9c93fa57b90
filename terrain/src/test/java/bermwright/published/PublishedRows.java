// SPDX-License-Identifier: Apache-2.0
package bermwright.published;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.ArgumentsProvider;
import org.junit.jupiter.params.support.ParameterDeclarations;

/** Reads the rows of a published table kept as CSV. */
final class PublishedRows implements ArgumentsProvider {
    @Override
    public Stream<? extends Arguments> provideArguments(ParameterDeclarations parameters, ExtensionContext context) {
        PublishedTable table = context.getRequiredTestMethod().getAnnotation(PublishedTable.class);
        String test = context.getRequiredTestClass().getSimpleName() + "."
                + context.getRequiredTestMethod().getName();
        List<PublishedRow> rows = read(context.getRequiredTestClass(), table.value());
        rows.forEach(row -> row.belongsTo(test));
        return rows.stream().map(Arguments::of);
    }

    static List<PublishedRow> read(Class<?> near, String resource) {
        try (InputStream in = near.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("no published table " + resource + " on the test class path");
            }
            return rows(new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)), resource);
        } catch (IOException e) {
            throw new IllegalStateException("cannot read " + resource, e);
        }
    }

    private static List<PublishedRow> rows(BufferedReader reader, String resource) throws IOException {
        Map<String, String> head = new LinkedHashMap<>();
        List<PublishedRow> rows = new ArrayList<>();
        String[] columns = null;
        String line = reader.readLine();
        for (int number = 1; line != null; line = reader.readLine(), number++) {
            if (line.startsWith("#")) {
                int colon = line.indexOf(':');
                if (colon > 0) {
                    head.putIfAbsent(line.substring(1, colon).strip(), line.substring(colon + 1).strip());
                }
            } else if (columns == null && !line.isBlank()) {
                columns = line.split(",", -1);
            } else if (!line.isBlank()) {
                rows.add(row(head, columns, line, number));
            }
        }
        if (head.get("work") == null || head.get("place") == null || head.get("units") == null) {
            throw new IllegalStateException(resource + " must begin with # work:, # place: and # units:");
        }
        return rows;
    }

    private static PublishedRow row(Map<String, String> head, String[] columns, String line, int number) {
        String[] cells = line.split(",", -1);
        Map<String, String> named = new LinkedHashMap<>();
        for (int i = 0; i < columns.length; i++) {
            named.put(columns[i].strip(), i < cells.length ? cells[i].strip() : "");
        }
        return new PublishedRow(head, named, "line " + number + " (" + cells[0].strip() + ")");
    }
}
