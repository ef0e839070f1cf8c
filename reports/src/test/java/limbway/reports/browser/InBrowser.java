package limbway.reports.browser;

import java.util.function.Supplier;

import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * Gives tests the browsers and the sample pages, one of each for all of them. Where no browser is installed the tests are
 * skipped, and that is said.
 */
final class InBrowser implements BeforeEachCallback, ParameterResolver {

    private static final Namespace NAMESPACE = Namespace.create(InBrowser.class);

    @Override
    public void beforeEach(ExtensionContext context) {
        if (Browsers.installed().isEmpty()) {
            shared(context, Boolean.class, () -> {
                System.out.println("SKIPPED: " + Browsers.MISSING);
                return true;
            });
            Assumptions.abort(Browsers.MISSING);
        }
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        Class<?> type = parameter.getParameter().getType();
        return type == Browsers.class || type == SamplePages.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Browsers.class
                ? shared(context, Browsers.class, Browsers::start)
                : shared(context, SamplePages.class, SamplePages::new);
    }

    /** Kept until the last test has ended, and closed then. */
    private static <T> T shared(ExtensionContext context, Class<T> type, Supplier<T> maker) {
        return context.getRoot().getStore(NAMESPACE).getOrComputeIfAbsent(type, key -> maker.get(), type);
    }
}
