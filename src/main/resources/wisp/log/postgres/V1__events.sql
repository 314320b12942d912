-- The one table of the log: what an event is stands in its json; the other columns repeat parts of it for looking up.
-- Names are compared byte by byte: an index in a language's order breaks when the system's rules for it change.
CREATE TABLE event (
    sequence     BIGINT PRIMARY KEY CHECK (sequence > 0),
    source       TEXT COLLATE "C" NOT NULL,
    id           TEXT COLLATE "C" NOT NULL,
    type         TEXT NOT NULL,
    subject      TEXT NOT NULL,
    time         TEXT NOT NULL,
    recordedtime TEXT NOT NULL,
    hash         TEXT NOT NULL CHECK (length(hash) = 64),
    json         TEXT NOT NULL,
    UNIQUE (source, id)
);

CREATE TABLE wisp_schema (
    version INTEGER PRIMARY KEY
);

CREATE FUNCTION event_is_never_changed() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    RAISE EXCEPTION 'an event is never changed: record an amendment';
END
$$;

CREATE FUNCTION event_is_never_removed() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    RAISE EXCEPTION 'an event is never removed: record a retraction';
END
$$;

CREATE FUNCTION event_follows_the_last() RETURNS trigger LANGUAGE plpgsql SET search_path FROM CURRENT AS $$
BEGIN
    IF NEW.sequence IS DISTINCT FROM (SELECT coalesce(max(sequence), 0) + 1 FROM event) THEN
        RAISE EXCEPTION 'the sequence of events has no gaps: the next one follows the last';
    END IF;
    RETURN NEW;
END
$$;

CREATE FUNCTION event_rings_the_bell() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    PERFORM pg_notify('wisp_event', '');
    RETURN NULL;
END
$$;

CREATE TRIGGER event_is_never_changed BEFORE UPDATE ON event
    FOR EACH STATEMENT EXECUTE FUNCTION event_is_never_changed();

CREATE TRIGGER event_is_never_removed BEFORE DELETE ON event
    FOR EACH STATEMENT EXECUTE FUNCTION event_is_never_removed();

CREATE TRIGGER event_is_never_emptied BEFORE TRUNCATE ON event
    FOR EACH STATEMENT EXECUTE FUNCTION event_is_never_removed();

CREATE TRIGGER event_follows_the_last BEFORE INSERT ON event
    FOR EACH ROW EXECUTE FUNCTION event_follows_the_last();

-- Listeners hear it at the commit, once a transaction.
CREATE TRIGGER event_rings_the_bell AFTER INSERT ON event
    FOR EACH STATEMENT EXECUTE FUNCTION event_rings_the_bell();

-- Also where a session says that it replicates, which would silence an ordinary trigger.
ALTER TABLE event ENABLE ALWAYS TRIGGER event_is_never_changed;
ALTER TABLE event ENABLE ALWAYS TRIGGER event_is_never_removed;
ALTER TABLE event ENABLE ALWAYS TRIGGER event_is_never_emptied;
ALTER TABLE event ENABLE ALWAYS TRIGGER event_follows_the_last;
