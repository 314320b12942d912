package wisp.log;

/** What names an event for good: who sent it, and the sender's own name for it. */
record EventName(String source, String id) {}
