package wisp.event;

/**
 * Whether an anaesthetic or pain relief was given, and which.
 *
 * @param given true when it was given
 * @param product its name where one was written, else null
 */
public record Relief(boolean given, String product) {}
