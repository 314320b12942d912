package wisp.event;

/** What one husbandry event says: the {@code data} of the CloudEvents envelope, one record a type. */
public sealed interface EventData
        permits Birth,
                CleanlinessScored,
                NavelTreated,
                NavelChecked,
                ColostrumFed,
                BloodTested,
                TagFitted,
                TissueSampled,
                SampleSent,
                SampleResult,
                Registered,
                Castrated,
                Disbudded,
                IllnessFound,
                Recovered,
                Treated,
                Vaccinated,
                Moved,
                Weighed,
                Weaned,
                Left,
                Died,
                PenBedded,
                PenCleaned,
                Noted,
                FarmDescribed,
                Retracted,
                Amended {

    /** The type of event that carries this data. */
    EventType type();
}
