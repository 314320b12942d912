package wisp.simulation;

import wisp.event.Amended;
import wisp.event.Event;
import wisp.event.EventData;
import wisp.event.IllnessFound;
import wisp.event.Retracted;
import wisp.event.Weighed;

/** Writes what staff put right later, and one slip that nobody mends. */
final class Corrections {
    private Corrections() {}

    /** Amends an event to what really happened, the next day. */
    static void amend(Event first, long when, EventData right, WallClock clock, Notebook page, Chance chance) {
        if (first == null) {
            return;
        }
        long noticed = first.recordedTime().toEpochSecond() / 60 + chance.whole(600, 1500);
        String data = EventJson.data(right, true);
        page.writeAtOnce(
                noticed, new Amended(page.source(), first.id(), clock.at(when), data, "written on the wrong line"));
    }

    /** Now and then another calf's diarrhoea is written on this page, and withdrawn within the day. */
    static void anotherCalfs(Model model, Newborn calf, Notebook page, Chance chance) {
        if (!chance.happens(model.recording().retracted())) {
            return;
        }
        long when = calf.minute() + chance.whole(3 * 1440, 20 * 1440);
        Event wrong = page.writeAtOnce(when, new IllnessFound("diarrhoea", 1, null, "loose dung"));
        if (wrong != null) {
            page.writeAtOnce(when + chance.whole(60, 600), new Retracted(page.source(), wrong.id(), "another calf"));
        }
    }

    /** A weighing that carries the month before its own. */
    static void misdated(Model model, Newborn calf, Notebook page, Chance chance) {
        if (chance.happens(model.recording().misdated())) {
            long when = calf.minute() + chance.whole(10, 20) * 1440L;
            page.writeMisdated(when - 30 * 1440L, when, new Weighed(calf.weightKg() + 10));
        }
    }
}
