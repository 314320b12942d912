package wisp.log;

import java.time.Clock;
import org.junit.jupiter.api.extension.ExtendWith;
import wisp.testing.OwnPostgres;
import wisp.testing.PostgresServer;

@ExtendWith(OwnPostgres.class)
class PostgresLogTest extends EventLogConformance {
    private final PostgresServer server;

    PostgresLogTest(PostgresServer server) {
        this.server = server;
    }

    @Override
    EventLog open(Clock clock) {
        return PostgresLog.open(PostgresAddress.of(server.newSchema()), clock);
    }
}
