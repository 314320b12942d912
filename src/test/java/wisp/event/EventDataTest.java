package wisp.event;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every type of event, with every field and with as few as it may have. */
class EventDataTest {
    private static final String FARM = "{'name':'Low Field','zone':'Europe/London','jurisdiction':'england',"
            + "'enterprise':'beef','seasons':[{'name':'2026','from':'2026-01-01','to':'2027-01-01'}]}";
    private static final String BIRTH = "{'alive':true,'sex':'female','dam':'cow-1','sire':'bull-1','breed':'SM',"
            + "'pen':'P1','ease':2,'litter_size':2,'dam_parity':3,'weight_kg':41.5,'keep_entire':false}";

    static Stream<Arguments> good() {
        return Stream.of(
                arguments(
                        "birth",
                        BIRTH,
                        new Birth(true, Birth.Sex.FEMALE, "cow-1", "bull-1", "SM", "P1", 2, 2, 3, 41.5, false)),
                arguments(
                        "birth",
                        "{'alive':false}",
                        new Birth(false, null, null, null, null, null, null, null, null, null, null)),
                arguments("cleanliness-scored", "{'score':3,'pen':'P1'}", new CleanlinessScored(3, "P1")),
                arguments("cleanliness-scored", "{'score':0}", new CleanlinessScored(0, null)),
                arguments(
                        "navel-treated",
                        "{'product':'iodine','concentration_percent':10,'method':'dip'}",
                        new NavelTreated("iodine", 10.0, NavelTreated.Method.DIP)),
                arguments("navel-treated", "{}", new NavelTreated(null, null, null)),
                arguments("navel-checked", "{'finding':'hernia'}", new NavelChecked(NavelChecked.Finding.HERNIA)),
                arguments(
                        "colostrum-fed",
                        "{'volume_l':3.5,'method':'tube','brix_percent':24}",
                        new ColostrumFed(3.5, ColostrumFed.Method.TUBE, 24.0)),
                arguments("blood-tested", "{'igg_g_l':18}", new BloodTested(null, null, 18.0)),
                arguments("blood-tested", "{'serum_protein_g_dl':5.6}", new BloodTested(5.6, null, null)),
                arguments("blood-tested", "{'serum_brix_percent':8.6}", new BloodTested(null, 8.6, null)),
                arguments(
                        "tag-fitted",
                        "{'number':'UK 123','ear':'left','role':'secondary'}",
                        new TagFitted("UK 123", TagFitted.Ear.LEFT, TagFitted.Role.SECONDARY)),
                arguments("tissue-sampled", "{'tag_number':'UK 123'}", new TissueSampled("UK 123")),
                arguments("sample-sent", "{'laboratory':'North lab'}", new SampleSent(null, "North lab")),
                arguments(
                        "sample-result",
                        "{'result':'negative','test':'BVD antigen'}",
                        new SampleResult(SampleResult.Result.NEGATIVE, null, null, "BVD antigen")),
                arguments("registered", "{'document':'passport'}", new Registered("passport")),
                arguments(
                        "castrated",
                        "{'method':'ring','both_in':true,'anaesthetic':'procaine','pain_relief':false}",
                        new Castrated(
                                Castrated.Method.RING, true, new Relief(true, "procaine"), new Relief(false, null))),
                arguments(
                        "disbudded",
                        "{'method':'hot iron','anaesthetic':true}",
                        new Disbudded("hot iron", new Relief(true, null), null)),
                arguments(
                        "illness-found",
                        "{'condition':'diarrhoea','severity':2,'temperature_c':39.8,'signs':'dull'}",
                        new IllnessFound("diarrhoea", 2, 39.8, "dull")),
                arguments("recovered", "{}", new Recovered(null)),
                arguments("recovered", "{'condition':'diarrhoea'}", new Recovered("diarrhoea")),
                arguments(
                        "treated",
                        "{'medicine':'M','dose':2.5,'dose_unit':'ml','route':'im','batch':'B1',"
                                + "'condition':'diarrhoea','meat_withdrawal_days':28,'given_by':'vet'}",
                        new Treated("M", 2.5, "ml", "im", "B1", "diarrhoea", 28, "vet")),
                arguments("vaccinated", "{'vaccine':'V','batch':'B2'}", new Vaccinated("V", "B2")),
                arguments("moved", "{'pen':' P2 '}", new Moved("P2")),
                arguments("weighed", "{'weight_kg':88}", new Weighed(88)),
                arguments("weaned", "{}", new Weaned()),
                arguments("left", "{'reason':'sold'}", new Left(Left.Reason.SOLD)),
                arguments("died", "{'cause':'bloat','euthanised':true}", new Died("bloat", true)),
                arguments("pen-bedded", "{'material':'straw','depth_cm':20}", new PenBedded("straw", 20.0)),
                arguments("pen-cleaned", "{}", new PenCleaned(null, null)),
                arguments("pen-cleaned", "{\"material\":\"straw\",\"depth_cm\":40}", new PenCleaned("straw", 40.0)),
                arguments("noted", "{'text':'a note'}", new Noted("a note", null)),
                arguments("noted", "{'text':'gone','tag_lost':'left'}", new Noted("gone", TagFitted.Ear.LEFT)),
                arguments(
                        "farm-described",
                        FARM,
                        new FarmDescribed(
                                "Low Field",
                                ZoneId.of("Europe/London"),
                                "england",
                                FarmDescribed.Enterprise.BEEF,
                                List.of(new FarmDescribed.Season(
                                        "2026", LocalDate.of(2026, 1, 1), LocalDate.of(2027, 1, 1))))),
                arguments("farm-described", "{}", new FarmDescribed(null, null, null, null, null)),
                arguments(
                        "retracted",
                        "{'event_source':'phone','event_id':'7','reason':'wrong calf'}",
                        new Retracted("phone", "7", "wrong calf")),
                arguments(
                        "amended",
                        "{'event_source':'phone','event_id':'7','time':'2026-03-01T07:00:00Z','data':{'score':1}}",
                        new Amended(
                                "phone", "7", OffsetDateTime.parse("2026-03-01T07:00:00Z"), "{\"score\":1}", null)));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("good")
    void soundDataIsRead(String type, String data, EventData expected) {
        assertEquals(expected, Sent.read(type, data));
        assertEquals(type, expected.type().wireName());
    }

    @Test
    void everyTypeIsAmongTheExamples() {
        Set<Object> examples = good().map(a -> a.get()[0]).collect(Collectors.toSet());
        assertEquals(Arrays.stream(EventType.values()).map(EventType::wireName).collect(Collectors.toSet()), examples);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("good")
    void everyTypeTakesATimeOfWhichOnlyTheDateIsKnown(String type, String data) {
        String dated = data.equals("{}") ? "{'time_known':false}" : data.replaceFirst("\\{", "{'time_known':false,");
        assertEquals(false, Sent.READER.read(Sent.json(type, dated)).event().timeKnown());
        assertEquals(true, Sent.READER.read(Sent.json(type, data)).event().timeKnown());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("good")
    void noTypeTakesAFieldThatItDoesNotHave(String type, String data) {
        String more = data.equals("{}") ? "{'zzzzzzzzzz':1}" : data.replaceFirst("\\{", "{'zzzzzzzzzz':1,");
        List<Fault> faults = Sent.READER.read(Sent.json(type, more)).faults();
        assertEquals(
                List.of("data.zzzzzzzzzz"), faults.stream().map(Fault::field).toList());
        assertEquals(
                "There is no such field for this type of event.", faults.get(0).problem());
    }
}
