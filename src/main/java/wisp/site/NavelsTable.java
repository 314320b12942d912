package wisp.site;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import wisp.question.navels.DelayClass;
import wisp.question.navels.Measured;
import wisp.question.navels.NavelsAnswer;

/** The classes of delay as a table for other programs; shares as fractions, what cannot be estimated empty. */
final class NavelsTable {
    private NavelsTable() {}

    static Table of(NavelsAnswer answer) {
        StringColumn delay = StringColumn.create("delay");
        IntColumn n = IntColumn.create("n");
        IntColumn cases = IntColumn.create("cases");
        IntColumn censored = IntColumn.create("censored");
        for (DelayClass one : answer.classes()) {
            delay.append(one.delay().word());
            n.append(one.risk().n());
            cases.append(one.risk().cases());
            censored.append(one.risk().censored());
        }
        Table table = Table.create("navels", delay, n, cases, censored);
        three(table, "risk", answer, one -> one.risk().share());
        three(table, "risk_at_21d", answer, one -> one.risk().at21Days());
        three(table, "risk_ratio", answer, one -> one.against().riskRatio());
        three(table, "risk_difference", answer, one -> one.against().riskDifference());
        three(table, "odds_ratio", answer, one -> one.against().oddsRatio());
        three(
                table,
                "mantel_haenszel_risk_ratio",
                answer,
                one -> one.against().mantelHaenszel().riskRatio());
        column(table, "fisher_p", answer, one -> one.against().fisher().p());
        column(table, "fisher_p_adjusted", answer, DelayClass::adjustedP);
        column(table, "mid_p", answer, one -> one.against().midP().p());
        return table;
    }

    private static void three(Table table, String name, NavelsAnswer answer, Function<DelayClass, Measured> measure) {
        column(table, name, answer, one -> value(measure.apply(one)));
        column(table, name + "_low", answer, one -> low(measure.apply(one)));
        column(table, name + "_high", answer, one -> high(measure.apply(one)));
    }

    static double value(Measured measured) {
        return measured.known() ? measured.interval().value() : Double.NaN;
    }

    static double low(Measured measured) {
        return measured.known() ? measured.interval().low() : Double.NaN;
    }

    static double high(Measured measured) {
        return measured.known() ? measured.interval().high() : Double.NaN;
    }

    static void append(DoubleColumn column, double number) {
        if (Double.isFinite(number)) {
            column.append(number);
        } else {
            column.appendMissing();
        }
    }

    private static void column(Table table, String name, NavelsAnswer answer, ToDoubleFunction<DelayClass> value) {
        DoubleColumn column = DoubleColumn.create(name);
        answer.classes().forEach(one -> append(column, value.applyAsDouble(one)));
        table.addColumns(column);
    }
}
