package wisp.cli;

/** A command cannot do what it was asked; the message is for the user. */
final class Refusals extends RuntimeException {
    Refusals(String message) {
        super(message);
    }
}
