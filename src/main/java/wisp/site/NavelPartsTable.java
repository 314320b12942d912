package wisp.site;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import wisp.question.navels.GroupRisk;
import wisp.question.navels.Measured;
import wisp.question.navels.NavelStrata;
import wisp.question.navels.NavelStratum;

/** Late against early in each part of the calves as a table for other programs; what cannot be estimated is empty. */
final class NavelPartsTable {
    private NavelPartsTable() {}

    static Table of(NavelStrata strata) {
        StringColumn name =
                StringColumn.create(strata.by() == null ? "by" : strata.by().word());
        strata.strata().forEach(part -> name.append(part.name()));
        Table table = Table.create("navels-parts", name);
        counts(table, "early", strata, NavelStratum::early);
        counts(table, "late", strata, NavelStratum::late);
        three(table, "risk_ratio", strata, part -> part.against().riskRatio());
        three(table, "risk_difference", strata, part -> part.against().riskDifference());
        column(table, "fisher_p", strata, part -> part.against().fisher().p());
        column(table, "fisher_p_adjusted", strata, NavelStratum::adjustedP);
        return table;
    }

    private static void counts(Table table, String name, NavelStrata strata, Function<NavelStratum, GroupRisk> group) {
        IntColumn n = IntColumn.create(name + "_n");
        IntColumn cases = IntColumn.create(name + "_cases");
        strata.strata().forEach(part -> {
            n.append(group.apply(part).n());
            cases.append(group.apply(part).cases());
        });
        table.addColumns(n, cases);
        three(table, name + "_risk_at_21d", strata, part -> group.apply(part).at21Days());
    }

    private static void three(Table table, String name, NavelStrata strata, Function<NavelStratum, Measured> measure) {
        column(table, name, strata, part -> NavelsTable.value(measure.apply(part)));
        column(table, name + "_low", strata, part -> NavelsTable.low(measure.apply(part)));
        column(table, name + "_high", strata, part -> NavelsTable.high(measure.apply(part)));
    }

    private static void column(Table table, String name, NavelStrata strata, ToDoubleFunction<NavelStratum> value) {
        DoubleColumn column = DoubleColumn.create(name);
        strata.strata().forEach(part -> NavelsTable.append(column, value.applyAsDouble(part)));
        table.addColumns(column);
    }
}
