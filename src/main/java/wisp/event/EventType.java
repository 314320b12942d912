package wisp.event;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The kinds of event that the log takes, each with the name that stands in the envelope's {@code type}. */
public enum EventType {
    BIRTH("birth", Birth::read),
    CLEANLINESS_SCORED("cleanliness-scored", CleanlinessScored::read),
    NAVEL_TREATED("navel-treated", NavelTreated::read),
    NAVEL_CHECKED("navel-checked", NavelChecked::read),
    COLOSTRUM_FED("colostrum-fed", ColostrumFed::read),
    BLOOD_TESTED("blood-tested", BloodTested::read),
    TAG_FITTED("tag-fitted", TagFitted::read),
    TISSUE_SAMPLED("tissue-sampled", TissueSampled::read),
    SAMPLE_SENT("sample-sent", SampleSent::read),
    SAMPLE_RESULT("sample-result", SampleResult::read),
    REGISTERED("registered", Registered::read),
    CASTRATED("castrated", Castrated::read),
    DISBUDDED("disbudded", Disbudded::read),
    ILLNESS_FOUND("illness-found", IllnessFound::read),
    RECOVERED("recovered", Recovered::read),
    TREATED("treated", Treated::read),
    VACCINATED("vaccinated", Vaccinated::read),
    MOVED("moved", Moved::read),
    WEIGHED("weighed", Weighed::read),
    WEANED("weaned", Weaned::read),
    LEFT("left", Left::read),
    DIED("died", Died::read),
    PEN_BEDDED("pen-bedded", PenBedded::read),
    PEN_CLEANED("pen-cleaned", PenCleaned::read),
    NOTED("noted", Noted::read),
    FARM_DESCRIBED("farm-described", FarmDescribed::read),
    RETRACTED("retracted", Retracted::read),
    AMENDED("amended", Amended::read);

    private final String wireName;
    private final Function<DataReader, EventData> reader;

    EventType(String wireName, Function<DataReader, EventData> reader) {
        this.wireName = wireName;
        this.reader = reader;
    }

    /** The name in the envelope, such as {@code navel-treated}. */
    public String wireName() {
        return wireName;
    }

    /** Reads this type's data; faults are left in the reader, and the result is only sound when there are none. */
    EventData read(DataReader in) {
        return reader.apply(in);
    }

    /** The type of this name, or empty where there is none. */
    public static Optional<EventType> named(String wireName) {
        return Arrays.stream(values()).filter(t -> t.wireName.equals(wireName)).findFirst();
    }

    /** Every name, for an error's mend. */
    public static String allNames() {
        return Arrays.stream(values()).map(EventType::wireName).collect(Collectors.joining(", "));
    }

    /** Whether this event corrects another rather than telling of an animal. */
    public boolean isCorrection() {
        return this == RETRACTED || this == AMENDED;
    }
}
