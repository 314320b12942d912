package wisp.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.sql.BatchUpdateException;
import org.junit.jupiter.api.Test;
import org.postgresql.util.PSQLException;
import org.postgresql.util.ServerErrorMessage;

class PostgresFailureTest {

    @Test
    void whatAnEventHoldsIsNotInTheFailure() {
        // fields as the protocol sends them (PostgreSQL documentation, section 55.8): severity, code, message, detail
        PSQLException said = new PSQLException(new ServerErrorMessage(
                "SERROR\0C23505\0Mduplicate key value\0DKey (id)=(secret-calf) already exists.\0"));
        BatchUpdateException batch = new BatchUpdateException(
                "Batch entry 0 insert into event values ('secret-calf') was aborted", "23505", new int[0]);
        batch.setNextException(said);
        LogFailure failure = new PostgresFailure(PostgresAddress.of("jdbc:postgresql://localhost/herd"))
                .of(batch, "Nothing was kept.");
        assertEquals(
                "The PostgreSQL database herd at localhost:5432 cannot be used (duplicate key value). Nothing was kept.",
                failure.getMessage());
    }
}
