package wisp.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * What a command said.
 *
 * @param code its exit code
 * @param out what went to standard output
 * @param err what went to standard error
 */
record Spoken(int code, String out, String err) {
    static Spoken by(Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] words = new String[arguments.length];
        for (int i = 0; i < words.length; i++) {
            words[i] = arguments[i].toString();
        }
        int code = Wisp.run(new PrintWriter(out, true), new PrintWriter(err, true), words);
        return new Spoken(code, out.toString(), err.toString());
    }

    Spoken exits(int expected) {
        if (code != expected) {
            throw new AssertionError("exit code " + code + ", not " + expected + ": " + out + err);
        }
        return this;
    }

    /** One whole sentence that holds this part, and nothing of Java's own. */
    Spoken saysOnlyOneLineWith(String part) {
        String said = err.strip();
        if (said.lines().count() != 1 || !said.contains(part) || !said.endsWith(".") || said.contains("Exception")) {
            throw new AssertionError("not one sentence with \"" + part + "\": " + said);
        }
        return this;
    }
}
