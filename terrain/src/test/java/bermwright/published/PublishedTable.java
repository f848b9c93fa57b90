// SPDX-License-Identifier: Apache-2.0
package bermwright.published;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ArgumentsSource;

/**
 * Marks a test that runs once for each row of a published table kept as CSV; the test takes a {@link PublishedRow}.
 *
 * <p>The file stands in {@code src/test/resources} and begins with the lines {@code # work: …}, {@code # place: …},
 * {@code # units: …} and, where so, {@code # remembered: true}; then comes the header of columns. Lines that begin
 * with {@code #} are notes.
 */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@Tag("published")
@ParameterizedTest
@ArgumentsSource(PublishedRows.class)
@ExtendWith(PublishedExtension.class)
public @interface PublishedTable {
    /** Path of the CSV on the test class path, such as {@code /bermwright/x/published/someone-1991-table2.csv}. */
    String value();
}
