-- A log as schema 1 kept it on the day it came to be, its events those of schema-1.db. Never written again.
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

CREATE TRIGGER event_rings_the_bell AFTER INSERT ON event
    FOR EACH STATEMENT EXECUTE FUNCTION event_rings_the_bell();

ALTER TABLE event ENABLE ALWAYS TRIGGER event_is_never_changed;
ALTER TABLE event ENABLE ALWAYS TRIGGER event_is_never_removed;
ALTER TABLE event ENABLE ALWAYS TRIGGER event_is_never_emptied;
ALTER TABLE event ENABLE ALWAYS TRIGGER event_follows_the_last;

INSERT INTO wisp_schema (version) VALUES (1);

INSERT INTO event VALUES (1, 'herd-book', '1', 'farm-described', 'farm', '2025-08-01T00:00:00+01:00', '2026-03-06T08:00:00.000Z', '8b254ab78ebaa31570a4d90a526576b944e2b3ed4ac36aef0467c0276dcf48d6', '{"data":{"enterprise":"beef","name":"Fixture Farm","seasons":[{"from":"2025-08-01","name":"2025","to":"2026-08-01"}],"zone":"Europe/London"},"id":"1","recordedtime":"2026-03-06T08:00:00.000Z","source":"herd-book","specversion":"1.0","subject":"farm","time":"2025-08-01T00:00:00+01:00","type":"farm-described"}');
INSERT INTO event VALUES (2, 'herd-book', '2', 'birth', 'calf-1', '2026-03-01T05:10:00+00:00', '2026-03-06T08:00:00.000Z', 'e3b1c65b89de2967f215b48074db383317bf40f745426522a1101aa587ce8303', '{"data":{"alive":true,"dam":"cow-12","ease":2,"pen":"P1","sex":"male","weight_kg":41.5},"id":"2","recordedby":"Stock person","recordedtime":"2026-03-06T08:00:00.000Z","source":"herd-book","specversion":"1.0","subject":"calf-1","time":"2026-03-01T05:10:00+00:00","type":"birth"}');
INSERT INTO event VALUES (3, 'herd-book', '3', 'navel-treated', 'calf-1', '2026-03-01T05:31:00+00:00', '2026-03-06T08:00:00.000Z', '8d4cb6537d476e20eaac5fde3e83eef353908d9e5795b506b40ad69f90f4d032', '{"data":{"concentration_percent":10,"method":"dip","product":"iodine"},"id":"3","recordedtime":"2026-03-06T08:00:00.000Z","source":"herd-book","specversion":"1.0","subject":"calf-1","time":"2026-03-01T05:31:00+00:00","type":"navel-treated"}');
INSERT INTO event VALUES (4, 'herd-book', '4', 'colostrum-fed', 'calf-1', '2026-03-01T06:00:00+00:00', '2026-03-01T07:00:00Z', 'bf1a8f1803e13f7dcc7d659a9458d66e86f0e5b27548d4924ac5bce004344abf', '{"data":{"method":"tube","volume_l":3},"id":"4","recordedtime":"2026-03-01T07:00:00Z","source":"herd-book","specversion":"1.0","subject":"calf-1","time":"2026-03-01T06:00:00+00:00","type":"colostrum-fed"}');
INSERT INTO event VALUES (5, 'herd-book', '5', 'noted', 'calf-1', '2026-03-02T06:00:00+00:00', '2026-03-06T08:00:00.000Z', '87170fae553632981b1a30c04a91ae1a9baa3b9a1137352daadfce2bfcaa4260', '{"data":{"text":"Kälbchen №1 🐄 – “wohlauf”"},"id":"5","recordedtime":"2026-03-06T08:00:00.000Z","source":"herd-book","specversion":"1.0","subject":"calf-1","time":"2026-03-02T06:00:00+00:00","traceparent":"00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01","type":"noted"}');
INSERT INTO event VALUES (6, 'herd-book', '6', 'illness-found', 'calf-1', '2026-03-05T06:00:00+00:00', '2026-03-06T08:00:00.000Z', 'a5ea8661e6e1a7d148baeb32ec4780503ee4f5810a1e64622ffdee322f1de7aa', '{"data":{"condition":"navel-infection","severity":1,"temperature_c":39.6},"id":"6","recordedtime":"2026-03-06T08:00:00.000Z","source":"herd-book","specversion":"1.0","subject":"calf-1","time":"2026-03-05T06:00:00+00:00","type":"illness-found"}');
INSERT INTO event VALUES (7, 'herd-book', '7', 'amended', 'calf-1', '2026-03-05T09:00:00+00:00', '2026-03-06T08:00:00.000Z', 'ea6b4ff035c71caa4f8eed28f2b29f47f923683ca534509049f8ffccf9257517', '{"data":{"data":{"method":"spray","product":"iodine"},"event_id":"3","event_source":"herd-book","reason":"wrong time","time":"2026-03-01T05:41:00+00:00"},"id":"7","recordedtime":"2026-03-06T08:00:00.000Z","source":"herd-book","specversion":"1.0","subject":"calf-1","time":"2026-03-05T09:00:00+00:00","type":"amended"}');
INSERT INTO event VALUES (8, 'herd-book', '8', 'retracted', 'calf-1', '2026-03-05T09:01:00+00:00', '2026-03-06T08:00:00.000Z', '1e4a58ead3e7614ad2a2cf9dd29222963d20fc9f05476998d01c4706a2f58ab8', '{"data":{"event_id":"6","event_source":"herd-book"},"id":"8","recordedtime":"2026-03-06T08:00:00.000Z","source":"herd-book","specversion":"1.0","subject":"calf-1","time":"2026-03-05T09:01:00+00:00","type":"retracted"}');
