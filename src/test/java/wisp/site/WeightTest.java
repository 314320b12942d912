package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every page on the demo stays light enough for a phone in the yard. */
class WeightTest {
    private static final int MOST = 150_000;

    @TempDir
    private Path folder;

    @Test
    void everyPageOnTheDemoIsLight() throws Exception {
        List<String> heavy = new ArrayList<>();
        try (RunningSite demo = RunningSite.demo(folder.resolve("demo"))) {
            for (String path : pages()) {
                HttpRequest request =
                        HttpRequest.newBuilder(URI.create(demo.address(path))).build();
                HttpResponse<byte[]> page =
                        HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofByteArray());
                assertEquals(200, page.statusCode(), path);
                System.out.println(path + " has " + page.body().length + " bytes");
                if (page.body().length >= MOST) {
                    heavy.add(path + " has " + page.body().length + " bytes");
                }
            }
        }
        assertEquals(List.of(), heavy);
    }

    private static List<String> pages() {
        List<String> pages = new ArrayList<>(List.of(
                "/calves",
                "/calves/2025-26-0178",
                "/records",
                "/figures/dirty-calves?by=pen&part=all",
                "/figures/diarrhoea-rate?by=week",
                "/pens/calves?list=all.scored",
                "/pens/calves?list=ill.any.clean",
                "/season/calves?list=illness.diarrhoea.week-1"));
        for (String season : List.of("2023-24", "2024-25", "2025-26", "all")) {
            for (String page : List.of("/season", "/season/weeks", "/navels", "/pens")) {
                pages.add(page + "?season=" + season);
            }
        }
        return pages;
    }
}
