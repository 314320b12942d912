package wisp.site;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import wisp.question.PenShare;
import wisp.question.PensAnswer;
import wisp.statistics.FunnelLimits;
import wisp.statistics.Interval;

/** The pens' table as CSV: the numbers of the JSON under the same names, shares as they are and not in percent. */
final class PensCsv {
    private PensCsv() {}

    static String of(PensAnswer answer) {
        List<PenShare> pens = answer.pens();
        Table table = Table.create("pens");
        table.addColumns(
                text("pen", pens, PenShare::pen),
                whole("n", pens, pen -> pen.share().n()),
                whole("dirty", pens, pen -> pen.share().dirty()));
        interval(table, "share", "low", "high", pens, pen -> pen.share().interval());
        number(table, "mean_score", pens, PenShare::meanScore);
        number(table, "z", pens, PenShare::z);
        limits(table, "95", pens, PenShare::limits95);
        limits(table, "998", pens, PenShare::limits998);
        interval(table, "shrunken", "shrunken_low", "shrunken_high", pens, PenShare::shrunken);
        number(table, "probability_dirtiest", pens, PenShare::probabilityDirtiest);
        number(table, "probability_above_median", pens, PenShare::probabilityAboveMedian);
        number(
                table,
                "p_adjusted",
                pens,
                pen -> pen.others() == null ? Double.NaN : pen.others().adjustedP());
        table.addColumns(text("standing", pens, pen -> pen.standing().name().toLowerCase(Locale.ROOT)));
        StringWriter csv = new StringWriter();
        table.write().csv(csv);
        return csv.toString();
    }

    private static StringColumn text(String name, List<PenShare> pens, Function<PenShare, String> of) {
        return StringColumn.create(name, pens.stream().map(of).toList());
    }

    private static IntColumn whole(String name, List<PenShare> pens, Function<PenShare, Integer> of) {
        return IntColumn.create(name, pens.stream().map(of).toArray(Integer[]::new));
    }

    private static void interval(
            Table table, String value, String low, String high, List<PenShare> pens, Function<PenShare, Interval> of) {
        number(
                table,
                value,
                pens,
                pen -> of.apply(pen) == null ? Double.NaN : of.apply(pen).value());
        number(
                table,
                low,
                pens,
                pen -> of.apply(pen) == null ? Double.NaN : of.apply(pen).low());
        number(
                table,
                high,
                pens,
                pen -> of.apply(pen) == null ? Double.NaN : of.apply(pen).high());
    }

    private static void limits(Table table, String level, List<PenShare> pens, Function<PenShare, FunnelLimits> of) {
        number(
                table,
                "limit_" + level + "_low",
                pens,
                pen -> of.apply(pen) == null ? Double.NaN : of.apply(pen).low());
        number(
                table,
                "limit_" + level + "_high",
                pens,
                pen -> of.apply(pen) == null ? Double.NaN : of.apply(pen).high());
    }

    private static void number(Table table, String name, List<PenShare> pens, ToDoubleFunction<PenShare> of) {
        List<Double> values = new ArrayList<>();
        pens.forEach(pen -> values.add(of.applyAsDouble(pen)));
        table.addColumns(DoubleColumn.create(name, values));
    }
}
