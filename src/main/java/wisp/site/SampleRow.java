package wisp.site;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.sample.SampleChain;
import wisp.sample.TissueSample;
import wisp.tag.TagNumber;

/**
 * One sample on a page. What is not recorded is empty.
 *
 * @param number the tag number that it bears, in its usual groups
 * @param waits whether its result is waited for
 * @param days days of waiting, for one that is waited for
 * @param unanswered why it is waited for no more though no result came, empty otherwise
 */
public record SampleRow(
        CalfName calf,
        String href,
        String number,
        String taken,
        String sent,
        String result,
        String laboratory,
        String test,
        TissueSample.State state,
        boolean waits,
        long days,
        String unanswered) {

    /** A calf's samples. */
    static List<SampleRow> of(Life life, Instant now, Links links) {
        return SampleChain.of(life).samples().stream()
                .map(sample -> of(life, sample, now, links))
                .toList();
    }

    private static SampleRow of(Life life, TissueSample sample, Instant now, Links links) {
        ZoneId zone = life.farm().zone();
        String number = sample.tagNumber();
        return new SampleRow(
                CalfName.of(life),
                links.calf(life.key()) + "#samples",
                number.isEmpty() ? "" : TagNumber.read(number).shown(),
                when(sample.taken(), zone),
                when(sample.sent(), zone),
                when(sample.result(), zone),
                sample.laboratory(),
                sample.test(),
                sample.state(),
                sample.waiting(),
                sample.daysWaiting(now, zone),
                unanswered(sample, zone));
    }

    private static String unanswered(TissueSample sample, ZoneId zone) {
        return sample.unanswered()
                ? "not answered; the calf "
                        + (sample.end().death() ? "died" : "left") + " on "
                        + Shown.day(sample.end().time(), zone)
                : "";
    }

    /** How far it has come, in words. */
    public String said() {
        return unanswered.isEmpty() ? state.word() + (test.isEmpty() ? "" : ", " + test) : unanswered;
    }

    private static String when(LifeEvent event, ZoneId zone) {
        return event == null ? "" : Shown.day(event.time(), zone);
    }

    /** Whether somebody should do something about it: it is no plain negative. */
    public boolean grave() {
        return state == TissueSample.State.POSITIVE || state == TissueSample.State.INCONCLUSIVE;
    }

    /** Days of waiting in words. */
    public String waiting() {
        return !waits ? "" : days == 1 ? "1 day" : days + " days";
    }
}
