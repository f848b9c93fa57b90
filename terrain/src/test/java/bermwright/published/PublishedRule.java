// SPDX-License-Identifier: Apache-2.0
package bermwright.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every test in a class whose name ends in PublishedTest is marked, names its source and takes the printed figure. */
public abstract class PublishedRule {
    @Test
    void everyPublishedCheckNamesItsSourceAndTakesThePrintedFigure() throws Exception {
        assertEquals(List.of(), troubles(publishedClasses(getClass())));
    }

    /** What is wrong with the given classes, in words; empty where nothing is. */
    public static List<String> troubles(List<Class<?>> classes) {
        List<String> troubles = new ArrayList<>();
        for (Class<?> type : classes) {
            for (Method method : type.getDeclaredMethods()) {
                if (isTest(method)) {
                    trouble(method).ifPresent(t -> troubles.add(type.getSimpleName() + "." + method.getName() + t));
                }
            }
        }
        return troubles;
    }

    private static boolean isTest(Method method) {
        return Arrays.stream(method.getAnnotations()).map(a -> a.annotationType().getSimpleName())
                .anyMatch(n -> n.endsWith("Test") || n.equals("Published") || n.equals("PublishedTable")
                        || n.equals("TestFactory"));
    }

    private static java.util.Optional<String> trouble(Method method) {
        Published single = method.getAnnotation(Published.class);
        PublishedTable table = method.getAnnotation(PublishedTable.class);
        if (single == null && table == null) {
            return java.util.Optional.of(" carries neither @Published nor @PublishedTable");
        }
        if (single != null && Arrays.stream(method.getAnnotations()).map(a -> a.annotationType().getSimpleName())
                .noneMatch(n -> n.endsWith("Test"))) {
            return java.util.Optional.of(" is never run, for it carries no @Test");
        }
        Class<?> wanted = single != null ? PublishedValue.class : PublishedRow.class;
        if (Arrays.stream(method.getParameterTypes()).noneMatch(wanted::equals)) {
            return java.util.Optional.of(" does not take a " + wanted.getSimpleName());
        }
        if (single != null && (single.work().isBlank() || single.place().isBlank() || single.unit().isBlank())) {
            return java.util.Optional.of(" does not name work, place and unit");
        }
        return java.util.Optional.empty();
    }

    private static List<Class<?>> publishedClasses(Class<?> near) throws IOException, ReflectiveOperationException {
        Path root;
        try {
            root = Path.of(near.getProtectionDomain().getCodeSource().getLocation().toURI());
        } catch (java.net.URISyntaxException e) {
            throw new IllegalStateException("cannot find the test classes", e);
        }
        List<Class<?>> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(root)) {
            List<Path> tests = files.filter(f -> f.toString().endsWith("PublishedTest.class")).toList();
            for (Path file : tests) {
                String name = root.relativize(file).toString().replace(java.io.File.separatorChar, '.');
                found.add(Class.forName(name.substring(0, name.length() - ".class".length()), false,
                        near.getClassLoader()));
            }
        }
        return found;
    }
}
