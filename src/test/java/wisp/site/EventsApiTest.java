package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.site.Wire.birth;
import static wisp.site.Wire.event;
import static wisp.site.Wire.json;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EventsApiTest {
    private static final String EVENTS = "/api/v1/events";
    private static final String BATCH = "application/cloudevents-batch+json";
    private static final String ONE = "application/cloudevents+json";
    private static final String LINES = "application/x-ndjson";
    private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-02T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    private RunningSite site;

    @BeforeEach
    void start() {
        site = RunningSite.over(folder, NOON);
    }

    @AfterEach
    void stop() {
        site.close();
    }

    @Test
    void aBatchIsRecordedAndCounted() {
        HttpResponse<String> answer = site.post(EVENTS, BATCH, "[" + birth("1", "A") + "," + birth("2", "B") + "]");
        answered(201, "{'accepted':2,'duplicate':0,'marked':[],'refused':[],'sequence':2}", answer);
        assertEquals(
                "application/json", answer.headers().firstValue("Content-Type").orElse(""));
    }

    @Test
    void oneEventIsRecorded() {
        answered(
                201,
                "{'accepted':1,'duplicate':0,'marked':[],'refused':[],'sequence':1}",
                site.post(EVENTS, ONE, birth("1", "A")));
    }

    @Test
    void linesAreRecordedAndBlankOnesPassedOver() {
        answered(
                201,
                "{'accepted':2,'duplicate':0,'marked':[],'refused':[],'sequence':2}",
                site.post(EVENTS, LINES, birth("1", "A") + "\n\n" + birth("2", "B") + "\r\n"));
    }

    @Test
    void theSameEventAgainIsADuplicateWhateverItsWhiteSpace() {
        site.post(EVENTS, ONE, birth("1", "A"));
        answered(
                201,
                "{'accepted':0,'duplicate':1,'marked':[],'refused':[],'sequence':1}",
                site.post(EVENTS, ONE, birth("1", "A").replace(",", " , ")));
    }

    @Test
    void theSameIdWithOtherContentIsAConflictAndNothingOfTheBatchIsStored() {
        site.post(EVENTS, ONE, birth("1", "A"));
        answered(
                422,
                "{'accepted':0,'duplicate':0,'marked':[],'refused':[{'index':1,'field':'id','problem':'The log has"
                        + " another event of source shed and id 1.','mend':'Send a correction (amended or retracted),"
                        + " or give the new event its own id.'}],'sequence':1,'type':'about:blank','title':'Nothing was"
                        + " recorded','status':422,'detail':'The faults stand under refused; mend them and send the"
                        + " whole again.'}",
                site.post(EVENTS, BATCH, "[" + birth("2", "B") + "," + birth("1", "C") + "]"));
        assertEquals(1, site.records().log().last());
    }

    @Test
    void anImplausibleEventIsKeptAndMarked() {
        String early = event("2", "tag-fitted", "A", "2026-02-28T08:00:00Z", "{\"number\":\"7\"}");
        answered(
                201,
                "{'accepted':2,'duplicate':0,'marked':[{'index':1,'subject':'A','id':'2','mark':'before-birth','problem':'It"
                        + " happened before the animal was born.','mend':'Amend the time of this event or of the"
                        + " birth.'}],'refused':[],'sequence':2}",
                site.post(EVENTS, BATCH, "[" + birth("1", "A") + "," + early + "]"));
    }

    @Test
    void allFaultsOfAllEventsAreSaidAtOnceAndNothingIsStored() {
        String wrong = event("2", "birth", "B", "2026-03-09T08:00:00Z", "{\"sex\":\"both\"}");
        String unknown = event("3", "hatched", "C", "2026-03-01T08:00:00Z", "{}");
        HttpResponse<String> answer =
                site.post(EVENTS, BATCH, "[" + birth("1", "A") + "," + wrong + "," + unknown + "]");
        assertEquals(422, answer.statusCode());
        assertEquals(
                "application/problem+json",
                answer.headers().firstValue("Content-Type").orElse(""));
        assertEquals(
                List.of("1 data.alive", "1 data.sex", "1 time", "2 type"), Json.refused(answer.body()), answer.body());
        assertEquals(0, site.records().log().last());
    }

    @Test
    void partialRecordsTheSoundOnesAndNamesTheOthersByTheirPlace() {
        String unknown = event("3", "hatched", "C", "2026-03-01T08:00:00Z", "{}");
        HttpResponse<String> answer = site.post(
                EVENTS + "?partial=true", LINES, birth("1", "A") + "\n{not json\n" + unknown + "\n" + birth("4", "D"));
        assertEquals(201, answer.statusCode());
        assertEquals(List.of("1 ", "2 type"), Json.refused(answer.body()), answer.body());
        assertEquals(2, site.records().log().last());
    }

    @Test
    void aMalformedLineWithoutPartialStopsEverything() {
        HttpResponse<String> answer = site.post(EVENTS, LINES, birth("1", "A") + "\n{not json");
        assertEquals(422, answer.statusCode());
        assertEquals(List.of("1 "), Json.refused(answer.body()), answer.body());
        assertEquals(0, site.records().log().last());
    }

    @ParameterizedTest
    @ValueSource(strings = {"{", "[1,", "", "nonsense", "[{\"id\":\"1\",\"id\":\"2\"}]"})
    void whatIsNotJsonIsRefused(String body) {
        HttpResponse<String> answer = site.post(EVENTS, BATCH, body);
        assertEquals(422, answer.statusCode(), answer.body());
        assertEquals(0, site.records().log().last());
    }

    @ParameterizedTest
    @ValueSource(strings = {"[7]", "[null]", "[[]]", "\"text\"", "null", "12"})
    void jsonThatIsNoEventIsRefused(String body) {
        HttpResponse<String> answer = site.post(EVENTS, BATCH, body);
        assertEquals(422, answer.statusCode(), answer.body());
        assertEquals(1, Json.refused(answer.body()).size(), answer.body());
    }

    @Test
    void anEmptyBatchChangesNothing() {
        answered(
                201,
                "{'accepted':0,'duplicate':0,'marked':[],'refused':[],'sequence':0}",
                site.post(EVENTS, BATCH, "[]"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"text/plain", "text/plain;charset=application/json", "application/xml", "text/csv"})
    void anotherContentTypeIsRefused(String type) {
        answered(
                415,
                "{'type':'about:blank','title':'Events come as JSON','status':415,'detail':'Send"
                        + " application/cloudevents-batch+json, application/cloudevents+json or application/x-ndjson.'}",
                site.post(EVENTS, type, birth("1", "A")));
        assertEquals(0, site.records().log().last());
    }

    @Test
    void aBodyWithoutAContentTypeIsRefused() {
        HttpResponse<String> answer = site.send(
                site.request(EVENTS).POST(java.net.http.HttpRequest.BodyPublishers.ofString(birth("1", "A"))));
        assertEquals(415, answer.statusCode());
    }

    @Test
    void aBodyLargerThanAllowedIsRefused() {
        HttpResponse<String> answer = site.post(EVENTS, LINES, "x".repeat(64 * 1024 * 1024 + 1));
        assertEquals(413, answer.statusCode(), answer.body());
        assertEquals(0, site.records().log().last());
    }

    @Test
    void bytesThatAreNotUtf8AreRefused() {
        byte[] latin = birth("1", "Kälbchen").getBytes(StandardCharsets.ISO_8859_1);
        HttpResponse<String> answer =
                site.send(site.request(EVENTS).header("Content-Type", ONE).POST(BodyPublishers.ofByteArray(latin)));
        assertEquals(422, answer.statusCode());
        assertTrue(answer.body().contains("It is not UTF-8."), answer.body());
        assertEquals(0, site.records().log().last());
    }

    @Test
    void partialIsTrueOrFalse() {
        answered(
                400,
                "{'type':'about:blank','title':'The address asks for something that is not there','status':400,'detail':'"
                        + "partial: \\'maybe\\' is neither true nor false. Write true or false.','faults':[{'field':'partial','problem':'"
                        + "\\'maybe\\' is neither true nor false.','mend':'Write true or false.'}]}",
                site.post(EVENTS + "?partial=maybe", ONE, birth("1", "A")));
    }

    @Test
    void eventsComeBackAsLinesWithSequenceAndHash() {
        site.post(EVENTS, BATCH, "[" + birth("1", "A") + "," + birth("2", "B") + "," + birth("3", "C") + "]");
        String all = site.get(EVENTS).body();
        assertEquals(3, all.lines().count());
        String second = all.lines().skip(1).findFirst().orElseThrow();
        assertEquals(second + "\n", site.get(EVENTS + "?after=1&limit=1").body());
        String hash = site.records().log().read(1, 1).get(0).hash();
        assertEquals(
                json(
                        "{'specversion':'1.0','id':'2','source':'shed','type':'birth','subject':'B','time':'2026-03-01T08:00:00Z',"
                                + "'data':{'alive':true,'sex':'female'},'recordedtime':'2026-03-02T12:00:00.000Z','sequence':2,'hash':'"
                                + hash + "'}"),
                Json.ordered(second, "specversion,id,source,type,subject,time,data,recordedtime,sequence,hash"));
        assertEquals("", site.get(EVENTS + "?after=3").body());
        assertEquals(
                "application/x-ndjson",
                site.get(EVENTS).headers().firstValue("Content-Type").orElse(""));
    }

    @Test
    void everyWrongNumberAndUnknownNameIsAFault() {
        assertEquals(400, site.get(EVENTS + "?limit=0").statusCode());
        assertEquals(400, site.get(EVENTS + "?limit=10001").statusCode());
        assertEquals(400, site.get(EVENTS + "?after=-1").statusCode());
        answered(
                400,
                "{'type':'about:blank','title':'The address asks for something that is not there','status':400,'detail':'from:"
                        + " There is no such parameter. Those that there are: after, limit.','faults':[{'field':'from','problem':'There"
                        + " is no such parameter.','mend':'Those that there are: after, limit.'}]}",
                site.get(EVENTS + "?from=3"));
    }

    @Test
    void whatWasSentBeforeTheAnswerIsThereAfterARestart() {
        site.post(EVENTS, ONE, birth("1", "A"));
        site.close();
        site = RunningSite.over(folder, NOON);
        assertTrue(site.get(EVENTS).body().contains("\"subject\":\"A\""));
    }

    private static void answered(int status, String body, HttpResponse<String> answer) {
        assertEquals(json(body), answer.body());
        assertEquals(status, answer.statusCode());
    }
}
