package wisp.site;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import wisp.cohort.Cohort;
import wisp.event.Fault;
import wisp.history.Life;
import wisp.indicator.Selection;

/**
 * What share of calves has what recorded, season by season; each count opens its calves.
 *
 * @param seasons the seasons shown, the one asked for first and then the newest others
 * @param rows one a thing to record
 */
public record Completeness(List<String> seasons, List<Row> rows) {
    /** Where the calves behind a count are listed. */
    static final String CALVES = "/records/calves";
    /** The parameter that names the thing. */
    static final String THING = "thing";
    /** The parameter that says whether calves with it or without it are asked for; both where it is left out. */
    static final String RECORDED = "recorded";

    private static final int MOST = 5;

    /** One thing to record: its share in each season. */
    public record Row(String what, List<Share> shares) {}

    /** How many calves have something recorded, of how many, and how many have not. */
    public record Share(Count with, Count of, Count missing) {
        /** In percent. */
        public String percent() {
            int all = of.calves();
            return all == 0 ? "–" : Shown.decimals(100.0 * with.calves() / all, all < 100 ? 0 : 1) + " %";
        }
    }

    static Completeness of(Asked asked, Links links) {
        Cohort cohort = asked.cohort();
        List<String> seasons = new ArrayList<>(List.of(asked.season()));
        List<String> others = cohort.seasonsWithCalves();
        for (int i = others.size() - 1; i >= 0 && seasons.size() < MOST; i--) {
            if (!seasons.contains(others.get(i))) {
                seasons.add(others.get(i));
            }
        }
        List<List<Life>> lives =
                seasons.stream().map(season -> lives(asked, season)).toList();
        List<Row> rows = new ArrayList<>();
        for (Recorded thing : Recorded.values()) {
            List<Share> shares = new ArrayList<>();
            for (int i = 0; i < seasons.size(); i++) {
                shares.add(share(thing, lives.get(i), seasons.get(i), links));
            }
            rows.add(new Row(thing.title(), shares));
        }
        return new Completeness(
                seasons.stream()
                        .map(season -> season.equals(Selection.ALL) ? "all seasons" : season)
                        .toList(),
                rows);
    }

    private static Share share(Recorded thing, List<Life> lives, String season, Links links) {
        List<Life> of = thing.asked(lives);
        int with = (int) of.stream().filter(thing::of).count();
        return new Share(
                count(with, thing, "yes", season, links),
                count(of.size(), thing, "", season, links),
                count(of.size() - with, thing, "no", season, links));
    }

    private static Count count(int n, Recorded thing, String recorded, String season, Links links) {
        Map<String, String> names = Map.of(THING, thing.word(), RECORDED, recorded, "season", season, "by", "");
        return new Count(n, n == 0 ? "" : links.to(CALVES, names));
    }

    private static List<Life> lives(Asked asked, String season) {
        return Arrays.stream(asked.selection().ofSeason(season).calves(asked.cohort()))
                .mapToObj(asked.cohort().lives()::get)
                .toList();
    }

    /** The page of the calves behind a count. */
    static CalfListPage calves(Asked asked, Address address) {
        String word = address.parameter(THING);
        Recorded thing = Recorded.named(word == null ? "" : word)
                .orElseThrow(() -> wrong(THING, "There is no such thing to record as " + word + "."));
        String recorded = address.parameter(RECORDED) == null ? "" : address.parameter(RECORDED);
        String end = switch (recorded) {
            case "" -> "";
            case "yes" -> ": recorded";
            case "no" -> ": not recorded";
            default -> throw wrong(RECORDED, "What is recorded is yes or no.");
        };
        List<Integer> rows = thing.asked(lives(asked, asked.season())).stream()
                .filter(life -> recorded.isEmpty() || thing.of(life) == recorded.equals("yes"))
                .map(life -> asked.cohort().rowOf(life.key()))
                .toList();
        Map<String, String> kept = recorded.isEmpty() ? Map.of(THING, word) : Map.of(THING, word, RECORDED, recorded);
        Frame frame = Frame.of(asked, thing.title() + end, CALVES, kept);
        return CalfListPage.of(frame, asked.cohort(), rows, address.parameter(Leaf.PARAMETER), "records", "/records");
    }

    private static Problem wrong(String field, String problem) {
        return Problem.parameters(List.of(new Fault(field, problem, "Open it from a count on the page of records.")));
    }
}
