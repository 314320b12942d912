package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.indicator.Indicator;
import wisp.indicator.Stratum;

/** Every page on the demo stays light enough for a phone in the yard. */
class WeightTest {
    /** Of the 150 kB that a page may weigh, some are kept for a season with more calves than the demo's. */
    private static final int MOST = 140_000;

    private final HttpClient client = HttpClient.newHttpClient();

    @TempDir
    private Path folder;

    @Test
    void everyPageOnTheDemoIsLight() throws Exception {
        List<String> heavy = new ArrayList<>();
        try (RunningSite demo = RunningSite.demo(folder.resolve("demo"))) {
            for (String path : pages()) {
                int bytes = bytes(demo, path);
                System.out.println(path + " has " + bytes + " bytes");
                if (bytes >= MOST) {
                    heavy.add(path + " has " + bytes + " bytes");
                }
            }
        }
        assertEquals(List.of(), heavy);
    }

    @Test
    void everyFigureDividedInAnyWayOverAllSeasonsIsLight() throws Exception {
        List<String> heavy = new ArrayList<>();
        try (RunningSite demo = RunningSite.demo(folder.resolve("demo"))) {
            List<String> figures = demo.records().definitions().indicators().stream()
                    .map(Indicator::id)
                    .toList();
            for (String figure : figures) {
                for (Stratum by : Stratum.values()) {
                    for (String list : List.of("", "&part=all")) {
                        String path = "/figures/" + figure + "?season=all&by=" + by.word() + list;
                        int bytes = bytes(demo, path);
                        if (bytes >= MOST) {
                            heavy.add(path + " has " + bytes + " bytes");
                        }
                    }
                }
            }
            System.out.println(figures.size() + " figures divided in " + Stratum.values().length + " ways");
        }
        assertEquals(List.of(), heavy);
    }

    private int bytes(RunningSite demo, String path) throws IOException, InterruptedException {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create(demo.address(path))).build();
        HttpResponse<byte[]> page = client.send(request, HttpResponse.BodyHandlers.ofByteArray());
        assertEquals(200, page.statusCode(), path);
        return page.body().length;
    }

    private static List<String> pages() {
        List<String> pages = new ArrayList<>(List.of(
                "/calves",
                "/calves?season=all",
                "/medicines",
                "/medicines?given-from=2023-01-01",
                "/due",
                "/due?on=2025-10-15",
                "/proof",
                "/samples",
                "/samples?season=all",
                "/records?season=all",
                "/navels/calves?season=all",
                "/navels?season=all&by=season",
                "/navels?by=pen",
                "/navels?by=week&season=all",
                "/proof/colostrum-first?season=all",
                "/proof/colostrum-first?season=all&part=inside",
                "/figures/preweaning-mortality?part=all&season=all",
                "/figures/dirty-calves?by=pen&part=all&season=all",
                "/pens/calves?season=all&list=all.scored",
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
