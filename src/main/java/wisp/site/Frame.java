package wisp.site;

import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import tech.tablesaw.api.StringColumn;
import wisp.cohort.Cohort;
import wisp.indicator.Selection;
import wisp.indicator.SelectionWords;
import wisp.indicator.Stratum;

/**
 * What stands round every page: its name, the way to the other pages, and the filters in use.
 *
 * @param title the page's name
 * @param path its address without parameters; the filters send back to it
 * @param links addresses that keep the filters
 * @param parameters the filters in use, as written
 * @param season the season that is shown
 * @param seasons those that there are
 * @param pens the calving pens that there are
 * @param breeds the breeds that there are
 * @param followedTo the day on which follow-up ends, in words
 * @param farm the farm's name, empty where it was never described
 * @param sequence the newest event that is taken into account
 * @param kept parameters beside the filters that the form must send along
 * @param alerts results of samples that stand on every page
 * @param herd whether the page is about many calves, so that they can be narrowed and divided
 * @param only which calves alone are shown, in words; empty where no filter beside the season narrows them
 */
public record Frame(
        String title,
        String path,
        Links links,
        Map<String, String> parameters,
        String season,
        List<String> seasons,
        List<String> pens,
        List<String> breeds,
        String followedTo,
        String farm,
        long sequence,
        Map<String, String> kept,
        List<SampleAlert> alerts,
        boolean herd,
        String only) {

    static Frame of(Asked asked, String title, String path, Map<String, String> kept) {
        Cohort cohort = asked.cohort();
        boolean described = cohort.farm().latest().described();
        String name = cohort.farm().latest().name();
        Links links = new Links(asked.parameters());
        return new Frame(
                title,
                path,
                links,
                asked.parameters(),
                asked.season(),
                cohort.seasonsWithCalves(),
                words(cohort.table().stringColumn("pen")),
                words(cohort.table().stringColumn("breed")),
                followedTo(asked, cohort),
                described ? name : "",
                cohort.sequence(),
                kept,
                SampleAlert.of(cohort, links),
                true,
                SelectionWords.of(asked.selection()));
    }

    /** The same round one calf: only the day of knowledge can be chosen, the other filters go along. */
    Frame ofOne() {
        Map<String, String> along = new LinkedHashMap<>(parameters);
        along.remove("as-of");
        return new Frame(
                title,
                path,
                links,
                parameters,
                season,
                seasons,
                pens,
                breeds,
                followedTo,
                farm,
                sequence,
                along,
                alerts,
                false,
                "");
    }

    /** A past day ends at the midnight that begins the next; the day itself is what is meant. */
    private static String followedTo(Asked asked, Cohort cohort) {
        boolean past = asked.selection().asOf() != null;
        Instant end = past ? cohort.cut().minusMillis(1) : cohort.cut();
        return Shown.day(end, cohort.farm().latest().zone());
    }

    /** The value of a filter, empty where it is not in use. */
    public String filter(String name) {
        return parameters.getOrDefault(name, "");
    }

    /** The day of the "as of" filter for its field, empty where it is not in use. */
    public String asOfDay() {
        String text = filter("as-of");
        return text.length() >= 10 ? text.substring(0, 10) : "";
    }

    /** Whether the day of knowledge is folded away, where what is to be done now comes first. */
    public boolean folded() {
        return path.equals("/due") && asOfDay().isEmpty();
    }

    /** The season in words. */
    public String seasonWords() {
        return season.equals(Selection.ALL) ? "all seasons" : season;
    }

    /** The season as a caption names it, such as {@code season 2025-26}. */
    public String seasonCaption() {
        return season.equals(Selection.ALL) ? "all seasons" : "season " + season;
    }

    /** The season as a heading, such as {@code Season 2025-26}. */
    public String seasonHeading() {
        return season.equals(Selection.ALL) ? "All seasons" : "Season " + season;
    }

    /** How many filters beside the season are in use. */
    public int filtersInUse() {
        return (int) parameters.keySet().stream()
                .filter(name -> !name.equals("season"))
                .count();
    }

    /** What figures can be divided by. */
    public List<Stratum> strata() {
        return Stream.of(Stratum.values()).toList();
    }

    /** Address of a page with the filters kept. */
    public String to(String other) {
        return links.to(other);
    }

    /** Address of a page with the filters kept and more parameters. */
    public String to(String other, Map<String, String> more) {
        return links.to(other, more);
    }

    /** The day, or moment, of the "as of" filter in words. */
    public String asOfWords() {
        String text = filter("as-of");
        return text.length() > 10 ? text : "at the end of " + Shown.day(LocalDate.parse(text));
    }

    /** Address of this page by what is known now. */
    public String nowHref() {
        Map<String, String> changes = new LinkedHashMap<>(kept);
        changes.put("as-of", "");
        return links.to(path, changes);
    }

    /** Address of this page for all calves of the season. */
    public String allHref() {
        Map<String, String> changes = new LinkedHashMap<>(kept);
        Selection.FILTERS.forEach(filter -> changes.put(filter, ""));
        return links.to(path, changes);
    }

    /** Whether this page, or one below it, is the one at the address. */
    public boolean at(String address) {
        return path.equals(address) || (!address.equals("/") && path.startsWith(address + "/"));
    }

    private static List<String> words(StringColumn column) {
        TreeSet<String> words = new TreeSet<>(column.unique().asList());
        words.remove("");
        return List.copyOf(words);
    }
}
