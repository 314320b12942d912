package wisp.interchange;

import java.util.List;

/** A mapping file that is wrong; each sentence names file, line, what is wrong and the mend. */
public final class MappingRefused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final List<String> sentences;

    MappingRefused(List<String> sentences) {
        super(String.join("\n", sentences));
        this.sentences = List.copyOf(sentences);
    }

    /** One sentence a fault. */
    public List<String> sentences() {
        return sentences;
    }
}
