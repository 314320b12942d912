package wisp.cli;

import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import wisp.calendar.CalendarAddress;
import wisp.calendar.CalendarAddresses;

/** Makes, lists and takes back the secret addresses under which people follow what is due. */
@Command(
        name = "calendar",
        description = "Each person's secret address of a calendar of what is due.",
        mixinStandardHelpOptions = true)
final class CalendarCommand implements Callable<Integer> {
    /** What is to be done. */
    enum Action {
        ADD,
        LIST,
        REMOVE
    }

    @Parameters(
            index = "0",
            paramLabel = "add|list|remove",
            description = "Make an address and tell it this once, list whose there are, or take one back.")
    private String action;

    @Parameters(index = "1", arity = "0..1", paramLabel = "PERSON", description = "Whose it is.")
    private String person;

    @Option(names = "--pen", defaultValue = "", description = "Only calves that stand in this pen.")
    private String pen;

    @Mixin
    private DataOption data;

    @Mixin
    private CalendarsOption calendars;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Action asked = action();
        if (asked != Action.LIST && (person == null || person.isBlank())) {
            throw new ParameterException(spec.commandLine(), "Say whose calendar: calendar " + action + " NAME.");
        }
        if (calendars.place(data) == null) {
            throw new Refusals("A database keeps no calendar addresses: name a file with --calendars.");
        }
        data.openLog().close();
        try {
            CalendarAddresses addresses = calendars.addresses(data);
            PrintWriter out = spec.commandLine().getOut();
            switch (asked) {
                case ADD -> add(addresses, person.strip(), out);
                case LIST -> addresses.all().forEach(one -> out.println(words(one)));
                case REMOVE -> remove(addresses, person.strip(), out);
            }
            return 0;
        } catch (UncheckedIOException failed) {
            throw new Refusals(failed.getMessage());
        }
    }

    private Action action() {
        for (Action one : Action.values()) {
            if (one.name().toLowerCase(Locale.ROOT).equals(action)) {
                return one;
            }
        }
        throw new ParameterException(spec.commandLine(), action + " is neither add nor list nor remove.");
    }

    private void add(CalendarAddresses addresses, String whose, PrintWriter out) {
        String secret;
        try {
            secret = addresses.add(whose, pen.strip(), LocalDate.now());
        } catch (IllegalStateException twice) {
            throw new Refusals(twice.getMessage());
        }
        out.println("/calendar/" + secret + ".ics");
        out.println("Put the server's address before it and let " + whose + "'s phone subscribe to it. Whoever has it"
                + " sees what is due; it is told this once.");
    }

    private static void remove(CalendarAddresses addresses, String whose, PrintWriter out) {
        if (!addresses.remove(whose)) {
            throw new Refusals("Nobody called " + whose + " has a calendar: see calendar list.");
        }
        out.println("The address of " + whose + " is taken back.");
    }

    private static String words(CalendarAddress one) {
        return one.person() + (one.pen().isEmpty() ? "" : ", pen " + one.pen()) + ", made " + one.made();
    }
}
