package wisp.cli;

/** The one place where everything is wired. */
public final class Wisp {
    private Wisp() {}

    /** Runs one command and exits with its code. */
    public static void main(String[] arguments) {
        System.out.println("wisp");
    }
}
