package wisp.log;

import java.time.Clock;

class MemoryLogTest extends EventLogConformance {
    @Override
    EventLog open(Clock clock) {
        return new MemoryLog(clock);
    }
}
