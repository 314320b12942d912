package wisp.due;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wisp.event.EventType;
import wisp.event.Moved;
import wisp.event.TagFitted;
import wisp.history.Exit;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.indicator.Age;
import wisp.indicator.Basis;
import wisp.indicator.Law;
import wisp.indicator.Practice;
import wisp.indicator.PracticeStep;

/**
 * A calf at one moment, with the law of its birth and what good practice asks.
 *
 * @param row its row in the cohort
 * @param at the moment that everything is judged at
 * @param law empty where the place's limits are not known
 */
public record DueCalf(Life life, int row, Instant at, Optional<Law> law, Practice practice) {
    private static final Duration SHOWN_AFTER_IMPOSSIBLE = Duration.ofHours(24);

    /** The calf's clocks. */
    public ZoneId zone() {
        return life.farm().zone();
    }

    /** The local date of the moment. */
    public LocalDate today() {
        return at.atZone(zone()).toLocalDate();
    }

    /** When a day of life begins; day 0 begins with the birth. */
    public Instant startOfDay(long day) {
        return day <= 0 ? life.born().time() : life.endOfDay(day - 1);
    }

    /** Its events of one type, in order. */
    public Stream<LifeEvent> events(EventType type) {
        return life.events().stream().filter(event -> event.type() == type);
    }

    /** Its first event of one type. */
    public Optional<LifeEvent> first(EventType type) {
        return events(type).findFirst();
    }

    /** Its last event of one type. */
    public Optional<LifeEvent> last(EventType type) {
        return events(type).reduce((earlier, later) -> later);
    }

    /** Whether it was born alive. */
    public boolean bornAlive() {
        return life.exit() == null || life.exit().kind() != Exit.Kind.BORN_DEAD;
    }

    /** A window in days of life; the last day is inside. */
    public DueSpan days(long from, long by) {
        return DueSpan.before(startOfDay(from), life.endOfDay(by));
    }

    /**
     * A window in exact age. Where only the date of birth is known the calf may be as much as a day younger, and the
     * end lies somewhere between two moments.
     */
    public DueSpan hours(Duration from, Duration by, boolean endInside) {
        Instant born = life.born().time();
        Instant latest = life.birthTimeKnown() ? null : life.endOfDay(0).plus(by);
        return new DueSpan(born.plus(from), born.plus(by), latest, null, endInside, true);
    }

    /** The window that good practice asks. */
    public DueSpan window(PracticeStep step) {
        if (step.by() == null) {
            DueSpan days = days(step.fromDay(), step.byDay());
            return step.untilDay() == null ? days : days.until(life.endOfDay(step.untilDay()));
        }
        DueSpan hours = hours(step.from().exact(), step.by().exact(), true);
        return step.until() == null ? hours : hours.until(lastEndOf(step.until()));
    }

    private Instant lastEndOf(Age until) {
        DueSpan all = hours(Duration.ZERO, until.exact(), true);
        return all.lastEnd();
    }

    /** A step that nothing has been done about, as its window says. */
    public DueItem item(String step, String title, EventType event, DueSpan span, DueRule rule) {
        DueState state = span.stateAt(at);
        boolean stale = state == DueState.IMPOSSIBLE_NOW
                && rule.basis().kind() == Basis.Kind.GOOD_PRACTICE
                && !at.isBefore(span.until().plus(SHOWN_AFTER_IMPOSSIBLE));
        DueItem item = new DueItem(
                life,
                row,
                pen(),
                tag(),
                step,
                title,
                event,
                state,
                span,
                rule,
                "",
                List.of(),
                List.of(),
                null,
                false,
                state.open() && !stale);
        String unsure = span.perhapsOver(at) || (span.closesLatest() != null && state.open())
                ? "The hour of birth is not known: the time ends between " + Said.moment(span.closes(), zone())
                        + " and " + Said.moment(span.closesLatest(), zone()) + "."
                : "";
        return item.caution(unsure).caution(rule.basis().remarks());
    }

    /** The pen that it stands in as far as is known at the moment, null where nothing is. */
    String pen() {
        String pen = life.birth().pen();
        for (LifeEvent event : life.events()) {
            if (event.data() instanceof Moved moved && !event.time().isAfter(at)) {
                pen = moved.pen();
            }
        }
        return pen;
    }

    /** Its newest primary tag number, else its newest number, null where it has none. */
    String tag() {
        String primary = null;
        String any = null;
        for (LifeEvent event : life.events()) {
            if (event.data() instanceof TagFitted tag) {
                any = tag.number();
                primary = tag.role() == TagFitted.Role.PRIMARY ? tag.number() : primary;
            }
        }
        return primary == null ? any : primary;
    }
}
