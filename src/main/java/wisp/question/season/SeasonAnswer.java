package wisp.question.season;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wisp.question.Counted;

/**
 * How the season went: everything that its page shows.
 *
 * @param season the season asked for
 * @param before the season that it is compared with, empty where there is none
 * @param asOf where follow-up ends
 * @param calves calves born in what is asked for
 * @param said the answer in plain words, the most important first
 * @param findings what stands out
 * @param figures every figure, deaths first
 * @param transfer the classes of passive transfer
 * @param births births by week
 * @param survival this season's survival, last season's after it where there is one
 * @param hazards each illness by week of life
 * @param hazardsBefore the same of the season before, in the same order; empty where there is none
 * @param calendars each illness by calendar week
 * @param calendarsBefore the same of the season before, in the same order; empty where there is none
 * @param deaths deaths by cause and age
 * @param strata one figure divided
 */
public record SeasonAnswer(
        String season,
        String before,
        Instant asOf,
        int calves,
        List<Counted> said,
        List<Finding> findings,
        List<SeasonFigure> figures,
        List<TransferClass.Share> transfer,
        List<BirthWeek> births,
        List<SurvivalByAge> survival,
        List<AgeHazard> hazards,
        List<AgeHazard> hazardsBefore,
        List<IllnessCalendar> calendars,
        List<IllnessCalendar> calendarsBefore,
        Deaths deaths,
        StrataTable strata) {

    /** The answer in plain words, the most important first. */
    public List<String> sentences() {
        return said.stream().map(Counted::plain).toList();
    }

    /** How many calves born dead stand in the deaths and in no figure that counts hours: their hour is not known. */
    public int bornDeadWithoutHour() {
        return figures.stream()
                .map(SeasonFigure::estimate)
                .filter(estimate -> estimate.indicator().id().equals(SeasonQuestion.STILLBIRTH))
                .mapToInt(estimate -> new FirstDay(estimate).bornDeadWithoutHour(deaths))
                .sum();
    }

    /** The calves behind one of its counts; a cause of death may be written large or small. */
    public Optional<CalfList> list(String id) {
        return lists().filter(list -> list.id().equalsIgnoreCase(id)).findFirst();
    }

    private Stream<CalfList> lists() {
        Stream<Deaths.Cause> causes = Stream.concat(deaths.causes().stream(), Stream.of(deaths.all()));
        return Stream.of(
                        births.stream().map(BirthWeek::born),
                        transfer.stream().map(TransferClass.Share::calves),
                        hazards.stream()
                                .flatMap(hazard -> hazard.weeks().stream().map(AgeHazard.Week::episodes)),
                        calendars.stream()
                                .flatMap(calendar -> calendar.weeks().stream().map(IllnessCalendar.Week::episodes)),
                        causes.flatMap(cause ->
                                Stream.concat(Stream.of(cause.total(), cause.dead()), cause.byAge().values().stream())))
                .flatMap(some -> some);
    }
}
