package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import wisp.event.EventData;
import wisp.history.Life;
import wisp.history.LifeEvent;

/**
 * One calf and a browser that ticks off what is due with it, over real HTTP; the clock stands at 10:00 on 25 November
 * 2026.
 */
abstract class OneCalfDue {
    SmallSite site;

    @BeforeEach
    void serve() {
        site = new SmallSite();
    }

    @AfterEach
    void stop() {
        site.close();
    }

    void born(String time, String sex) {
        site.event("birth", "c", time, "{\"alive\":true,\"sex\":\"" + sex + "\",\"pen\":\"barn\"}");
    }

    /** Sends an item's form, or taps it where nothing is said, and sees that item alone gone. */
    void ticksOff(String step, Map<String, String> changes) {
        ticksOff(step, changes, 1);
    }

    void ticksOff(String step, Map<String, String> changes, int fewer) {
        int before = count();
        Map<String, String> form = changes == null ? quick(step) : form(step);
        if (changes != null) {
            form.putAll(changes);
        }
        HttpResponse<String> done = send(form);
        assertEquals(303, done.statusCode(), done.body());
        assertFalse(listed(step));
        assertEquals(before - fewer, count());
    }

    String page() {
        return site.get("/due").body();
    }

    int count() {
        return page().split("<li class=\"due ", -1).length - 1;
    }

    boolean listed(String step) {
        return page().contains("id=\"d-0-" + step + "\"");
    }

    static String item(String page, String step) {
        int from = page.indexOf("id=\"d-0-" + step + "\"");
        assertTrue(from > 0, () -> step + " is not in " + page);
        return page.substring(from, page.indexOf("</li>\n", page.indexOf("</details>", from)));
    }

    /** What an item's button records beside the hour; empty where it has none. */
    Map<String, String> preset(String step) {
        String item = item(page(), step);
        Map<String, String> preset = new LinkedHashMap<>();
        int button = item.indexOf("<form class=\"tick\"");
        if (button >= 0) {
            fields(item.substring(button, item.indexOf("</form>", button))).forEach((name, value) -> {
                if (name.startsWith("data.")) {
                    preset.put(name.substring(5), value);
                }
            });
        }
        return preset;
    }

    Map<String, String> quick(String step) {
        String item = item(page(), step);
        int button = item.indexOf("<form class=\"tick\"");
        return fields(item.substring(button, item.indexOf("</form>", button)));
    }

    Map<String, String> form(String step) {
        return formOf(page(), step);
    }

    Map<String, String> formOf(String page, String step) {
        return site.form(item(page, step));
    }

    static Map<String, String> fields(String form) {
        Map<String, String> fields = new LinkedHashMap<>();
        Matcher input = Pattern.compile("name=\"([^\"]*)\" value=\"([^\"]*)\"").matcher(form);
        while (input.find()) {
            fields.put(input.group(1), input.group(2));
        }
        return fields;
    }

    HttpResponse<String> tap(String step) {
        return send(quick(step));
    }

    HttpResponse<String> send(Map<String, String> form) {
        return site.send("/due", form);
    }

    String follow(HttpResponse<String> sent) {
        return site.get(sent.headers().firstValue("location").orElseThrow().replaceAll("#.*", ""))
                .body();
    }

    static String find(String text, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(text);
        assertTrue(found.find(), text);
        return found.group(1);
    }

    Life life() {
        return site.records().cohort().lives().stream()
                .filter(life -> life.key().equals("c"))
                .findFirst()
                .orElseThrow();
    }

    LifeEvent last() {
        return life().events().stream()
                .filter(event -> event.source().equals("wisp:due"))
                .reduce((one, other) -> other)
                .orElseThrow();
    }

    <T extends EventData> List<T> data(Class<T> type) {
        return life().events().stream()
                .map(LifeEvent::data)
                .filter(type::isInstance)
                .map(type::cast)
                .toList();
    }
}
