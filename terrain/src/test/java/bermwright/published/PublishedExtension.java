// SPDX-License-Identifier: Apache-2.0
package bermwright.published;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Method;
import org.junit.jupiter.api.extension.AfterTestExecutionCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.InvocationInterceptor;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.junit.jupiter.api.extension.ReflectiveInvocationContext;

/** Hands the printed figure to the test and fails a test that never looked at it. */
final class PublishedExtension implements ParameterResolver, AfterTestExecutionCallback, InvocationInterceptor {
    private static final ExtensionContext.Namespace SPACE = ExtensionContext.Namespace.create("published");

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == PublishedValue.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        Method method = context.getRequiredTestMethod();
        Published source = method.getAnnotation(Published.class);
        PublishedValue value = new PublishedValue(source,
                context.getRequiredTestClass().getSimpleName() + "." + method.getName());
        context.getStore(SPACE).put("value", value);
        return value;
    }

    @Override
    public void interceptTestTemplateMethod(Invocation<Void> invocation, ReflectiveInvocationContext<Method> call,
            ExtensionContext context) throws Throwable {
        call.getArguments().stream().filter(PublishedRow.class::isInstance)
                .forEach(row -> context.getStore(SPACE).put("row", row));
        invocation.proceed();
    }

    @Override
    public void afterTestExecution(ExtensionContext context) {
        if (context.getExecutionException().isPresent()) {
            return;
        }
        PublishedValue value = context.getStore(SPACE).get("value", PublishedValue.class);
        PublishedRow row = context.getStore(SPACE).get("row", PublishedRow.class);
        assertTrue(value != null || row != null, "a published check must take a PublishedValue or a PublishedRow");
        assertTrue(value == null || value.wasRead(), "the printed value was never read");
        assertTrue(row == null || row.wasRead(), "the printed row was never read");
    }
}
