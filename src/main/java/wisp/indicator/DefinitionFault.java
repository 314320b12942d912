package wisp.indicator;

/**
 * One thing wrong with a definition file.
 *
 * @param file the file's name
 * @param line its line, counted from 1
 * @param problem what is wrong, a whole sentence
 * @param mend what to write instead, a whole sentence
 */
public record DefinitionFault(String file, int line, String problem, String mend) {
    @Override
    public String toString() {
        return file + ", line " + line + ": " + problem + " " + mend;
    }
}
