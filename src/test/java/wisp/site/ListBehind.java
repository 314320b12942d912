package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Counts the calves of the list that a count on a page opens, leaf by leaf. */
final class ListBehind {
    private static final Pattern ROW = Pattern.compile("<tr role=\"row\"><th role=\"rowheader\"|<tr>|<li>");
    private static final Pattern TIMES = Pattern.compile(">counted (\\d+) times");
    private static final Pattern NEXT = Pattern.compile("<a href=\"([^\"]*)\">The next ");

    private ListBehind() {}

    /** A page whose sentences have no links, so that they can be read. */
    static String unlinked(String page) {
        return page.replaceAll("<a class=\"said\"[^>]*>([^<]*)</a>", "$1");
    }

    /**
     * How many rows the list at an address has, a calf counted several times as often as it counts; the address may be
     * written as in a page.
     */
    static int rows(RunningSite site, String address) {
        String href = address.replace("&amp;", "&");
        String path = href.contains("#") ? href.substring(0, href.indexOf('#')) : href;
        var answer = site.get(path);
        assertEquals(200, answer.statusCode(), path);
        String page = answer.body();
        boolean part = path.startsWith("/figures/") || path.startsWith("/proof/");
        int from = page.indexOf(part ? "<section id=\"calves\">" : "<main");
        int to = part ? page.indexOf("</section>", from) : page.length();
        String end = path.startsWith("/proof/") ? "ul" : "tbody";
        int body = page.indexOf("<" + end, from);
        if (from < 0 || body < 0 || body > to) {
            return 0;
        }
        String rows = page.substring(body, page.indexOf("</" + end + ">", body));
        Matcher next = NEXT.matcher(page);
        // a rate's numerator counts episodes, of which a calf may have several
        int again = path.contains("part=numerator")
                ? TIMES.matcher(rows)
                        .results()
                        .mapToInt(times -> Integer.parseInt(times.group(1)) - 1)
                        .sum()
                : 0;
        return again + (int) ROW.matcher(rows).results().count() + (next.find() ? rows(site, next.group(1)) : 0);
    }
}
