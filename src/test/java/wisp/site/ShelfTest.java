package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
class ShelfTest {
    private static final Address SEASON = Address.of("/season", "");

    private final SmallSite site = new SmallSite();
    private final JustPosted posted = new JustPosted();
    private final Shelf shelf = new Shelf(site.records().log(), posted);
    private final AtomicInteger made = new AtomicInteger();

    @AfterEach
    void stop() {
        site.close();
    }

    private String ask(Address address, String who) {
        return new String(shelf.page(address, who, 0, this::make), StandardCharsets.UTF_8);
    }

    private String make(Address address) {
        return "page " + made.incrementAndGet() + " of event "
                + site.records().log().last();
    }

    @Test
    void aPageIsMadeOnceWhileNothingIsRecorded() {
        assertEquals("page 1 of event 0", ask(SEASON, "office"));
        assertEquals("page 1 of event 0", ask(SEASON, "office"));
    }

    @Test
    void aPageThatHangsOnTheClockIsGoodForItsMinuteAndNotMadeBeforehand() {
        Address calf = Address.of("/calves/", "A");
        assertEquals("page 1 of event 0", ask(calf.at(Instant.parse("2026-03-01T08:00:00Z")), "office"));
        assertEquals("page 1 of event 0", ask(calf.at(Instant.parse("2026-03-01T08:00:59Z")), "office"));
        assertEquals("page 2 of event 0", ask(calf.at(Instant.parse("2026-03-01T08:01:00Z")), "office"));
        assertEquals(List.of(), shelf.askedFor(60));
        ask(SEASON, "office");
        assertEquals(1, shelf.askedFor(60).size());
    }

    @Test
    void aPageIsMadeAnewForAnEventThatNobodyPostedHere() {
        ask(SEASON, "office");
        site.event("birth", "A", "2026-03-01T08:00:00Z", "{\"alive\":true}");
        assertEquals("page 2 of event 1", ask(SEASON, "office"));
    }

    @Test
    void whoeverPostedSeesItAtOnceAndOthersMaySeeTheFinishedPage() {
        ask(SEASON, "office");
        site.event("birth", "A", "2026-03-01T08:00:00Z", "{\"alive\":true}");
        posted.note("shed", 0, 1, System.nanoTime() + TimeUnit.SECONDS.toNanos(30));
        assertEquals("page 1 of event 0", ask(SEASON, "office"));
        assertEquals("page 2 of event 1", ask(SEASON, "shed"));
        assertEquals("page 2 of event 1", ask(SEASON, "office"));
    }

    @Test
    void anOpenPageThatWasToldOfAnEventIsNotShownOneThatLacksIt() {
        ask(SEASON, "office");
        site.event("birth", "A", "2026-03-01T08:00:00Z", "{\"alive\":true}");
        posted.note("shed", 0, 1, System.nanoTime() + TimeUnit.SECONDS.toNanos(30));
        assertEquals("page 2 of event 1", told(1));
        site.event("birth", "B", "2026-03-01T09:00:00Z", "{\"alive\":true}");
        posted.note("shed", 1, 2, System.nanoTime() + TimeUnit.SECONDS.toNanos(30));
        assertEquals("page 2 of event 1", told(1));
        assertEquals("page 3 of event 2", told(2));
    }

    private String told(long sequence) {
        return new String(shelf.page(SEASON, "office", sequence, this::make), StandardCharsets.UTF_8);
    }

    @Test
    void whoAsksWhileAPageIsMadeWaitsForThatOne() throws InterruptedException, ExecutionException {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        ExecutorService readers = Executors.newFixedThreadPool(8);
        try {
            List<Future<byte[]>> answers = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                answers.add(readers.submit(() -> shelf.page(SEASON, "office", 0, address -> {
                    begun.countDown();
                    waitFor(go);
                    return make(address);
                })));
            }
            waitFor(begun);
            go.countDown();
            for (Future<byte[]> answer : answers) {
                assertEquals("page 1 of event 0", new String(answer.get(), StandardCharsets.UTF_8));
            }
        } finally {
            readers.shutdownNow();
        }
    }

    @Test
    void aPageStandsOnTheEventThatWasTheNewestWhenItWasBegun() {
        shelf.page(SEASON, "office", 0, address -> {
            if (site.records().log().last() == 0) {
                site.event("birth", "A", "2026-03-01T08:00:00Z", "{\"alive\":true}");
            }
            return make(address);
        });
        assertEquals(1, made.get());
        ask(SEASON, "office");
        assertEquals(2, made.get());
    }

    @Test
    void aPageThatCannotBeMadeIsAskedForAgain() {
        assertThrows(
                Problem.class,
                () -> shelf.page(SEASON, "office", 0, address -> {
                    throw Problem.notFound("There is none.");
                }));
        assertEquals("page 1 of event 0", ask(SEASON, "office"));
    }

    @Test
    void thePageAskedForLongestAgoIsDroppedFirst() {
        ask(SEASON, "office");
        for (int i = 0; i < 200; i++) {
            ask(Address.of("/calves/", "calf-" + i), "office");
        }
        assertEquals("page 201 of event 0", ask(Address.of("/calves/", "calf-199"), "office"));
        assertEquals("page 202 of event 0", ask(SEASON, "office"));
    }

    @Test
    void aPageAfterA201ShowsTheEvent() {
        for (int i = 1; i <= 20; i++) {
            String calf = "{\"specversion\":\"1.0\",\"id\":\"p" + i + "\",\"source\":\"test\",\"type\":\"birth\","
                    + "\"subject\":\"calf-" + i
                    + "\",\"time\":\"2026-03-01T08:00:00Z\",\"data\":{\"alive\":true}}";
            assertEquals(
                    201,
                    site.send(site.request("/api/v1/events")
                                    .header("Content-Type", "application/json")
                                    .POST(BodyPublishers.ofString(calf)))
                            .statusCode());
            String page = site.get("/calves").body();
            assertTrue(page.contains("/calves/calf-" + i), "calf-" + i);
            assertTrue(page.contains("data-sequence=\"" + i + "\""), page);
        }
    }

    private static void waitFor(CountDownLatch latch) {
        try {
            assertTrue(latch.await(30, TimeUnit.SECONDS));
        } catch (InterruptedException ended) {
            throw new IllegalStateException(ended);
        }
    }
}
