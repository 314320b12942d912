package wisp.interchange;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.function.UnaryOperator;
import wisp.event.Fault;

/**
 * One row of a file, or one JSON record: the CloudEvents that it stands for, or what is wrong with it.
 *
 * @param line the line of the file where it begins, from 1
 * @param index its place among the rows, from 0
 * @param events CloudEvents as JSON; not yet checked
 * @param faults why it could not be turned into events; then there are none
 * @param naming what the reader of this file calls an event's field, such as a column's name
 */
record Row(long line, int index, List<JsonNode> events, List<Fault> faults, UnaryOperator<String> naming) {

    static Row sound(long line, int index, List<JsonNode> events) {
        return new Row(line, index, events, List.of(), UnaryOperator.identity());
    }

    static Row faulty(long line, int index, List<Fault> faults) {
        return new Row(line, index, List.of(), faults, UnaryOperator.identity());
    }
}
