// SPDX-License-Identifier: Apache-2.0
package bermwright.published;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.ExtendWith;

/** Marks a test that compares with one figure printed by others; the test takes a {@link PublishedValue}. */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@Tag("published")
@ExtendWith(PublishedExtension.class)
public @interface Published {
    /** The published work: authors, year, title or journal; or "common practice, no source". */
    String work();

    /** Where in the work the figure stands. */
    String place();

    /** The figure as printed; never our own number. */
    double printedValue();

    /** Unit of the printed figure, 1 for a pure number. */
    String unit();

    /** Allowed distance from the printed figure, in its unit. */
    double tolerance();

    /** True where the printed figure was written down from memory. */
    boolean remembered() default false;
}
