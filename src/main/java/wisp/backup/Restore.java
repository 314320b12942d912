package wisp.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import wisp.event.Event;
import wisp.history.FarmHistory;
import wisp.log.Appended.Outcome;
import wisp.log.ChainHead;
import wisp.log.EventLog;
import wisp.log.StoredEvent;

/**
 * Records a backup into an empty log, all of it or up to a point in time. The backup is walked to its end before
 * anything is written, and the log once more afterwards.
 */
public final class Restore {
    private final Path file;
    private final Walked walked;

    private record Walked(ChainHead kept, long events, OwnFiles files, String note) {}

    private Restore(Path file, Walked walked) {
        this.file = file;
        this.walked = walked;
    }

    /**
     * Walks a backup.
     *
     * @param asOf a sequence, a date for its end by the farm's clocks, or a time with an offset; null for all of it
     * @throws BackupFailure where it is damaged before that point, or none of the above
     */
    public static Restore of(Path file, String asOf) {
        PointInTime until = asOf == null
                ? PointInTime.NOW
                : PointInTime.read(asOf, asOf.length() == 10 ? zone(file) : ZoneOffset.UTC);
        return new Restore(file, walk(file, until));
    }

    /**
     * Records the backup into a log.
     *
     * @param analytics the folder for the farm's own definitions; null where a database has none
     * @throws BackupFailure where the log holds events
     */
    public Restored into(EventLog log, Path analytics) {
        refuseEvents(log);
        int own = walked.files().texts().size();
        if (analytics != null) {
            walked.files().check(analytics);
            walked.files().writeInto(analytics);
        }
        record(log, walked.kept().sequence());
        ChainHead now = ChainHead.of(log.verify());
        if (!now.equals(walked.kept())) {
            throw new BackupFailure(
                    "The restored log ends with " + now + " and the backup with " + walked.kept()
                            + ": it was written to meanwhile. Remove it and restore again.",
                    null);
        }
        String homeless = analytics == null && own > 0
                ? own + " of the farm's own definitions stay in the file: a database has no place for them unless"
                        + " --analytics names one."
                : "";
        return new Restored(
                now,
                walked.events() - now.sequence(),
                analytics == null ? 0 : own,
                (walked.note() + " " + homeless).strip());
    }

    /** The clocks of the farm in the backup, as its events tell. */
    private static ZoneId zone(Path file) {
        List<StoredEvent> ofFarm = new ArrayList<>();
        try (BackupEvents events = new BackupEvents(file)) {
            events.forEachRemaining(stored -> {
                if (stored.event().subject().equals(FarmHistory.SUBJECT)) {
                    ofFarm.add(stored);
                }
            });
        } catch (DamagedBackup furtherOn) {
            // What was told before the damage still holds.
        }
        return FarmHistory.of(ofFarm).latest().zone();
    }

    private static Walked walk(Path file, PointInTime until) {
        ChainHead kept = ChainHead.OF_NOTHING;
        try (BackupEvents events = new BackupEvents(file)) {
            holdAgainstNote(file, events.head().head());
            boolean over = false;
            String note = "";
            try {
                while (events.hasNext()) {
                    StoredEvent stored = events.next();
                    over = over || until.endsBefore(stored);
                    kept = over ? kept : new ChainHead(stored.sequence(), stored.hash());
                }
            } catch (DamagedBackup damaged) {
                if (!over && kept.sequence() < until.sequence()) {
                    throw damaged;
                }
                note = "What comes later in the backup is damaged at event " + (damaged.whole() + 1) + ".";
            }
            return new Walked(kept, events.head().head().sequence(), events.files(), note);
        }
    }

    /** The head that was written beside the backup shows one that was written anew. */
    private static void holdAgainstNote(Path file, ChainHead head) {
        Path noted = Backup.headFile(file);
        try {
            if (Files.exists(noted) && !ChainHead.read(Files.readString(noted)).equals(Optional.of(head))) {
                throw new BackupFailure(
                        "The head in " + noted + " is not that of the backup, " + head
                                + ": the backup is another one, or was written anew. Take the right one.",
                        null);
            }
        } catch (IOException unreadable) {
            throw new BackupFailure(
                    noted + " cannot be read (" + unreadable.getMessage() + "). Check the right to read it.",
                    unreadable);
        }
    }

    private void record(EventLog log, long last) {
        AtomicBoolean refused = new AtomicBoolean();
        try (BackupEvents events = new BackupEvents(file)) {
            log.appendAll(
                    first(events, last),
                    outcome -> refused.compareAndSet(false, outcome != Outcome.ACCEPTED),
                    () -> !refused.get() && log.last() == 0);
        }
        refuseOthers(log, last, refused.get());
    }

    private static Iterator<Event> first(BackupEvents events, long last) {
        return new Iterator<>() {
            private long at;

            @Override
            public boolean hasNext() {
                return at < last && events.hasNext();
            }

            @Override
            public Event next() {
                if (!hasNext()) {
                    throw new NoSuchElementException();
                }
                at++;
                return events.next().event();
            }
        };
    }

    private static void refuseEvents(EventLog log) {
        long last = log.last();
        if (last > 0) {
            throw new BackupFailure(
                    "There are " + last + " events already, and a backup is restored into an empty place only."
                            + " Give --data another folder or database.",
                    null);
        }
    }

    private static void refuseOthers(EventLog log, long last, boolean refused) {
        if (refused || log.last() != last) {
            throw new BackupFailure(
                    "Somebody wrote to the log while it was restored; nothing of the backup was recorded."
                            + " Stop that program and restore into another empty place.",
                    null);
        }
    }
}
