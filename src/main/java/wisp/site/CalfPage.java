package wisp.site;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wisp.chart.SvgPainter;
import wisp.cohort.NavelDelay;
import wisp.event.Died;
import wisp.history.Episode;
import wisp.history.Exit;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.history.Mark;
import wisp.history.Withdrawn;
import wisp.indicator.CalfFigures;
import wisp.indicator.Conditions;
import wisp.indicator.Definitions;
import wisp.records.Records;

/**
 * One calf's life in order of time.
 *
 * @param name what it is called
 * @param summary who it is and how it went, in words
 * @param pictures its life on one line of time, and its first day, as SVG; empty without a recorded birth
 * @param noFirstDay why its first day is not drawn hour by hour, empty where it is or where nothing is to be said
 * @param earTags every tag that it ever had
 * @param samples its tissue samples
 * @param medicines what it was given, and the end of each withdrawal
 * @param lines its events that count
 * @param episodes its episodes of illness
 * @param counts what it is to every figure
 * @param marks events that no figure counts
 * @param tags its tags to look at again
 * @param withdrawn events that a correction withdrew or replaced
 * @param due what is to be done with it
 * @param dead whether it died, so that nothing of it is now
 * @param mendable whether corrections may be written: only what is known now can be mended
 */
public record CalfPage(
        Frame frame,
        CalfName name,
        String summary,
        List<String> pictures,
        String noFirstDay,
        List<EarTagRow> earTags,
        List<SampleRow> samples,
        CalfMedicines medicines,
        List<Line> lines,
        List<Illness> episodes,
        CalfCounts counts,
        List<Marked> marks,
        List<TagToLookAt> tags,
        List<Replaced> withdrawn,
        List<CalfDue> due,
        boolean mendable,
        boolean dead) {
    private static final Duration LATE = Duration.ofHours(24);
    private static final String NO_HOUR =
            "The hour of its birth is not known, so that nothing of its first day can be told in hours.";

    /**
     * One event of the life.
     *
     * @param decided figures that rest on it
     * @param touched figures that would count the calf otherwise without it
     */
    public record Line(
            String anchor,
            String when,
            String age,
            String what,
            String details,
            String recorded,
            String by,
            boolean late,
            boolean amended,
            String mendHref,
            List<CalfCounts.Counted> decided,
            List<CalfCounts.Counted> touched) {}

    /** One episode of illness. */
    public record Illness(String condition, String opened, String closed) {}

    /** One marked event. */
    public record Marked(
            String when, String what, String problem, String mend, String source, String id, String mendHref) {}

    /** One event that no longer stands as it was recorded. */
    public record Replaced(String what, String when, String details, String by, String recorded, String mendHref) {}

    static CalfPage of(Asked asked, Records records, int row) {
        Life life = asked.cohort().lives().get(row);
        ZoneId zone = life.farm().zone();
        Frame frame = Frame.of(asked, "Calf " + CalfName.of(life).shown(), Links.calfPath(life.key()), Map.of())
                .ofOne();
        boolean born = life.born() != null;
        Links links = born ? ofItsSeason(asked, life) : frame.links();
        CalfFigures figures = born
                ? CalfFigures.of(records.definitions(), asked.cohort(), row)
                : new CalfFigures(List.of(), Map.of());
        boolean now = asked.selection().asOf() == null;
        Links mending = now ? frame.links() : null;
        List<Line> lines = life.events().stream()
                .map(event -> line(life, event, figures, links, mending))
                .toList();
        return new CalfPage(
                frame,
                CalfName.of(life),
                summary(life, zone, records.definitions().conditions()),
                born ? pictures(life, records.definitions(), asked.cohort().cut()) : List.of(),
                born && !life.birthTimeKnown() ? NO_HOUR : "",
                EarTagRow.of(life),
                SampleRow.of(life, SamplesPage.moment(asked), frame.links()),
                CalfMedicines.of(
                        life,
                        now ? records.clock().instant() : asked.selection().asOf()),
                lines,
                life.episodes().stream().map(episode -> illness(episode, zone)).toList(),
                born ? CalfCounts.of(figures.figures(), links, zone) : CalfCounts.NONE,
                life.marks().stream().map(mark -> marked(mark, zone, mending)).toList(),
                TagToLookAt.of(life, asked.cohort(), frame.links(), mending),
                life.withdrawn().stream()
                        .map(one -> replaced(one, zone, mending))
                        .toList(),
                CalfDue.of(life, row, asked, records),
                now,
                life.exit() != null && life.exit().death());
    }

    /** The anchor of an event's line in the list. */
    static String anchor(LifeEvent event) {
        return "event-" + event.sequence();
    }

    /** Where an event is mended; empty where nothing can be. */
    static String mendHref(LifeEvent event, Links mending) {
        return mending == null ? "" : mending.to("/records/mend", Map.of("source", event.source(), "id", event.id()));
    }

    /** Addresses of figures in which the calf can stand: its own season, as of the same day, narrowed by nothing. */
    private static Links ofItsSeason(Asked asked, Life life) {
        Map<String, String> kept = new LinkedHashMap<>();
        kept.put("season", asked.cohort().farm().seasonOf(life.birthDate()));
        kept.put("as-of", asked.parameters().getOrDefault("as-of", ""));
        return new Links(kept);
    }

    private static List<String> pictures(Life life, Definitions definitions, Instant cut) {
        List<String> pictures = new ArrayList<>();
        pictures.add(SvgPainter.figure(LifePicture.of(life, definitions.law(life), cut)));
        FirstDayPicture.of(life).ifPresent(picture -> pictures.add(SvgPainter.figure(picture)));
        return pictures;
    }

    static String summary(Life life, ZoneId zone, Conditions conditions) {
        if (life.born() == null) {
            return "No birth is recorded for this animal, so that no figure counts it.";
        }
        List<String> parts = new ArrayList<>();
        String sex = life.birth().sex() == null ? "Calf" : life.birth().sex().word() + " calf";
        parts.add(Character.toUpperCase(sex.charAt(0)) + sex.substring(1) + ", born "
                + Shown.moment(life.born().time(), life.birthTimeKnown(), zone)
                + (life.birth().pen() == null ? "" : " in " + life.birth().pen())
                + (life.birthTimeKnown() ? "" : ", at an hour that nobody wrote down"));
        if (life.birth().breed() != null) {
            parts.add(life.birth().breed());
        }
        if (life.exit() != null) {
            String how = switch (life.exit().kind()) {
                case BORN_DEAD -> "born dead";
                case DIED -> died(life, zone, conditions);
                case LEFT ->
                    "left " + Shown.moment(life.exit().time(), life.exit().timeKnown(), zone);
            };
            parts.add(how);
        }
        return String.join("; ", parts) + ".";
    }

    private static String died(Life life, ZoneId zone, Conditions conditions) {
        Exit exit = life.exit();
        String cause = exit.event().data() instanceof Died died && died.cause() != null ? died.cause() : "";
        long days = life.ageAt(exit.time()).toDays();
        String age = days >= 2 ? days + " days" : Shown.age(life, exit.time());
        return "died"
                + (cause.isBlank()
                        ? ""
                        : " of " + EventWords.cause((Died) exit.event().data(), conditions))
                + (cause.isBlank() ? "" : " (as recorded)") + " on "
                + Shown.moment(exit.time(), exit.timeKnown(), zone) + " at " + age
                + (cause.isBlank() ? ", cause not recorded" : "");
    }

    private static Line line(Life life, LifeEvent event, CalfFigures figures, Links links, Links mending) {
        ZoneId zone = life.farm().zone();
        Duration delay = Duration.between(event.time(), event.recorded());
        List<CalfFigures.Use> uses = figures.uses().getOrDefault(event.sequence(), List.of());
        return new Line(
                anchor(event),
                Shown.moment(event.time(), event.timeKnown(), zone),
                "day " + life.dayOfLife(event.time()),
                EventWords.of(event),
                details(life, event),
                Shown.moment(event.recorded(), true, zone),
                event.recordedBy() == null ? "" : event.recordedBy(),
                event.timeKnown() && delay.compareTo(LATE) > 0,
                event.amended(),
                mendHref(event, mending),
                CalfCounts.uses(uses, true, links),
                CalfCounts.uses(uses, false, links));
    }

    /** The first navel treatment is in no figure by itself: it puts the calf in a class of navel timing. */
    private static String details(Life life, LifeEvent event) {
        String details = EventWords.details(event);
        LifeEvent treatment = NavelDelay.firstTreatment(life);
        boolean first = treatment != null && treatment.sequence() == event.sequence();
        String words = first ? "class of navel timing: " + NavelDelay.of(life).word() : "";
        return details + (details.isEmpty() || words.isEmpty() ? "" : "; ") + words;
    }

    private static Illness illness(Episode episode, ZoneId zone) {
        return new Illness(episode.condition(), Shown.day(episode.opened(), zone), Shown.day(episode.closed(), zone));
    }

    static Marked marked(Mark mark, ZoneId zone, Links mending) {
        return new Marked(
                Shown.moment(mark.event().time(), mark.event().timeKnown(), zone),
                EventWords.of(mark.event()),
                (mark.kind().problem() + " " + mark.detail()).strip(),
                mark.kind().mend(),
                mark.event().source(),
                mark.event().id(),
                mendHref(mark.event(), mending));
    }

    /** The correction is what can be withdrawn again. */
    static Replaced replaced(Withdrawn one, ZoneId zone, Links mending) {
        return new Replaced(
                EventWords.of(one.event()),
                Shown.moment(one.event().time(), one.event().timeKnown(), zone),
                EventWords.details(one.event()),
                EventWords.of(one.by()),
                Shown.moment(one.by().recorded(), true, zone),
                mendHref(one.by(), mending));
    }
}
