package wisp.site;

import wisp.history.EarTags;
import wisp.history.Life;
import wisp.tag.TagNumber;

/**
 * What a calf is called: its tag number once it is tagged, until then its key, which stays its address.
 *
 * @param key its own key
 * @param shown its number in the usual groups, or its key
 */
public record CalfName(String key, String shown) {

    static CalfName of(Life life) {
        return new CalfName(
                life.key(), EarTags.of(life).number().map(TagNumber::shown).orElse(life.key()));
    }

    /** Whether it has a tag whose number is not its key. */
    public boolean tagged() {
        return !shown.equals(key);
    }

    /** Name, and the key where that is another. */
    public String both() {
        return tagged() ? shown + " (" + key + ")" : key;
    }
}
