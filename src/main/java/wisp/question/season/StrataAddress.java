package wisp.question.season;

import java.util.LinkedHashMap;
import java.util.Map;
import wisp.indicator.Selection;

/** The parameters that name the calves of one group of a strata table. */
final class StrataAddress {
    private StrataAddress() {}

    static Map<String, String> of(StrataTable.Line line, StrataTable table, Selection selection) {
        Map<String, String> parameters = new LinkedHashMap<>(selection.parameters());
        parameters.put("season", table.figure().season());
        parameters.put("by", line.by().word());
        parameters.put("stratum", line.group().name());
        return parameters;
    }
}
