package wisp.history;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import wisp.event.EventType;
import wisp.event.FarmDescribed;
import wisp.log.StoredEvent;

/**
 * The farm through time. A description holds from its time on; the earliest also holds for the time before it, as
 * nothing else is known of that. Named seasons are gathered from all descriptions, the latest word on a name counting.
 */
public final class FarmHistory {
    /** The subject under which the farm is described. */
    public static final String SUBJECT = "farm";

    /** A farm of which nothing was said. */
    public static final FarmHistory UNDESCRIBED = of(List.of());

    private record Turn(Instant from, Farm farm) {}

    private final List<Turn> turns = new ArrayList<>();
    private final Map<String, FarmDescribed.Season> seasons = new LinkedHashMap<>();

    private FarmHistory(List<LifeEvent> descriptions) {
        Farm farm = Farm.UNDESCRIBED;
        for (LifeEvent event : descriptions) {
            FarmDescribed said = (FarmDescribed) event.data();
            farm = farm.with(said);
            turns.add(new Turn(event.time(), farm));
            if (said.seasons() != null) {
                said.seasons().forEach(season -> seasons.put(season.name(), season));
            }
        }
    }

    /** The history that the farm's own events tell. */
    public static FarmHistory of(List<StoredEvent> farmEvents) {
        return new FarmHistory(Corrections.resolve(farmEvents).standing().stream()
                .filter(event -> event.type() == EventType.FARM_DESCRIBED)
                .sorted(LifeEvent.ORDER)
                .toList());
    }

    /** The farm as it was at a time. */
    public Farm at(Instant time) {
        Farm farm = turns.isEmpty() ? Farm.UNDESCRIBED : turns.get(0).farm();
        for (Turn turn : turns) {
            if (!turn.from().isAfter(time)) {
                farm = turn.farm();
            }
        }
        return farm;
    }

    /** The farm by the newest description. */
    public Farm latest() {
        return turns.isEmpty() ? Farm.UNDESCRIBED : turns.get(turns.size() - 1).farm();
    }

    /** The seasons that somebody named, in the order of their first naming. */
    public List<FarmDescribed.Season> seasons() {
        return List.copyOf(seasons.values());
    }

    /** The season of a local birth date: a named one, else the calendar year. */
    public String seasonOf(LocalDate birthDate) {
        return named(birthDate).map(FarmDescribed.Season::name).orElse(Integer.toString(birthDate.getYear()));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FarmHistory that
                && turns.equals(that.turns)
                && seasons().equals(that.seasons());
    }

    @Override
    public int hashCode() {
        return Objects.hash(turns, seasons());
    }

    private Optional<FarmDescribed.Season> named(LocalDate date) {
        return seasons.values().stream()
                .filter(season -> !date.isBefore(season.from()) && date.isBefore(season.to()))
                .reduce((first, later) -> later);
    }
}
