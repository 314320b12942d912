package wisp.site;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import wisp.cohort.Cohort;
import wisp.event.SampleResult;
import wisp.history.Life;
import wisp.sample.StandingAlert;

/**
 * A sample's result that is not negative, as every page shows it.
 *
 * @param who the calf, or the tag number of a result that matches none
 * @param href the calf's samples, or the list of those that match none
 * @param what such as {@code positive}
 * @param details the day of the result and what it was tested for
 * @param matched whether it is known whose it is
 * @param dam the dam as it is called, empty where none is recorded
 * @param damHref the dam's page, empty where she is not on record herself
 */
public record SampleAlert(
        String who, String href, String what, String details, boolean matched, String dam, String damHref) {

    /**
     * Up to so many are shown at once; more stand behind their number, so that each page still begins with its answer.
     */
    public static final int FEW = 3;

    /**
     * How many there are and of which results, such as {@code 3 tissue samples are not negative: 1 positive, 2
     * inconclusive}.
     */
    public static String head(List<SampleAlert> alerts) {
        Map<String, Long> results = alerts.stream()
                .collect(Collectors.groupingBy(SampleAlert::what, LinkedHashMap::new, Collectors.counting()));
        if (alerts.size() == 1) {
            return "A tissue sample is not negative: " + alerts.get(0).what();
        }
        return alerts.size() + " tissue samples are not negative: "
                + results.entrySet().stream()
                        .map(one -> one.getValue() + " " + one.getKey())
                        .collect(Collectors.joining(", "));
    }

    /** Those that stand in a cohort. */
    static List<SampleAlert> of(Cohort cohort, Links links) {
        return StandingAlert.of(cohort).stream()
                .map(alert -> of(alert, cohort, links))
                .toList();
    }

    private static SampleAlert of(StandingAlert alert, Cohort cohort, Links links) {
        Life life = alert.life();
        SampleResult result = (SampleResult) alert.result().data();
        String day = "result of " + Shown.day(alert.result().time(), life.farm().zone());
        String test = result.test() == null ? "" : ", " + result.test();
        String dam =
                alert.matched() && life.birth().dam() != null ? life.birth().dam() : "";
        int damRow = dam.isEmpty() ? -1 : cohort.rowOf(dam);
        return new SampleAlert(
                alert.matched() ? CalfName.of(life).both() : life.key(),
                alert.matched() ? links.calf(life.key()) + "#samples" : links.to("/samples") + "#unmatched",
                result.result().word(),
                day + test,
                alert.matched(),
                damRow < 0 ? dam : CalfName.of(cohort.lives().get(damRow)).both(),
                damRow < 0 ? "" : links.calf(dam));
    }
}
