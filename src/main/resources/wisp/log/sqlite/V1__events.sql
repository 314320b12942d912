-- The one table of the log: what an event is stands in its json; the other columns repeat parts of it for looking up.
CREATE TABLE event (
    sequence     INTEGER PRIMARY KEY CHECK (sequence > 0),
    source       TEXT NOT NULL,
    id           TEXT NOT NULL,
    type         TEXT NOT NULL,
    subject      TEXT NOT NULL,
    time         TEXT NOT NULL,
    recordedtime TEXT NOT NULL,
    hash         TEXT NOT NULL CHECK (length(hash) = 64),
    json         TEXT NOT NULL,
    UNIQUE (source, id)
) STRICT;

CREATE TRIGGER event_is_never_changed BEFORE UPDATE ON event
BEGIN
    SELECT RAISE(ABORT, 'an event is never changed: record an amendment');
END;

CREATE TRIGGER event_is_never_removed BEFORE DELETE ON event
BEGIN
    SELECT RAISE(ABORT, 'an event is never removed: record a retraction');
END;

-- INSERT OR REPLACE would remove the old row without asking the trigger above.
CREATE TRIGGER event_is_never_replaced BEFORE INSERT ON event
WHEN EXISTS (SELECT 1 FROM event WHERE source = NEW.source AND id = NEW.id)
BEGIN
    SELECT RAISE(ABORT, 'an event is never replaced: its source and id are taken');
END;

CREATE TRIGGER event_follows_the_last BEFORE INSERT ON event
WHEN NEW.sequence IS NOT (SELECT coalesce(max(sequence), 0) + 1 FROM event)
BEGIN
    SELECT RAISE(ABORT, 'the sequence of events has no gaps: the next one follows the last');
END;
