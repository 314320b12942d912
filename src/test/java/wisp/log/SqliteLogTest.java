package wisp.log;

import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.io.TempDir;

class SqliteLogTest extends EventLogConformance {
    @TempDir
    private Path folder;

    @Override
    EventLog open(Clock clock) {
        return SqliteLog.open(folder, clock);
    }
}
