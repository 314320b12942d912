package wisp.event;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is said about data that cannot be true by itself: field, problem, mend. */
class FaultsTest {

    static Stream<Arguments> missing() {
        String nothing = "It is missing. Give it; this type of event says nothing without it.";
        return Stream.of(
                arguments("birth", "{}", "data.alive: " + nothing),
                arguments("cleanliness-scored", "{}", "data.score: " + nothing),
                arguments("cleanliness-scored", "{'score':null}", "data.score: " + nothing),
                arguments(
                        "navel-checked",
                        "{}",
                        "data.finding: It is missing. Write one of: normal, thickened, painful, discharging, hernia."),
                arguments(
                        "blood-tested",
                        "{}",
                        "data: No result is given. Give one of serum_protein_g_dl, serum_brix_percent or igg_g_l as a"
                                + " number."),
                arguments("tag-fitted", "{}", "data.number: " + nothing),
                arguments(
                        "sample-result",
                        "{}",
                        "data.result: It is missing. Write one of: negative, positive, inconclusive."),
                arguments("castrated", "{}", "data.method: It is missing. Write one of: ring, clamp, surgical."),
                arguments("disbudded", "{}", "data.method: " + nothing),
                arguments("illness-found", "{}", "data.condition: " + nothing),
                arguments("treated", "{}", "data.medicine: " + nothing),
                arguments("vaccinated", "{}", "data.vaccine: " + nothing),
                arguments("moved", "{}", "data.pen: " + nothing),
                arguments(
                        "weighed",
                        "{}",
                        "data.weight_kg: It is missing. Give it in kilograms; this type of event says nothing without"
                                + " it."),
                arguments("noted", "{}", "data.text: " + nothing),
                arguments("retracted", "{}", "data.event_source: " + nothing + "\ndata.event_id: " + nothing),
                arguments(
                        "amended",
                        "{'event_source':'phone','event_id':'7'}",
                        "data.time: " + nothing + "\ndata.data: It is missing or not an object. Write the whole data of"
                                + " the event as it should be."));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("missing")
    void aMissingFieldIsNamed(String type, String data, String expected) {
        assertEquals(expected, Sent.faults(type, data));
    }

    static Stream<Arguments> wrong() {
        return Stream.of(
                arguments(
                        "birth",
                        "{'alive':'yes'}",
                        "data.alive: It must be true or false, not \"yes\". Write true or false."),
                arguments(
                        "birth",
                        "{'alive':true,'sex':'heifer'}",
                        "data.sex: \"heifer\" is none of the words that stand here. Write one of: female, male,"
                                + " unknown."),
                arguments(
                        "birth",
                        "{'alive':true,'ease':6}",
                        "data.ease: 6 cannot be: it must lie between 1 and 5. Check the figure and its unit."),
                arguments(
                        "birth",
                        "{'alive':true,'ease':1.5}",
                        "data.ease: It must be a whole number, not 1.5. Write it without decimals."),
                arguments(
                        "cleanliness-scored",
                        "{'score':4}",
                        "data.score: 4 cannot be: it must lie between 0 and 3. Check the figure and its unit."),
                arguments(
                        "cleanliness-scored",
                        "{'score':-1}",
                        "data.score: -1 cannot be: it must lie between 0 and 3. Check the figure and its unit."),
                arguments(
                        "cleanliness-scored",
                        "{'score':'2'}",
                        "data.score: It must be a number, not \"2\". Write a number."),
                arguments(
                        "navel-checked",
                        "{'finding':'Normal'}",
                        "data.finding: \"Normal\" is none of the words that stand here. Write one of: normal,"
                                + " thickened, painful, discharging, hernia."),
                arguments(
                        "moved",
                        "{'pen':7}",
                        "data.pen: It must be text, not 7. Write it in quotation marks, or" + " leave it out."),
                arguments(
                        "moved",
                        "{'pen':' '}",
                        "data.pen: It must be text, not \" \". Write it in quotation marks," + " or leave it out."),
                arguments(
                        "castrated",
                        "{'method':'ring','pain_relief':3}",
                        "data.pain_relief: It must be true, false or the product's name, not 3. Write true or false."),
                arguments(
                        "illness-found",
                        "{'condition':'scour'}",
                        "data.condition: \"scour\" is not a known condition. Write one of: diarrhoea, navel-infection;"
                                + " or add it to the conditions file."),
                arguments(
                        "farm-described",
                        "{'zone':'London'}",
                        "data.zone: \"London\" is not a time zone. Write an IANA name such as Europe/London."),
                arguments(
                        "farm-described",
                        "{'seasons':{}}",
                        "data.seasons: It must be a list. Write [{\"name\", \"from\", \"to\"}, …]."),
                arguments(
                        "farm-described",
                        "{'seasons':[7]}",
                        "data.seasons[0]: It must be an object. Write {\"name\", \"from\", \"to\"}."),
                arguments(
                        "farm-described",
                        "{'seasons':[{'name':'a','from':'2026-02-30','to':'2026-12-31'}]}",
                        "data.seasons[0].from: \"2026-02-30\" is not a date. Write it as 2026-03-31."),
                arguments(
                        "farm-described",
                        "{'seasons':[{'name':'a','from':'2026-02-01','to':'2026-02-01'}]}",
                        "data.seasons[0].to: The season ends before it begins. Write the first day after the season."),
                arguments(
                        "amended",
                        "{'event_source':'phone','event_id':'7','time':'yesterday','data':{}}",
                        "data.time: \"yesterday\" is not a time with an offset. Write it as 2026-03-01T07:30:00+00:00,"
                                + " the offset being that of the clock on the wall."),
                arguments(
                        "noted",
                        "{'text':'x','time_known':'no'}",
                        "data.time_known: It must be true or false, not" + " \"no\". Write true or false."));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("wrong")
    void aWrongValueIsNamedWithItsMend(String type, String data, String expected) {
        assertEquals(expected, Sent.faults(type, data));
    }

    static Stream<Arguments> unitMistakes() {
        return Stream.of(
                arguments(
                        "weighed",
                        "{'weight_kg':41000}",
                        "data.weight_kg: 41000 cannot be: it must lie between 3 and 2000. Check the figure and its unit"
                                + " in kilograms."),
                arguments(
                        "illness-found",
                        "{'condition':'diarrhoea','temperature_c':103.1}",
                        "data.temperature_c: 103.1 cannot be: it must lie between 25 and 45. Check the figure and its"
                                + " unit in degrees Celsius."),
                arguments(
                        "colostrum-fed",
                        "{'volume_l':3000}",
                        "data.volume_l: 3000 cannot be: it must lie between 0 and 12. Check the figure and its unit in"
                                + " litres."),
                arguments(
                        "blood-tested",
                        "{'serum_protein_g_dl':56}",
                        "data.serum_protein_g_dl: 56 cannot be: it must lie between 0.5 and 15. Check the figure and"
                                + " its unit in grams per decilitre."),
                arguments(
                        "weighed",
                        "{'weight_lb':90}",
                        "data.weight_kg: It is missing. Give it in kilograms; this type of event says nothing without"
                                + " it.\ndata.weight_lb: There is no such field for this type of event. Did you mean"
                                + " weight_kg (kilograms)?"),
                arguments(
                        "colostrum-fed",
                        "{'volume_ml':3000}",
                        "data.volume_ml: There is no such field for this type of event. Did you mean volume_l"
                                + " (litres)?"),
                arguments(
                        "illness-found",
                        "{'condition':'diarrhoea','temperature_f':103.1}",
                        "data.temperature_f: There is no such field for this type of event. Did you mean temperature_c"
                                + " (degrees Celsius)?"));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("unitMistakes")
    void aMistakeOfUnitsIsNamedWithTheUnit(String type, String data, String expected) {
        assertEquals(expected, Sent.faults(type, data));
    }

    @Test
    void aMisspeltFieldIsAskedAbout() {
        assertEquals(
                "data.methd: There is no such field for this type of event. Did you mean method?",
                Sent.faults("navel-treated", "{'methd':'dip'}"));
    }

    @Test
    void aFieldThatResemblesNothingGetsTheListOfFields() {
        assertEquals(
                "data.colour: There is no such field for this type of event. It takes: time_known, product,"
                        + " concentration_percent, method.",
                Sent.faults("navel-treated", "{'colour':'blue'}"));
    }

    @Test
    void allFaultsOfAnEventAreSaidAtOnce() {
        assertEquals(
                String.join(
                        "\n",
                        "source: It is missing. Give it as text; every event needs one.",
                        "data.alive: It must be true or false, not 1. Write true or false.",
                        "data.ease: 9 cannot be: it must lie between 1 and 5. Check the figure and its unit.",
                        "data.weight_kg: It must be a number, not \"41 kg\". Write a number in kilograms.",
                        "data.sexe: There is no such field for this type of event. Did you mean sex?",
                        "time: It lies in the future. (2027-03-01T07:30Z) Check the date, the hour and the offset."),
                Sent.faults(Sent.json("birth", "{'alive':1,'ease':9,'weight_kg':'41 kg','sexe':'male'}")
                        .put("time", "2027-03-01T07:30:00Z")
                        .without("source")));
    }
}
