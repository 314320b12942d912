package wisp.event;

/**
 * Something worth writing down that no other event says.
 *
 * @param text the words
 * @param tagLost the ear whose tag was found to be lost, null where the note is of something else
 */
public record Noted(String text, TagFitted.Ear tagLost) implements EventData {

    static Noted read(DataReader in) {
        return new Noted(in.requiredText("text"), in.choice("tag_lost", TagFitted.Ear.class));
    }

    @Override
    public EventType type() {
        return EventType.NOTED;
    }
}
