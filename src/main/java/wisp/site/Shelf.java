package wisp.site;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import wisp.log.EventLog;

/**
 * Finished pages. A page stands on the newest event in the log at the moment when it was begun, and whoever asks gets
 * one that stands on the newest event there is now, or lacks only what {@link JustPosted} lets it lack. Who asks while
 * a page is being made waits for that and makes no second one. Only pages that hang on their address and the log, and
 * at most on the minute, may be put here.
 */
final class Shelf {
    private static final long SECOND = 1_000_000_000L;
    static final String NO_STORE = "no-store";
    private static final String AT_LEAST = "Wisp-At-Least";
    private static final int PAGES_MOST = 200;
    private static final long BYTES_MOST = 16L * 1024 * 1024;

    private final EventLog log;
    private final JustPosted justPosted;
    private final Map<Address, Place> places = new LinkedHashMap<>(PAGES_MOST, 0.75f, true);

    Shelf(EventLog log, JustPosted justPosted) {
        this.log = log;
        this.justPosted = justPosted;
    }

    /** A finished page and the newest event in the log when it was begun. */
    private record Page(long sequence, byte[] html) {}

    /** One address: its newest finished page, and whether another is being made. */
    private static final class Place {
        private final Address address;
        private final Function<Address, String> maker;
        private Page newest;
        private boolean making;
        private volatile long asked = System.nanoTime();

        private Place(Address address, Function<Address, String> maker) {
            this.address = address;
            this.maker = maker;
        }
    }

    /** The page at a request's address. */
    byte[] page(Context ctx, Function<Address, String> maker) {
        return page(ctx, Address.of(ctx), maker);
    }

    /** The same of a page that hangs on the clock too: one is good for the minute in which it was begun. */
    byte[] page(Context ctx, Instant now, Function<Address, String> maker) {
        return page(ctx, Address.of(ctx).at(now), maker);
    }

    private byte[] page(Context ctx, Address address, Function<Address, String> maker) {
        if (says(ctx, NO_STORE)) {
            return maker.apply(address).getBytes(StandardCharsets.UTF_8);
        }
        return says(ctx, "no-cache") || says(ctx, "max-age=0")
                ? current(place(address, maker), log.last())
                : page(address, JustPosted.who(ctx), atLeast(ctx), maker);
    }

    /**
     * What a request may ask of whoever keeps pages: nothing but the newest, as a browser that loads a page again, or
     * that nothing be kept (RFC 9111, section 5.2.1).
     */
    private static boolean says(Context ctx, String directive) {
        String cache = ctx.header("Cache-Control");
        return cache != null && cache.contains(directive);
    }

    /** The event that an open page was told of and now wants to see, 0 where none is named. */
    private static long atLeast(Context ctx) {
        String sequence = ctx.header(AT_LEAST);
        return sequence != null && sequence.matches("\\d{1,18}") ? Long.parseLong(sequence) : 0;
    }

    byte[] page(Address address, String who, long atLeast, Function<Address, String> maker) {
        Place place = place(address, maker);
        place.asked = System.nanoTime();
        long last = log.last();
        Page newest = newest(place);
        boolean good = newest != null
                && (newest.sequence >= last
                        || newest.sequence >= atLeast && justPosted.mayLack(who, newest.sequence, last));
        return good ? newest.html : current(place, last);
    }

    /** Makes the page of an address, where it does not stand on the newest event. */
    void prepare(Address address, Function<Address, String> maker) {
        current(place(address, maker), log.last());
    }

    /**
     * For each page asked for in so many last seconds, the one asked for last first: makes it anew where it must be.
     */
    List<Runnable> askedFor(int seconds) {
        long now = System.nanoTime();
        List<Place> asked = new ArrayList<>();
        synchronized (places) {
            places.values().stream()
                    .filter(place -> now - place.asked < seconds * SECOND && place.address.minute() == 0)
                    .forEach(asked::add);
        }
        asked.sort(Comparator.comparing((Place place) -> place.asked).reversed());
        return asked.stream()
                .<Runnable>map(place -> () -> current(place, log.last()))
                .toList();
    }

    private Place place(Address address, Function<Address, String> maker) {
        synchronized (places) {
            return places.computeIfAbsent(address, a -> new Place(a, maker));
        }
    }

    private static Page newest(Place place) {
        synchronized (place) {
            return place.newest;
        }
    }

    /** The page with this event at least taken into account: one that is there, one being made, or one made now. */
    private byte[] current(Place place, long sequence) {
        synchronized (place) {
            while (true) {
                if (place.newest != null && place.newest.sequence >= sequence) {
                    return place.newest.html;
                }
                if (!place.making) {
                    place.making = true;
                    break;
                }
                await(place);
            }
        }
        Page made = null;
        try {
            long begun = log.last();
            made = new Page(begun, place.maker.apply(place.address).getBytes(StandardCharsets.UTF_8));
        } finally {
            synchronized (place) {
                place.making = false;
                place.newest = made == null ? place.newest : made;
                place.notifyAll();
            }
            if (made == null) {
                drop(place);
            }
        }
        makeRoom();
        return made.html;
    }

    private static void await(Place place) {
        try {
            place.wait();
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the server stops while a page is waited for", ended);
        }
    }

    /** An address at which there is no page takes no place. */
    private void drop(Place place) {
        synchronized (places) {
            places.remove(place.address, place);
        }
    }

    private void makeRoom() {
        synchronized (places) {
            long bytes = 0;
            for (Place place : places.values()) {
                bytes += size(place);
            }
            Iterator<Place> oldest = places.values().iterator();
            while (oldest.hasNext() && (places.size() > PAGES_MOST || bytes > BYTES_MOST)) {
                bytes -= size(oldest.next());
                oldest.remove();
            }
        }
    }

    private static long size(Place place) {
        Page page = newest(place);
        return page == null ? 0 : page.html.length;
    }
}
