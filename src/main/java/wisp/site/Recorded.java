package wisp.site;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import wisp.event.ColostrumFed;
import wisp.event.EventType;
import wisp.history.Life;

/** A thing that should be on record of a calf, or of one born alive. */
enum Recorded {
    BIRTH_HOUR("Hour of birth", Life::birthTimeKnown),
    PEN("Calving pen", life -> life.birth().pen() != null),
    DAM("Dam", life -> life.birth().dam() != null),
    EASE("Calving ease", life -> life.birth().ease() != null),
    WEIGHT("Birth weight", life -> life.birth().weightKg() != null),
    NAVEL("Navel treatment", EventType.NAVEL_TREATED),
    CLEANLINESS("Cleanliness score", EventType.CLEANLINESS_SCORED),
    COLOSTRUM("Colostrum", EventType.COLOSTRUM_FED),
    COLOSTRUM_VOLUME(
            "Colostrum with its volume",
            true,
            life -> life.events().stream()
                    .map(event -> event.data() instanceof ColostrumFed fed ? fed.volumeL() : null)
                    .anyMatch(Objects::nonNull)),
    BLOOD_TEST("Blood test", EventType.BLOOD_TESTED),
    TAG("Ear tag", EventType.TAG_FITTED),
    REGISTRATION("Registration", EventType.REGISTERED);

    private final String title;
    private final boolean ofTheLiving;
    private final Predicate<Life> test;

    Recorded(String title, Predicate<Life> test) {
        this(title, false, test);
    }

    Recorded(String title, EventType type) {
        this(title, true, life -> life.events().stream().anyMatch(event -> event.type() == type));
    }

    Recorded(String title, boolean ofTheLiving, Predicate<Life> test) {
        this.title = title;
        this.ofTheLiving = ofTheLiving;
        this.test = test;
    }

    /** The thing of this name in an address. */
    static Optional<Recorded> named(String word) {
        return Arrays.stream(values()).filter(one -> one.word().equals(word)).findFirst();
    }

    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What it is, and of whom it is asked. */
    String title() {
        return ofTheLiving ? title + ", born alive" : title;
    }

    /** Of whom it is asked. */
    List<Life> asked(List<Life> lives) {
        return lives.stream()
                .filter(life -> !ofTheLiving || life.birth().alive())
                .toList();
    }

    boolean of(Life life) {
        return test.test(life);
    }
}
