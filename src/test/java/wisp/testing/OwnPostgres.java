package wisp.testing;

import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/** Hands tests the one PostgreSQL of this run, started when first asked for and stopped after the last test. */
public final class OwnPostgres implements ParameterResolver {
    private static final ExtensionContext.Namespace HERE = ExtensionContext.Namespace.create(OwnPostgres.class);

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == PostgresServer.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return context.getRoot()
                .getStore(HERE)
                .computeIfAbsent(PostgresServer.class, key -> PostgresServer.create(), PostgresServer.class);
    }
}
